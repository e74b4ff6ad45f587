import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { expect, it } from 'vitest';

const root = resolve(import.meta.dirname, '../..');
const manifest = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as Record<
  string,
  Record<string, string> | undefined
>;
const { dependencies = {}, devDependencies = {} } = manifest;

/** The rows of the section "Dependencies" of DEVELOPERS.md: a table of what goes into what is built, and one of the rest. */
const [, section] = /^## Dependencies\n(.*?)^## /ms.exec(readFileSync(join(root, 'DEVELOPERS.md'), 'utf8'))!;
const tables = section!
  .split('The rest builds and tests')
  .map((part) =>
    [...part.matchAll(/^\| `([^`]+)` \| (.+) \|$/gm)].map(([, name, why]) => ({ name: name!, why: why! })),
  );

/** Packages that code of ours imports. */
function importedBySrc(): Set<string> {
  const files = readdirSync(join(root, 'src'), { recursive: true, encoding: 'utf8' }).filter((name) =>
    /\.tsx?$/.test(name),
  );
  const specifiers = files.flatMap((file) => [
    ...readFileSync(join(root, 'src', file), 'utf8').matchAll(/(?:from |import\()'([^'.][^']*)'/g),
  ]);
  const names = specifiers.map(([, specifier]) => /^(?:@[^/]+\/)?[^/]+/.exec(specifier!)![0]);
  return new Set(names.filter((name) => !name.startsWith('node:')));
}

it('every package has one row with its reason, and no row is of another', () => {
  const rows = tables.flat();
  const named = rows.map(({ name }) => name).sort();
  expect(named).toEqual(Object.keys({ ...dependencies, ...devDependencies }).sort());
  for (const { name, why } of rows) expect(why.length, name).toBeGreaterThan(4);
});

it('those that go into what is built are those that our code imports', () => {
  expect(tables).toHaveLength(2);
  expect(tables[0]!.map(({ name }) => name).sort()).toEqual([...importedBySrc()].sort());
});

it('what others install with the package is nothing', () => {
  for (const kind of ['dependencies', 'optionalDependencies', 'peerDependencies', 'bundleDependencies'])
    expect(manifest[kind], kind).toBeUndefined();
});

it('every version is an exact one', () => {
  for (const [name, version] of Object.entries(devDependencies))
    expect(version, name).toMatch(/^\d+\.\d+\.\d+$/);
});
