import { figure, MADE, span, table } from './table.mjs';

const LENGTHS = new Set(['length', 'height']);
const unitOf = ({ kind }) => (LENGTHS.has(kind) ? 'mm' : kind === 'angle' ? 'degrees' : '');
const preset = (value) => (typeof value === 'number' ? figure(value) : value);

/** What a parameter of a mold type may be: its range, or its words. */
const may = (parameter) => (parameter.choices === undefined ? span(parameter) : parameter.choices.join(', '));

const MOMENTS = {
  mold: 'the mold is planned',
  opening: 'opening and vents are placed',
  pour: 'foam is poured',
  both: 'the mold is planned, and again when foam is poured',
};

/** docs/registered.md: all that is on a list of the code. */
export const registeredPage = (sources) =>
  [
    MADE,
    '# All that is registered',
    'Mold types, jacket materials, checks, formats and commands: each is one file and one line of a list, and this page is made from the lists.',
    '## Mold types',
    ...sources.MOLD_TYPES.flatMap(moldType),
    '## Jacket materials',
    table(
      ['key', 'material', 'thickness, mm', 'what can be set', 'from'],
      sources.JACKET_MATERIALS.map(({ key, title, thickness, parameters }) => [
        `\`${key}\``,
        title,
        `${figure(thickness.value)} (${span(thickness)})`,
        parameters.map((one) => `${one.title}: ${figure(one.rule.value)}`).join('; '),
        thickness.from,
      ]),
    ),
    '## Walls of a box',
    table(
      ['key', 'material', 'stiffness, GPa', 'from'],
      sources.WALL_MATERIALS.map(({ key, title, stiffness }) => [
        `\`${key}\``,
        title,
        `${figure(stiffness.value)} (${span(stiffness)})`,
        stiffness.from,
      ]),
    ),
    '## Checks',
    'A check answers Fine, Look or Stop, or says *Not checked* and names the facts it lacks. With `--strict` a Stop ends the command with code 6.',
    table(
      ['code', 'asks', 'when', 'facts', 'source'],
      sources.CHECKS.map(({ code, title, when, facts, source }) => [
        `\`${code}\``,
        title,
        MOMENTS[when],
        facts.map((fact) => `\`${fact}\``).join(', '),
        source,
      ]),
    ),
    '## Files that are read',
    table(
      ['key', 'format'],
      sources.SCAN_FORMATS.map(({ key, title }) => [`\`${key}\``, title]),
    ),
    '## Files that a surface is written to',
    table(
      ['key', 'format', 'ending', 'smallest step at 100 mm, mm'],
      sources.MESH_WRITERS.map(({ key, title, extensions, stepMm }) => [
        `\`${key}\``,
        title,
        extensions.join(', '),
        stepMm(100),
      ]),
    ),
    '## Commands',
    'Lengths may be typed with their unit ("12 in"), numbers with a decimal point or comma; `risewright COMMAND --help` prints the same options.',
    '### Of every command',
    optionTable(sources.COMMON_OPTIONS),
    ...sources.COMMANDS.flatMap(({ name, operands, about, options }) => [
      `### ${name}`,
      `\`risewright ${name}${operands === undefined ? '' : ` ${operands}`}\`: ${about}.`,
      ...(options.length === 0 ? [] : [optionTable(options)]),
    ]),
  ].join('\n\n') + '\n';

const moldType = ({ key, title, goodFor, parameters }) => [
  `### ${title} (\`${key}\`)`,
  `Good for: ${goodFor}`,
  table(
    ['what to choose', 'option', 'default', 'may be', 'unit', 'from'],
    parameters.map((one) => [
      one.label,
      `\`--${one.flag}\``,
      preset(one.default),
      may(one),
      unitOf(one),
      one.from,
    ]),
  ),
];

const optionTable = (options) =>
  table(
    ['option', 'what it says'],
    options.map(({ flags, about, choices, repeat }) => [
      `\`${flags}\``,
      `${about}${choices === undefined ? '' : ` (${choices.join(', ')})`}${repeat ? '; may be given more than once' : ''}`,
    ]),
  );
