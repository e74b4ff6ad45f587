import { formatDensity, formatQuantity, gramsText, type Show } from '../units';
import { assumptionLine } from '../words/assumptionWords';
import { cautionsOfPour } from '../words/cautionsOfPour';
import { chanceWords } from '../words/chance';
import { packsBecause } from '../words/packWords';
import { say } from '../words/say';
import { amount } from '../words/sentence';
import { weighedOf } from './batchJson';
import { findingLines } from './batchText';
import { line } from './moldLines';
import type { Column, Packs } from './packsCall';
import type { PourCall } from './pourCall';

/** Columns in one block; more of them go under each other. Chosen here, for a window of 100 characters. */
const MOST_IN_BLOCK = 6;

type Poured = Exclude<Column, { refused: object }>;

/** Packs for a person: what holds at each of them, what each adds, the caveats, and the table to pour from last. */
export function packsText(packs: Packs, call: PourCall, show: Show): string {
  const { columns, reference, findings } = packs;
  const poured = columns.filter((column): column is Poured => column.refused === undefined);
  const first = poured[0];
  return [
    ...findingLines(findings, show),
    ...columns.flatMap((column) => ownLines(column, show)),
    ...(first === undefined
      ? []
      : first.poured.assumptions.map((one) => line('Assumed', assumptionLine(one, show)))),
    ...packsBecause(reference, first?.poured.prepared.forces.pressureKPa.caveats ?? []).map((why) =>
      line('Because', why),
    ),
    ...costLine(first, call),
    ...(first === undefined
      ? []
      : cautionsOfPour(first.poured.prepared).map(({ when, what }) => line(when, what))),
    ...blocksOf(poured).flatMap((block) => ['', ...tableOf(block, show)]),
  ].join('\n');
}

function ownLines(column: Column, show: Show): string[] {
  const at = `At pack ${column.packFactor.toFixed(2)}: `;
  if (column.refused !== undefined) {
    const { text, hint } = say(column.refused, show);
    return [line('Refused', `${at}${text} ${hint}`)];
  }
  return findingLines(
    column.own.filter(({ status }) => status === 'look' || status === 'stop'),
    show,
  ).map((one) => `${one.slice(0, LABEL)}${at}${one.slice(LABEL)}`);
}

/** Where the words of a line begin. */
const LABEL = line('', '').length;

const costLine = (first: Poured | undefined, { ask }: PourCall): string[] =>
  first?.compared.cost === undefined
    ? []
    : [
        line(
          'Cost',
          `In your own money. A failed casting costs its mix${ask.prices?.failurePrice === undefined ? '' : ` and ${amount(ask.prices.failurePrice, 9)}`}; beside it stands what 5 % more pack costs, and what that takes off the failures to expect.`,
        ),
      ];

function blocksOf(columns: readonly Poured[]): Poured[][] {
  const blocks: Poured[][] = [];
  for (let at = 0; at < columns.length; at += MOST_IN_BLOCK)
    blocks.push(columns.slice(at, at + MOST_IN_BLOCK));
  return blocks;
}

interface Row {
  label: string;
  cell: (column: Poured) => string | undefined;
  show?: 'metric' | 'us';
}

const mixOf = ({ poured: { prepared } }: Poured): { partAG: number; partBG: number; totalG: number } =>
  weighedOf(prepared).mixes[0]!;
const cupsOf = ({ poured: { prepared } }: Poured): number => weighedOf(prepared).mixes.length;
const grams = (column: Poured, massG: number): string => gramsText(massG, column.poured.prepared.batch.stepG);
const two = (value: number): string => amount(value, 2);

function rowsFor(columns: readonly Poured[]): Row[] {
  const several = columns.some((column) => cupsOf(column) > 1);
  const each = several ? ', each cup' : '';
  return [
    { label: 'Pack factor', cell: ({ packFactor }) => packFactor.toFixed(2) },
    ...(several ? [{ label: 'Cups', cell: (c: Poured) => String(cupsOf(c)) }] : []),
    { label: `A, g${each}`, cell: (c) => grams(c, mixOf(c).partAG) },
    { label: `B, g${each}`, cell: (c) => grams(c, mixOf(c).partBG) },
    { label: 'Together, g', cell: (c) => grams(c, weighedOf(c.poured.prepared).totalG) },
    ...densityRows,
    { label: 'Stiffness, times', cell: ({ compared }) => two(compared.stiffnessRatio.value) },
    { label: 'Short fill', cell: (c) => chance(c.poured.prepared.batch.shortFillChance) },
    ...pressureRows,
    { label: 'Clamp, N', cell: (c) => optional(c.poured.prepared.forces.clamp?.clampN, two) },
    { label: 'Straps', cell: (c) => optional(c.poured.prepared.forces.straps?.straps, amount) },
    { label: 'Straps needed', cell: needed },
    { label: 'Each pulled to, N', cell: (c) => optional(c.poured.prepared.forces.straps?.buckleN, two) },
    { label: 'Cost of the mix', cell: ({ compared }) => optional(compared.cost?.mixPrice, money) },
    { label: 'Cost if it fails', cell: ({ compared }) => optional(compared.cost?.failurePrice, money) },
    {
      label: 'Failures to expect',
      cell: ({ compared }) => optional(compared.cost?.expectedFailurePrice, money),
    },
    { label: '5 % more pack', cell: ({ compared }) => optional(compared.cost?.morePackPrice, money) },
    { label: 'which saves', cell: ({ compared }) => optional(compared.cost?.morePackSaves, money) },
    { label: 'Filled before', cell: past },
  ];
}

const densityRows: readonly Row[] = [
  {
    label: 'Molded, kg/m\u00b3',
    show: 'metric',
    cell: (c) => formatDensity(c.poured.prepared.batch.moldedDensityKgM3, 'metric').split(' ')[0],
  },
  {
    label: 'Molded, lb/ft\u00b3',
    show: 'us',
    cell: (c) => formatDensity(c.poured.prepared.batch.moldedDensityKgM3, 'us').split(' ')[0],
  },
];

const pressureRows: readonly Row[] = [
  { label: 'Pressure, kPa', show: 'metric', cell: (c) => two(kPaOf(c)) },
  {
    label: 'Pressure, psi',
    show: 'us',
    cell: (c) => formatQuantity('pressure', kPaOf(c), 'us').split(' ')[0],
  },
];

const kPaOf = ({ poured }: Poured): number => poured.prepared.forces.pressureKPa.value;
const chance = (share: number): string => chanceWords(share).replace('about ', '');
const money = (value: number): string => value.toFixed(2);
const optional = (value: number | undefined, words: (value: number) => string): string | undefined =>
  value === undefined ? undefined : words(value);

/** Only where it is not what is there. */
function needed({ poured }: Poured): string | undefined {
  const straps = poured.prepared.forces.straps;
  return straps === undefined || straps.holds ? undefined : amount(straps.strapsNeeded);
}

const past = ({ compared }: Poured): string | undefined =>
  compared.past === undefined || compared.past.poured === 0
    ? undefined
    : `${compared.past.filled} of ${compared.past.poured}`;

/** Labels left, figures right; a row that no column has is left out, and a cell that one lacks is a dash. */
function tableOf(columns: readonly Poured[], show: Show): string[] {
  const rows = rowsFor(columns)
    .filter((row) => row.show === undefined || show === 'both' || row.show === show)
    .map(({ label, cell }) => [label, ...columns.map((column) => cell(column) ?? '-')])
    .filter(([, ...cells]) => cells.some((cell) => cell !== '-'));
  const widths = rows[0]!.map((_, n) => Math.max(...rows.map((row) => row[n]!.length)));
  return rows.map(
    (row) =>
      `  ${row.map((text, n) => (n === 0 ? text.padEnd(widths[n]!) : text.padStart(widths[n]! + 1))).join(' ')}`,
  );
}
