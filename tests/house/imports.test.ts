import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { cruise, type ICruiseOptions, type ICruiseResult } from 'dependency-cruiser';
import { expect, it } from 'vitest';

const require = createRequire(import.meta.url);
const rules = require('../../.dependency-cruiser.cjs') as {
  forbidden: NonNullable<ICruiseOptions['ruleSet']>['forbidden'];
  options: ICruiseOptions;
};

/** One planted import a row: who imports what, and the rule that must catch it. */
const PLANTED: readonly [file: string, imports: string, rule: string][] = [
  ['src/geometry/bad.ts', '../yield/foam', 'layer-geometry'],
  ['src/geometry/bad.ts', '../app/page', 'layer-geometry'],
  ['src/yield/bad.ts', '../geometry/mesh', 'layer-yield'],
  ['src/units/bad.ts', '../yield/foam', 'layer-units'],
  ['src/checks/bad.ts', '../geometry/mesh', 'layer-checks'],
  ['src/checks/bad.ts', '../plan/plan', 'layer-checks'],
  ['src/checks/bad.ts', 'node:fs', 'pure-no-node'],
  ['src/plan/bad.ts', '../cli/main', 'layer-plan'],
  ['src/job/bad.ts', '../plan/plan', 'layer-job'],
  ['src/words/bad.ts', '../app/page', 'layer-words'],
  ['src/sheet/bad.ts', '../app/page', 'layer-sheet'],
  ['src/sheet/bad.ts', '../geometry/mesh', 'layer-sheet'],
  ['src/sheet/bad.ts', 'node:fs', 'pure-no-node'],
  ['src/sheet/bad.ts', 'react', 'pure-no-react'],
  ['src/worker/bad.ts', '../app/page', 'layer-worker'],
  ['src/viewer/bad.ts', '../plan/plan', 'layer-viewer'],
  ['src/app/bad.ts', '../cli/main', 'layer-app'],
  ['src/cli/bad.ts', '../app/page', 'layer-cli'],
  ['src/problem.ts', './units/units', 'leaves-import-nothing'],
  ['src/geometry/bad.ts', 'node:fs', 'pure-no-node'],
  ['src/plan/bad.ts', 'fs', 'pure-no-node'],
  ['src/geometry/bad.ts', 'react', 'pure-no-react'],
  ['src/geometry/bad.ts', '@react-three/fiber', 'pure-no-react'],
  ['src/yield/bad.ts', 'three', 'pure-no-react'],
  ['src/plan/bad.ts', 'manifold-3d', 'manifold-only-in-geometry'],
  ['src/geometry/field/bad.ts', 'manifold-3d', 'field-imports-neither-three-nor-manifold'],
  ['src/yield/bad.ts', '../../tests/helper', 'src-no-tests'],
];

const GOOD = ['yield/foam', 'geometry/mesh', 'app/page', 'cli/main', 'plan/plan', 'units/units'].map(
  (name) => `src/${name}.ts`,
);

it.each(PLANTED)('%s importing %s is caught by the rule %s', async (file, imports, rule) => {
  expect(await rulesBroken({ [file]: `export * from '${imports}';\n` })).toContain(rule);
});

it('a cycle is caught', async () => {
  const broken = await rulesBroken({
    'src/yield/one.ts': "export * from './two';\n",
    'src/yield/two.ts': "export * from './one';\n",
  });
  expect(broken).toContain('no-cycles');
});

it('the same rules find nothing in a tree without a bad import, and do read its files', async () => {
  const result = await cruiseTree({ 'src/plan/good.ts': "export * from '../geometry/mesh';\n" });
  expect(result.summary.violations).toEqual([]);
  expect(result.summary.totalCruised).toBeGreaterThan(GOOD.length);
});

async function rulesBroken(files: Record<string, string>): Promise<string[]> {
  const { summary } = await cruiseTree(files);
  return summary.violations.map((violation) => violation.rule.name);
}

async function cruiseTree(files: Record<string, string>): Promise<ICruiseResult> {
  const root = mkdtempSync(join(tmpdir(), 'risewright-imports-'));
  try {
    const tree = { ...Object.fromEntries(GOOD.map((file) => [file, 'export {};\n'])), ...files };
    tree['tests/helper.ts'] = 'export {};\n';
    for (const [file, text] of Object.entries(tree)) {
      mkdirSync(dirname(join(root, file)), { recursive: true });
      writeFileSync(join(root, file), text);
    }
    symlinkSync(join(import.meta.dirname, '../../node_modules'), join(root, 'node_modules'));
    const options = { ...rules.options };
    delete options.tsConfig;
    const { output } = await cruise(['src'], {
      ...options,
      baseDir: root,
      validate: true,
      ruleSet: { forbidden: rules.forbidden ?? [] },
      preserveSymlinks: true,
    });
    return output as ICruiseResult;
  } finally {
    rmSync(root, { recursive: true, force: true });
  }
}
