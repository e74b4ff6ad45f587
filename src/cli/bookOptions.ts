import { bad, good, type Outcome } from '../problem';
import type { RowDraft } from '../job/book';
import { isIsoDate } from '../yield/silicone/card';
import type { ScalarKind } from '../units';
import { keyOf, listOf, nameOfFlags, textOf, type OptionSpec, type OptionValues } from './command';
import { quantityOption } from './quantity';

type Kind = RowDraft['kind'];

/** One field of a row and the option that says it. */
interface RowOption extends OptionSpec {
  field: string;
  of: readonly Kind[];
  quantity?: { kind: ScalarKind; bareUnit?: string; allowZero?: true };
}

const ALL: readonly Kind[] = ['pour', 'cup', 'fill'];
const POUR: readonly Kind[] = ['pour'];
const TESTS: readonly Kind[] = ['cup', 'fill'];
const MASS = { kind: 'mass', bareUnit: 'g', allowZero: true } as const;
const TEMPERATURE = { kind: 'temperature', bareUnit: 'C' } as const;
const VOLUME = { kind: 'volume', bareUnit: 'cm3', allowZero: true } as const;

const ROW_OPTIONS: readonly RowOption[] = [
  { flags: '--day <day>', about: 'day of it, as 2026-03-31', field: 'day', of: ALL },
  { flags: '--piece <name>', about: 'piece, by name or id', field: 'piece', of: ['pour', 'fill'] },
  { flags: '--mold <name>', about: 'mold, by name or id', field: 'mold', of: ['pour', 'fill'] },
  { flags: '--foam <card>', about: 'foam card, by its exact name', field: 'foam', of: ['pour', 'cup'] },
  { flags: '--lot <text>', about: 'lot of the foam', field: 'lot', of: ['pour', 'cup'] },
  { flags: '--lot-b <text>', about: 'lot of B, where it is another', field: 'lotB', of: ['pour', 'cup'] },
  {
    flags: '--room <temperature>',
    about: 'room (bare number: C)',
    field: 'roomC',
    of: ['pour', 'cup'],
    quantity: TEMPERATURE,
  },
  {
    flags: '--pack <factor>',
    about: 'pack factor it was planned with',
    field: 'pack',
    of: POUR,
    quantity: { kind: 'packFactor' },
  },
  {
    flags: '--mold-temp <temperature>',
    about: 'mold (bare number: C)',
    field: 'moldC',
    of: POUR,
    quantity: TEMPERATURE,
  },
  {
    flags: '--opening <way>',
    about: 'left open, or closed with a plug',
    choices: ['open', 'plug'],
    field: 'opening',
    of: POUR,
  },
  {
    flags: '--cavity <volume>',
    about: 'cavity it was planned with (bare number: cm3)',
    field: 'cavityCm3',
    of: POUR,
    quantity: VOLUME,
  },
  { flags: '--a <mass>', about: 'A as weighed (bare number: g)', field: 'aG', of: POUR, quantity: MASS },
  { flags: '--b <mass>', about: 'B as weighed', field: 'bG', of: POUR, quantity: MASS },
  { flags: '--mixed <mass>', about: 'all that was mixed', field: 'mixedG', of: POUR, quantity: MASS },
  { flags: '--residue <mass>', about: 'what stayed in the cup', field: 'residueG', of: POUR, quantity: MASS },
  { flags: '--casting <mass>', about: 'the casting, trimmed', field: 'castingG', of: POUR, quantity: MASS },
  { flags: '--trim <mass>', about: 'what was trimmed off', field: 'trimG', of: POUR, quantity: MASS },
  { flags: '--filled <how>', about: 'did it fill?', choices: ['full', 'short'], field: 'filled', of: POUR },
  {
    flags: '--void <volume>',
    about: 'what was missing of a short one (bare number: cm3)',
    field: 'voidCm3',
    of: POUR,
    quantity: VOLUME,
  },
  {
    flags: '--skin <score>',
    about: 'skin from 1 (bare) to 5',
    field: 'skin',
    of: POUR,
    quantity: { kind: 'plain' },
  },
  {
    flags: '--water <mass>',
    about: 'water that fills it to the rim',
    field: 'waterG',
    of: TESTS,
    quantity: MASS,
  },
  {
    flags: '--water-temp <temperature>',
    about: 'of that water (bare number: C)',
    field: 'waterTempC',
    of: TESTS,
    quantity: TEMPERATURE,
  },
  { flags: '--note <text>', about: 'in your own words', field: 'note', of: ALL },
];

const KIND: OptionSpec = {
  flags: '--kind <kind>',
  about: 'what kind of row (left out: pour)',
  choices: ['pour', 'cup', 'fill'],
};

const OTHER_OPTIONS = {
  number: { flags: '--number <n>', about: 'number of the casting (left out: the next one)' },
  foamMass: {
    flags: '--foam-mass <mass>',
    about: 'add: foam of a cup, level with its rim; once for each cup',
    repeat: true,
  },
  csv: { flags: '--csv <file>', about: 'export, import: comma-separated values ("-" is stdout or stdin)' },
  column: {
    flags: '--column <head=field:unit>',
    about: 'import: what a column is, as "Total=mixedG:oz"; "Total=" leaves it out',
    repeat: true,
  },
  leaveOut: {
    flags: '--leave-out',
    about: 'import: leave rows out that cannot be read, instead of taking none',
  },
  ventsChecked: { flags: '--vents-checked', about: 'learn: the vents of the last pour were open' },
  cupToday: { flags: '--cup-today', about: 'learn: a cup was tested today' },
} satisfies Record<string, OptionSpec>;

export const BOOK_OPTIONS: readonly OptionSpec[] = [
  { flags: '--book <file>', about: 'the book: a shop file, or the backup of the app' },
  KIND,
  OTHER_OPTIONS.number,
  ...ROW_OPTIONS.map(({ flags, about, choices }) => ({
    flags,
    about,
    ...(choices === undefined ? {} : { choices }),
  })),
  OTHER_OPTIONS.foamMass,
  OTHER_OPTIONS.csv,
  OTHER_OPTIONS.column,
  OTHER_OPTIONS.leaveOut,
  OTHER_OPTIONS.ventsChecked,
  OTHER_OPTIONS.cupToday,
];

export const BOOK_ACTIONS = ['add', 'list', 'learn', 'check', 'export', 'import'] as const;
export type BookAction = (typeof BOOK_ACTIONS)[number];

/** Options of each action, beside --book. */
const TAKES: Readonly<Record<BookAction, readonly string[]>> = {
  add: ['kind', 'number', 'foam-mass', ...ROW_OPTIONS.map(({ flags }) => nameOfFlags(flags))],
  list: ['kind'],
  learn: ['foam', 'piece', 'room', 'vents-checked', 'cup-today'],
  check: [],
  export: ['csv', 'kind'],
  import: ['csv', 'column', 'kind', 'leave-out'],
};

/** Refuses an option that this action would pass over in silence. */
export function onlyItsOptions(action: BookAction, options: OptionValues): Outcome<true> {
  const foreign = BOOK_OPTIONS.map(({ flags }) => nameOfFlags(flags)).find(
    (name) => name !== 'book' && options[keyOf(name)] !== undefined && !TAKES[action].includes(name),
  );
  if (foreign === undefined) return good(true);
  const of = BOOK_ACTIONS.filter((one) => TAKES[one].includes(foreign));
  return bad('BAD_CALL', {
    text: `"book ${action}" takes no --${foreign}.`,
    hint: `It belongs to ${of.map((one) => `"book ${one}"`).join(', ')}.`,
  });
}

/** The row that the options of "book add" say. What is not said is left out. */
export function rowOfOptions(options: OptionValues): Outcome<RowDraft> {
  const kind = (textOf(options, 'kind') ?? 'pour') as Kind;
  const row: Record<string, unknown> = { kind };
  const no = numberOf(textOf(options, 'number'));
  if (!no.ok) return no;
  if (no.value !== undefined) row.no = no.value;
  for (const option of ROW_OPTIONS) {
    const name = nameOfFlags(option.flags);
    const text = textOf(options, keyOf(name));
    if (text === undefined) continue;
    if (!option.of.includes(kind)) return notOfKind(name, kind);
    const value = fieldValue(`--${name}`, text, option);
    if (!value.ok) return value;
    row[option.field] = value.value;
  }
  const cups = listOf(options, 'foamMass');
  if (cups.length > 0 && kind !== 'cup') return notOfKind('foam-mass', kind);
  const foams = cups.map((text) => quantityOption('--foam-mass', text, 'mass', 'g', true));
  for (const foam of foams) if (!foam.ok) return foam;
  if (foams.length > 0) row.foamsG = foams.map((foam) => (foam.ok ? foam.value : 0));
  return Object.keys(row).length > 1
    ? good(row as unknown as RowDraft)
    : bad('BAD_CALL', {
        text: 'The row says nothing.',
        hint: 'Give what was weighed, as --mixed 513 --residue 24.',
      });
}

const notOfKind = (name: string, kind: Kind): Outcome<never> =>
  bad('BAD_CALL', {
    text: `A row of kind "${kind}" has no --${name}.`,
    hint: 'Say --kind, or leave it out.',
  });

function numberOf(text: string | undefined): Outcome<number | undefined> {
  if (text === undefined) return good(undefined);
  if (/^[1-9]\d{0,8}$/.test(text)) return good(Number(text));
  return bad('BAD_CALL', { text: `--number "${text}" is no whole number.`, hint: 'Give one from 1 up.' });
}

function fieldValue(flag: string, text: string, { field, quantity }: RowOption): Outcome<number | string> {
  if (quantity !== undefined)
    return quantityOption(flag, text, quantity.kind, quantity.bareUnit, quantity.allowZero);
  const isDay: boolean = isIsoDate(text);
  if (field === 'day' && !isDay)
    return bad('BAD_CALL', { text: `${flag} "${text}" is not a day.`, hint: 'Write it as 2026-03-31.' });
  return good(text);
}
