import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { createElement, type ComponentType } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { batchChecks } from '../../src/app/batch/batchProblems';
import { WayQuestion } from '../../src/app/measure/WayQuestion';
import { BearQuestion } from '../../src/app/mold/BearQuestion';
import { findingsOf } from '../../src/app/mold/findings';
import { HoldQuestion } from '../../src/app/mold/HoldQuestion';
import type { MoldProps } from '../../src/app/mold/moldProps';
import { TypeQuestion } from '../../src/app/mold/TypeQuestion';
import { SCAN_ENDINGS } from '../../src/app/shelf/scanNames';
import { isPicked, MADE_FIELDS, moldField } from '../../src/app/ticket/madeFields';
import { newTicket, type Ticket } from '../../src/app/ticket/state';
import type { Piece } from '../../src/job/piece';
import { BODY_LABELS, SUNK_LABELS, WAY_LABELS } from '../../src/app/words/wayWords';
import { CHECKS, runChecks } from '../../src/checks';
import { COMMANDS } from '../../src/cli/commands';
import { COMMON_OPTIONS, nameOfFlags } from '../../src/cli/command';
import { MOLD_TYPES, SCAN_FORMATS } from '../../src/geometry';
import { MESH_WRITERS } from '../../src/geometry/solids';
import type { Mold } from '../../src/plan';
import { JACKET_MATERIALS, WALL_MATERIALS } from '../../src/yield';
import { say } from '../../src/words/say';
import { poured, step } from '../app/pageEngine';
import { call, document } from '../support/cliCall';

/*
 * All that is on a list of the code can be found where people look: in the docs that are written by hand, in those that are made from the lists, in the
 * help of the command line, and in the forms of the page, which are drawn here as the browser draws them.
 */

const root = resolve(import.meta.dirname, '../..');
const doc = (name: string): string => readFileSync(join(root, 'docs', name), 'utf8');
const [registered, molds, numbers, learning, computes] = [
  'registered.md',
  'molds.md',
  'numbers.md',
  'learning.md',
  'how-it-computes.md',
].map(doc) as [string, string, string, string, string];

const part = (heading: string): string =>
  registered.split(`\n## ${heading}\n`)[1]?.split('\n## ')[0] ?? `no part ${heading}`;

/** Lines of the help are broken at any blank. */
const helpOf = (command: string): string => call([command, '--help']).out.replace(/\s+/g, ' ');
const drawn = <Props extends object>(question: ComponentType<Props>, props: Props): string =>
  renderToStaticMarkup(createElement(question, props));
const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll("'", '&#x27;').replaceAll('"', '&quot;');

const dispatch = (): void => undefined;
const moldQuestion = (question: ComponentType<MoldProps>, ticket: Ticket): string =>
  drawn(question, {
    ticket,
    dispatch,
    mark: 'open',
    now: { state: 'idle' } as unknown as MoldProps['now'],
    bench: {} as MoldProps['bench'],
    problemOf: () => undefined,
  });

describe.each(MOLD_TYPES)('the mold type $key', (type) => {
  const { key, title, parameters } = type;
  const ticket = step(newTicket(), { do: 'molding', molding: { type: key } });
  const form = moldQuestion(TypeQuestion, ticket);
  const help = helpOf('mold');

  it('is in the docs, with every parameter', () => {
    expect(molds.toLowerCase()).toContain(title.toLowerCase());
    expect(registered).toContain(`### ${title} (\`${key}\`)`);
    for (const { label, flag } of parameters) expect(registered).toContain(`| ${label} | \`--${flag}\``);
  });

  it('is in the forms of the page: in the table of types, and with a box or choices for every parameter', () => {
    expect(form).toContain(escaped(title));
    for (const parameter of parameters) {
      expect(form).toContain(escaped(parameter.label));
      if (!isPicked(parameter)) expect([...MADE_FIELDS.keys()]).toContain(moldField(type, parameter));
    }
  });

  it('is in the help of "mold", with an option for every parameter', () => {
    expect(help).toContain(`"${key}"`);
    for (const { flag } of parameters) expect(help).toContain(`--${flag} `);
  });
});

it.each(JACKET_MATERIALS)('the jacket material $key is in docs, forms and help', ({ key, title }) => {
  expect(registered).toContain(`| \`${key}\` | ${title} |`);
  expect(molds.toLowerCase()).toContain(title.toLowerCase().split(' ').at(-1));
  expect(helpOf('mold')).toContain(`"${key}"`);
  const skin = step(newTicket(), { do: 'molding', molding: { type: 'skin' } });
  expect(moldQuestion(HoldQuestion, skin)).toContain(`value="${key}"`);
});

it.each(WALL_MATERIALS)('the wall of $key is in docs, forms and help', ({ key, title }) => {
  expect(registered).toContain(`| \`${key}\` | ${title} |`);
  expect(helpOf('mold')).toContain(`"${key}"`);
  const block = step(newTicket(), { do: 'molding', molding: { type: 'block' } });
  expect(moldQuestion(HoldQuestion, block)).toContain(`value="${key}"`);
});

describe('the ways to a volume', () => {
  const { ticket } = poured();
  const question = drawn(WayQuestion, {
    ticket,
    dispatch,
    mark: 'open',
    piece: {} as Piece,
  });
  const COMMAND_OF = { scan: 'size', fill: 'fill', displace: 'displace', tape: 'girth' } as const;

  it.each(Object.entries(WAY_LABELS))('%s is chosen on the page and has its command', (way, label) => {
    expect(question).toContain(escaped(label));
    expect(COMMANDS.map(({ name }) => name)).toContain(COMMAND_OF[way as keyof typeof COMMAND_OF]);
  });

  it.each(['water fill', 'displacement', 'girth', 'cup test'])('%s is in the docs by hand', (way) => {
    expect(learning.toLowerCase()).toContain(way);
  });

  it('bodies by the tape and what the sculpt is sunk in are options of their commands', () => {
    for (const kind of Object.keys(BODY_LABELS)) expect(helpOf('girth')).toContain(`--${kind} `);
    for (const sunk of Object.keys(SUNK_LABELS)) expect(helpOf('displace')).toContain(sunk);
  });
});

it.each(SCAN_FORMATS)(
  'the format $title is in docs, on the page and in the help of all that read a scan',
  (one) => {
    expect(part('Files that are read')).toContain(`| \`${one.key}\` | ${one.title} |`);
    expect(SCAN_ENDINGS.split(',')).toContain(`.${one.key}`);
    for (const command of ['size', 'mold', 'opening', 'batch', 'packs', 'sheet'])
      expect(helpOf(command)).toContain(`"${one.key}"`);
  },
);

it.each(MESH_WRITERS)('a surface as $title is in docs and help; the page writes none', (one) => {
  expect(part('Files that a surface is written to')).toContain(
    `| \`${one.key}\` | ${one.title} | ${one.extensions.join(', ')} |`,
  );
  expect(computes).toContain(one.title);
  for (const ending of one.extensions) expect(helpOf('size')).toContain(ending);
});

describe.each(COMMANDS)('the command $name', ({ name, about, options }) => {
  it('is in the docs with every option, and has its numbers explained', () => {
    const section = registered.split(`\n### ${name}\n`)[1]?.split('\n### ')[0];
    expect(section).toContain(about);
    for (const { flags } of options) expect(section).toContain(`| \`${flags}\` |`);
    expect(numbers).toContain(`\n## ${name}\n`);
  });

  it('is in the help of the program, and its options are in its own', () => {
    expect(call(['--help']).out.replace(/\s+/g, ' ')).toContain(`${name} `);
    const help = helpOf(name);
    for (const { flags } of [...options, ...COMMON_OPTIONS]) expect(help).toContain(flags);
  });
});

it('no two options of a command have one name', () => {
  for (const { options } of COMMANDS) {
    const names = [...options, ...COMMON_OPTIONS]
      .filter(({ flags }) => flags.startsWith('--'))
      .map(({ flags }) => nameOfFlags(flags));
    expect(new Set(names).size).toBe(names.length);
  }
});

const BOX = ['box-40x30x20-ascii.stl', '--file-unit', 'mm'];

describe('the checks', () => {
  const { ticket } = poured();
  const ofPour = batchChecks(ticket, undefined)!.map(({ code }) => code);
  const told = (args: readonly string[]): string[] => document(args).findings.map(({ code }) => code);
  const spoken = {
    mold: told(['mold', ...BOX, '--type', 'block']),
    opening: told(['opening', ...BOX, '--voxel', '2', '--base', 'closed']),
    pour: told(['batch', '--volume', '4500', '--free-rise', '96', '--ratio', '100:55']),
  };

  it.each(CHECKS)('$code: $title', (check) => {
    const { code, title, when, facts, source } = check;
    const row = registered.split('\n').find((line) => line.startsWith(`| \`${code}\` |`));
    expect(row).toContain(title);
    expect(row).toContain(source.replaceAll('|', '\\|'));
    for (const fact of facts) expect(row).toContain(`\`${fact}\``);
    // On the command line it speaks, be it to say that it was not checked.
    if (when !== 'opening' && when !== 'mold') expect(spoken.pour).toContain(code);
    if (when === 'opening') expect(spoken.opening).toContain(code);
    if (when === 'mold' || when === 'both') expect(spoken.mold).toContain(code);
    // On the page: the row of the pour's table, or the question of the mold that tells it.
    if (when === 'pour' || when === 'both') expect(ofPour).toContain(code);
    if (when === 'mold' || when === 'both') {
      const findings = runChecks({}, 'mold').filter((one) => one.code === code);
      expect(findingsOf({ findings } as unknown as Mold, 'bear')).toHaveLength(1);
    }
    expect(
      say(runChecks({}, when === 'both' ? 'mold' : when).find((one) => one.code === code)!).text,
    ).toMatch(/^Not checked/);
  });

  it('ask on the page for every fact of the materials that only the caster can tell', () => {
    const form = moldQuestion(BearQuestion, newTicket());
    for (const label of ['Surface of the sculpt', 'Gloves', 'Release', 'Pigment in the foam'])
      expect(form).toContain(label);
  });
});
