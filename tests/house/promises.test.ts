import { existsSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';

const root = resolve(import.meta.dirname, '../..');
const read = (file: string): string => readFileSync(join(root, file), 'utf8');
const { scripts } = JSON.parse(read('package.json')) as { scripts: Record<string, string> };

/** Each promise with what proves it: the list below its words. */
const promises = read('docs/promises.md')
  .split(/^### /m)
  .slice(1)
  .map((part) => {
    const [title, ...lines] = part.split(/^## /m)[0]!.split('\n');
    return { title: title!, proofs: lines.filter((line) => /^(- | {2}\S)/.test(line)).join('\n') };
  });

const filesIn = (text: string): string[] =>
  [...text.matchAll(/`((?:tests|scripts|src|docs|bench)\/[^`\s]+)`/g)].map(([, file]) => file!);
const commandsIn = (text: string): string[] =>
  [...text.matchAll(/`npm run ([\w:]+)[^`]*`/g)].map(([, name]) => name!);

it('there are promises about data, numbers and the program', () => {
  expect(promises.length).toBeGreaterThan(15);
  expect(read('docs/promises.md').match(/^## .*$/gm)).toEqual([
    '## Your data',
    '## Your numbers',
    '## The program',
    '## What came of it last',
    '## What nobody can promise',
  ]);
});

it('the output of each run that is told of is kept', () => {
  const outputs = [...read('docs/promises.md').matchAll(/\]\((results\/[^)]+)\)/g)].map(([, file]) => file!);
  expect(outputs.length).toBeGreaterThan(2);
  expect(outputs.filter((file) => !existsSync(join(root, 'docs', file)))).toEqual([]);
});

describe.each(promises)('$title', ({ proofs }) => {
  it('names what proves it, and that is there', () => {
    const files = filesIn(proofs);
    const commands = commandsIn(proofs);
    expect(files.length + commands.length).toBeGreaterThan(0);
    expect(files.filter((file) => !existsSync(join(root, file)))).toEqual([]);
    expect(commands.filter((name) => !Object.hasOwn(scripts, name))).toEqual([]);
    // A command alone does not run before every change.
    for (const file of files.filter((one) => one.startsWith('tests/')))
      expect(file).toMatch(/\.(test|spec)\.ts$/);
  });
});

/** The table of "Security" in DEVELOPERS.md names where each thing is done, and what holds it. */
it('what keeps the program shut, and what holds it to it, is there', () => {
  const [, section] = /^## Security\n(.*?)^## /ms.exec(read('DEVELOPERS.md'))!;
  const rows = section!.split('\n').filter((line) => /^\| [^w-]/.test(line));
  expect(rows.length).toBeGreaterThan(8);
  for (const row of rows) {
    const [, , , held] = row.split('|');
    expect([...filesIn(held!), ...commandsIn(held!)].length, row).toBeGreaterThan(0);
  }
  expect(filesIn(section!).filter((file) => !existsSync(join(root, file)))).toEqual([]);
  expect(commandsIn(section!).filter((name) => !Object.hasOwn(scripts, name))).toEqual([]);
});
