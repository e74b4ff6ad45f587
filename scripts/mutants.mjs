// npm run mutants -- [--count 40] [--seed 1] [--room yield]: plants small faults in a room, one at a time in a copy, and tells which of them
// its tests do not notice. Ends with 1 where fewer than 85 of 100 are noticed.
// A fault whose file the compiler refuses is left out, noticed or not: it cannot be committed, and most of them no test could tell apart, such as
// `good(true)` of an Outcome<true> that became `good(false)`.
import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { parseArgs } from 'node:util';
import ts from 'typescript';
import { typesOf } from './mutants/compiler.mjs';
import { importGraph } from './mutants/importGraph.mjs';
import { lcg } from './lcg.mjs';
import { root } from './setup.mjs';

const WANTED_SHARE = 0.85;
/** So many test files, those that import the faulty file by the fewest steps, are asked first: most faults are noticed there. */
const ASKED_FIRST = 3;

const { values: said } = parseArgs({
  options: {
    count: { type: 'string', default: '40' },
    seed: { type: 'string', default: '1' },
    room: { type: 'string', default: 'yield' },
  },
});
const [count, seed] = [Number(said.count), Number(said.seed)];
const COPIED = ['src', 'tests', 'docs', 'sample-meshes', 'package.json', 'tsconfig.json', 'vitest.config.ts'];

/** Rules and bounds that are chosen have no other truth than the page that tells them: what holds the tables against docs/rules.md is asked, too. */
const BESIDE = { file: 'tests/house/docs.test.ts', only: 'stands in the docs', of: /(rules|bounds)\.ts$/ };

const K = ts.SyntaxKind;
/** What an operator is changed into. */
const SWAPS = new Map([
  [K.PlusToken, '-'],
  [K.MinusToken, '+'],
  [K.AsteriskToken, '/'],
  [K.SlashToken, '*'],
  [K.AsteriskAsteriskToken, '*'],
  [K.LessThanToken, '>='],
  [K.LessThanEqualsToken, '<'],
  [K.GreaterThanToken, '<='],
  [K.GreaterThanEqualsToken, '>'],
  [K.EqualsEqualsEqualsToken, '!=='],
  [K.ExclamationEqualsEqualsToken, '==='],
  [K.AmpersandAmpersandToken, '||'],
  [K.BarBarToken, '&&'],
]);

const files = readdirSync(join(root, 'src', said.room), { recursive: true })
  .map((name) => join('src', said.room, name))
  .filter((name) => name.endsWith('.ts') && !name.endsWith('.d.ts'))
  .sort();
const { stepsFrom } = importGraph(root);
const tests = readdirSync(join(root, 'tests', said.room), { recursive: true })
  .map((name) => join('tests', said.room, name))
  .filter((name) => name.endsWith('.test.ts'))
  .sort()
  .map((name) => ({ name, steps: stepsFrom(name) }));
const all = files.flatMap(mutantsOf);
const isSound = typesOf(root, files);
const chosen = [];
let refused = 0;
for (const mutant of shuffled(all)) {
  if (chosen.length === count) break;
  if (isSound(mutant.file, withFault(mutant, readFileSync(join(root, mutant.file), 'utf8'))))
    chosen.push(mutant);
  else refused += 1;
}
console.log(
  `seed ${seed}: ${chosen.length} of ${all.length} possible faults in ${files.length} files of src/${said.room}; ${refused} more were refused by the compiler`,
);

const copy = mkdtempSync(join(tmpdir(), 'risewright-mutants-'));
const survivors = [];
let onlyByPage = 0;
try {
  for (const name of COPIED) cpSync(join(root, name), join(copy, name), { recursive: true });
  symlinkSync(join(root, 'node_modules'), join(copy, 'node_modules'));
  if (!passes([`tests/${said.room}/`]) || !passes([BESIDE.file], BESIDE.only))
    throw new Error(`mutants: the tests of ${said.room} or of ${BESIDE.file} fail without a fault`);
  chosen.forEach((mutant, i) => {
    const file = join(copy, mutant.file);
    const sound = readFileSync(file, 'utf8');
    writeFileSync(file, withFault(mutant, sound));
    const asked = testsOf(mutant.file);
    const inRoom = !passes(asked.slice(0, ASKED_FIRST)) || !passes(asked.slice(ASKED_FIRST));
    const byPage = !inRoom && BESIDE.of.test(mutant.file) && !passes([BESIDE.file], BESIDE.only);
    writeFileSync(file, sound);
    if (byPage) onlyByPage += 1;
    if (!inRoom && !byPage) survivors.push(mutant);
    const verdict = inRoom ? 'noticed' : byPage ? 'noticed by the page of rules' : 'NOT NOTICED';
    console.log(`${i + 1} ${verdict}: ${told(mutant)}`);
  });
} finally {
  rmSync(copy, { recursive: true, force: true });
}
const share = 1 - survivors.length / chosen.length;
console.log(
  `${chosen.length - survivors.length} of ${chosen.length} noticed, ${(100 * share).toFixed(0)} %, ${onlyByPage} of them by the page of rules alone; wanted ${100 * WANTED_SHARE} %`,
);
for (const mutant of survivors) console.log(`not noticed: ${told(mutant)}`);
process.exitCode = share >= WANTED_SHARE ? 0 : 1;

/** The test files of the room that run `file`, those by the fewest steps first. What does not import it cannot notice. */
function testsOf(file) {
  return tests
    .filter(({ steps }) => steps.has(file))
    .sort((one, other) => one.steps.get(file) - other.steps.get(file))
    .map(({ name }) => name);
}

/** Whether these tests pass in the copy. A fault that lets them run for ever counts as noticed. */
function passes(asked, only) {
  if (asked.length === 0) return true;
  const { status } = spawnSync(
    process.execPath,
    [
      join(root, 'node_modules/vitest/vitest.mjs'),
      'run',
      ...asked,
      ...['--bail', '1', '--project', 'together'],
      ...(only === undefined ? [] : ['-t', only]),
    ],
    { cwd: copy, stdio: 'ignore', timeout: 180_000 },
  );
  return status === 0;
}

/** Every place of a file where one operator, number or question can be changed. */
function mutantsOf(file) {
  const text = readFileSync(join(root, file), 'utf8');
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true);
  const found = [];
  const add = (node, changed) =>
    found.push({
      file,
      from: node.getStart(source),
      to: node.getEnd(),
      text: changed,
      was: node.getText(source),
      at: source.getLineAndCharacterOfPosition(node.getStart(source)),
    });
  const visit = (node) => {
    if (ts.isTypeNode(node) || ts.isImportDeclaration(node)) return;
    if (ts.isBinaryExpression(node) && SWAPS.has(node.operatorToken.kind))
      add(node.operatorToken, SWAPS.get(node.operatorToken.kind));
    if (ts.isNumericLiteral(node))
      add(node, Number(node.text) === 0 ? '1' : `(${node.getText(source)} * 1.1)`);
    if (ts.isIfStatement(node)) add(node.expression, `!(${node.expression.getText(source)})`);
    if (ts.isConditionalExpression(node)) add(node.condition, `!(${node.condition.getText(source)})`);
    if (node.kind === K.TrueKeyword) add(node, 'false');
    if (node.kind === K.FalseKeyword) add(node, 'true');
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

function withFault({ from, to, text }, sound) {
  return sound.slice(0, from) + text + sound.slice(to);
}

function told({ file, at, was, text }) {
  return `${relative('src', file)}:${at.line + 1}:${at.character + 1}  ${was}  became  ${text}`;
}

/** In an order that follows from the seed alone. */
function shuffled(list) {
  const random = lcg(seed);
  const mixed = [...list];
  for (let i = mixed.length - 1; i > 0; i--) {
    const j = Math.floor(random() * (i + 1));
    [mixed[i], mixed[j]] = [mixed[j], mixed[i]];
  }
  return mixed;
}
