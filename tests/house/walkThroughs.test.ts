import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import { createElement, type ComponentType } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type * as FactFields from '../../src/app/words/factFields';
import type * as Checks from '../../src/checks';
import type * as Run from '../../src/cli/run';
import type * as TypeTable from '../../src/app/mold/TypeTable';
import type * as Shells from '../../src/geometry/show/moldShells';
import type * as State from '../../src/app/ticket/state';
import type { MoldKey } from '../../src/geometry';
import { call, type Document } from '../support/cliCall';
import { expectClose } from '../support/close';
import { stood } from '../support/moldOf';
import { valueOf } from '../support/outcome';
import { box } from '../support/shapes';
import { copyOfSources, follow, walkThrough } from '../support/walkThrough';

/*
 * The steps that DEVELOPERS.md shows are taken, to the letter, on a copy of the sources, and what was added is used: from the command line as it is built,
 * and from the page's own lists.
 */

const root = resolve(import.meta.dirname, '../..');
const page = readFileSync(join(root, 'DEVELOPERS.md'), 'utf8');

type Grown = typeof Run & typeof Checks & typeof FactFields & typeof TypeTable & typeof Shells & typeof State;

let folder: string;
let grown: Grown;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'risewright-steps-'));
  copyOfSources(root, folder);
  follow(walkThrough(page, 'A mold type, step by step'), folder);
  follow(walkThrough(page, 'A check, step by step'), folder);
  await build({
    absWorkingDir: folder,
    stdin: {
      contents: `
        export { run } from './src/cli/run';
        export { CHECKS, runChecks } from './src/checks';
        export { POUR_FACT_ROWS } from './src/app/words/factFields';
        export { TypeTable } from './src/app/mold/TypeTable';
        export { newTicket } from './src/app/ticket/state';
        export { moldShells } from './src/geometry/show/moldShells';`,
      resolveDir: folder,
      loader: 'ts',
    },
    outfile: join(folder, 'grown.mjs'),
    bundle: true,
    format: 'esm',
    platform: 'node',
    jsx: 'automatic',
    packages: 'external',
    logLevel: 'error',
  });
  grown = (await import(pathToFileURL(join(folder, 'grown.mjs')).href)) as Grown;
}, 120_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const told = (args: readonly string[]): string => call(args, {}, grown.run).out;
const document = (args: readonly string[]): Document => JSON.parse(told([...args, '--json'])) as Document;

/** 40 x 30 x 20 mm, standing on its largest face. */
const BOX = ['mold', 'box-40x30x20-ascii.stl', '--file-unit', 'mm', '--type', 'pail'];

describe('a mold type added by the steps', () => {
  it('gets its rubber: the pail less the box, by its closed form', () => {
    // The diagonal is 50 mm, a wall of 12 mm makes 74: the next pail is 80 mm wide, 20 + 12 mm high.
    const pailCm3 = (Math.PI / 4) * 8 ** 2 * 3.2;
    const { result } = document(BOX);
    expect(result.type).toBe('pail');
    expectClose(result.silicone_cm3 as number, pailCm3 - 24, 1e-6);
    expect((result.box as { inner_mm: number[] }).inner_mm[0]).toBeCloseTo(80, 9);
  });

  it('takes its own parameter from its own option', () => {
    const { result } = document([...BOX, '--pail-step', '100']);
    expectClose(result.silicone_cm3 as number, (Math.PI / 4) * 10 ** 2 * 3.2 - 24, 1e-6);
  });

  it('stands in the comparison, the help and the table of the page', () => {
    const all = document(['mold', 'box-40x30x20-ascii.stl', '--file-unit', 'mm', '--voxel', '3', '--all']);
    expect((all.result.molds as { type: string }[]).map(({ type }) => type)).toContain('pail');
    const help = told(['mold', '--help']);
    expect(help).toContain('"pail"');
    expect(help).toContain('--pail-step');
    const table = grown.TypeTable as ComponentType<{ ticket: unknown; dispatch: () => void }>;
    const drawn = renderToStaticMarkup(
      createElement(table, { ticket: grown.newTicket(), dispatch: () => undefined }),
    );
    expect(drawn).toContain('Poured pail');
  });
});

it('and has its picture: as wide as the pail', () => {
  const body = { sculpt: stood(box([40, 30, 20])) };
  const settings = { base: 'open', wallMm: 12, coverMm: 12, underMm: 12, pailStepMm: 20 };
  const [shell] = valueOf(grown.moldShells('pail' as MoldKey, body, settings));
  const xs = [...shell!.positions].filter((_, n) => n % 3 === 0);
  expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(80, 3);
});

describe('a check added by the steps', () => {
  const POUR = ['batch', '--volume', '4500', '--free-rise', '96', '--ratio', '100:55'];
  const found = (more: readonly string[]) =>
    document([...POUR, ...more]).findings.find(({ code }) => code === 'PARTS_STIRRED');

  it('says that it was not checked, then answers by the fact', () => {
    expect(found([])).toMatchObject({ status: 'unknown' });
    expect(found([])?.text).toContain('Not checked: whether A and B were stirred');
    expect(found(['--stirred', 'yes'])).toMatchObject({ status: 'fine' });
    expect(found(['--stirred', 'no'])).toMatchObject({ status: 'look' });
    expect(found(['--stirred', 'no'])?.text).toContain('What settles in a part is not weighed');
  });

  it('its own examples lead where they say', () => {
    const check = grown.CHECKS.find(({ code }) => (code as string) === 'PARTS_STIRRED')!;
    expect(check.rule(check.examples.fine).status).toBe('fine');
    expect(check.rule(check.examples.look!).status).toBe('look');
  });

  it('is asked for on the page and in the help', () => {
    expect(grown.POUR_FACT_ROWS.map(({ label }) => label)).toContain('A and B were stirred in their cans');
    expect(told(['batch', '--help'])).toContain('--stirred <answer>');
  });
});
