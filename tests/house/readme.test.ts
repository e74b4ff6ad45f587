import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { build } from 'esbuild';
import { afterAll, beforeAll, expect, it } from 'vitest';

const root = resolve(import.meta.dirname, '../..');
const blocksOf = (page: string): { language: string; text: string }[] =>
  [...readFileSync(join(root, page), 'utf8').matchAll(/```(\w+)\n([\s\S]*?)```/g)].map(
    ([, language, text]) => ({ language: language!, text: text! }),
  );
const shellLinesOf = (page: string): string[] =>
  blocksOf(page)
    .filter(({ language }) => language === 'sh')
    .flatMap(({ text }) => text.split('\n'))
    .filter((line) => line.startsWith('npx risewright'));

let folder: string;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'risewright-readme-'));
  mkdirSync(join(folder, 'dist', 'cli'), { recursive: true });
  symlinkSync(join(root, 'sample-meshes'), join(folder, 'sample-meshes'));
  const common = { absWorkingDir: root, bundle: true, format: 'esm', logLevel: 'error' } as const;
  await build({
    ...common,
    entryPoints: ['src/cli/main.ts'],
    outfile: join(folder, 'dist/cli/risewright.mjs'),
    platform: 'node',
    define: { RISEWRIGHT_VERSION: '"0"' },
    banner: {
      js: "import { createRequire as __createRequire } from 'node:module'; const require = __createRequire(import.meta.url);",
    },
  });
  const example = blocksOf('README.md').find(({ language }) => language === 'js')!.text;
  await build({
    ...common,
    stdin: { contents: example, resolveDir: root },
    outfile: join(folder, 'example.mjs'),
    platform: 'node',
    alias: { risewright: './src/index.ts' },
  });
  writeFileSync(join(folder, 'package.json'), '{"type":"module"}');
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const ten = shellLinesOf('README.md');
const more = shellLinesOf('docs/command-line.md');

it('the README shows ten lines, npm ci one of them', () => {
  expect(ten).toHaveLength(9);
});

it.each([...ten, ...more])('%s', (line) => {
  const result = spawnSync(
    'sh',
    ['-c', line.replace('npx risewright', `"${process.execPath}" dist/cli/risewright.mjs`)],
    {
      cwd: folder,
      encoding: 'utf8',
    },
  );
  // The one line that leaves the unit out shows what happens then.
  const unitLeftOut = line.includes('size') && !/--tall|--file-unit/.test(line);
  expect({ status: result.status, stderr: result.stderr.slice(0, 200) }).toMatchObject({
    status: unitLeftOut ? 5 : 0,
  });
  // A page that is written to a file is told on stderr.
  const isWritten = line.includes(' -o ');
  expect(unitLeftOut || isWritten ? result.stderr : result.stdout).not.toBe('');
});

it('the library example prints grams of A and B', () => {
  const result = spawnSync(process.execPath, ['example.mjs'], { cwd: folder, encoding: 'utf8' });
  expect(result.stderr).toBe('');
  expect(result.stdout).toMatch(/^A \d+ g, B \d+ g\n$/);
});
