// npm run docs: writes the pages of docs that come from the tables of the code. With --check it writes nothing and ends with 1 where a page differs.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { accuracyTable, speedTable } from './pages/readmeTables.mjs';
import { registeredPage } from './pages/registeredPage.mjs';
import { roomsDrawing } from './pages/roomsDrawing.mjs';
import { rulesPage } from './pages/rulesPage.mjs';
import { loadTables } from './pages/tables.mjs';
import { root } from './setup.mjs';
import { sumsPage } from './pages/sumsPage.mjs';

/** The text of a page with the part between these marks made anew. */
function between(name, page, mark, content) {
  const [start, end] = [`<!-- ${mark}: made by \`npm run docs\` -->\n`, `<!-- /${mark} -->`];
  const [before, rest, more] = page.split(start);
  const after = rest?.split(end)[1];
  if (after === undefined || more !== undefined)
    throw new Error(`docs: expected the marks of ${mark} once in ${name}`);
  return `${before}${start}\n${content}\n\n${end}${after}`;
}

const asItStands = (name) => readFileSync(join(root, name), 'utf8');
const withRooms = () =>
  between('DEVELOPERS.md', asItStands('DEVELOPERS.md'), 'rooms', `\`\`\`text\n${roomsDrawing()}\n\`\`\``);
const withResults = () =>
  between(
    'README.md',
    between('README.md', asItStands('README.md'), 'accuracy', accuracyTable()),
    'speed',
    speedTable(),
  );

const PAGES = {
  'docs/rules.md': rulesPage,
  'docs/registered.md': registeredPage,
  'docs/sums.md': sumsPage,
  'DEVELOPERS.md': withRooms,
  'README.md': withResults,
};

/** "--as-if TABLE.name=5": as if that rule had this value, for the test of the check. */
function asIf(sources, text) {
  const [, table, name, value] = /^(\w+)\.(\w+)=(.+)$/.exec(text) ?? [];
  if (sources[table]?.[name] === undefined) throw new Error(`docs: expected TABLE.name=value, got ${text}`);
  return {
    ...sources,
    [table]: { ...sources[table], [name]: { ...sources[table][name], value: Number(value) } },
  };
}

const { values: said } = parseArgs({ options: { check: { type: 'boolean' }, 'as-if': { type: 'string' } } });
const loaded = await loadTables();
const sources = said['as-if'] === undefined ? loaded : asIf(loaded, said['as-if']);
const isCheck = said.check === true || said['as-if'] !== undefined;
for (const [name, page] of Object.entries(PAGES)) {
  const file = join(root, name);
  const text = page(sources);
  if (existsSync(file) && readFileSync(file, 'utf8') === text) continue;
  if (isCheck) {
    console.error(`${name} is not what the code says now: run "npm run docs" and look at what it changes.`);
    process.exitCode = 1;
  } else {
    writeFileSync(file, text);
    console.log(`${name}: written anew`);
  }
}
