import type { Vector } from '../../geometry';
import { numberText } from '../../units';
import { textOf, type Fields } from './fields';
import { ventFields, MOST_VENTS } from './madeFields';

/** Up when poured, on the axes of the piece as it stands: its face is toward +y, so its right is +x. */
export const POUR_WAYS = {
  stands: [0, 0, 1],
  over: [0, 0, -1],
  front: [0, 1, 0],
  back: [0, -1, 0],
  left: [-1, 0, 0],
  right: [1, 0, 0],
} as const satisfies Record<string, Vector>;

export type PourWay = keyof typeof POUR_WAYS;

/** What was said of opening and vents beside what was typed into fields. */
export interface Venting {
  /** The question has come into view, or was asked: from then on it is worked out. It takes seconds, and a battery. */
  isWanted: boolean;
  /** Empty: the way the opening faces. */
  way: '' | PourWay | 'found';
  /** One that the search found and that was taken. */
  foundUp: Vector | undefined;
  /** Vents that are planned: rows of fields on the page. */
  rows: number;
  /** What the best way up was looked for; anything else and nothing was looked for. */
  searchFor: string | undefined;
}

export const newVenting = (): Venting => ({
  isWanted: false,
  way: '',
  foundUp: undefined,
  rows: 0,
  searchFor: undefined,
});

/** What the user says of opening and vents, beside what is typed. */
export type VentingWord =
  | { do: 'pourWay'; way: '' | PourWay }
  | { do: 'takeUp'; up: Vector }
  | { do: 'addVents'; atMm: readonly (Vector | undefined)[] }
  | { do: 'dropVent'; row: number };

interface Said {
  venting: Venting;
  fields: Fields;
}

export function withVentingWord({ venting, fields }: Said, word: VentingWord): Said {
  switch (word.do) {
    case 'pourWay':
      return { venting: { ...venting, way: word.way }, fields };
    case 'takeUp':
      return { venting: { ...venting, way: 'found', foundUp: word.up }, fields };
    case 'addVents':
      return withRows(
        { venting, fields },
        [...rowsOf({ venting, fields }).filter(isTyped), ...word.atMm.map(typedRow)].slice(0, MOST_VENTS),
      );
    case 'dropVent':
      return withRows(
        { venting, fields },
        rowsOf({ venting, fields }).filter((_, row) => row !== word.row),
      );
  }
}

type Row = readonly Fields[`vent.${string}`][];

const BLANK = { text: '', unit: 'mm' };

const rowsOf = ({ venting, fields }: Said): Row[] =>
  Array.from({ length: venting.rows }, (_, row) => ventFields(row).map((name) => textOf(fields, name)));

const isTyped = (row: Row): boolean => row.some(({ text }) => text.trim() !== '');

/** To a tenth of a millimeter: finer than anyone pricks a hole. */
const typedRow = (atMm: Vector | undefined): Row =>
  [0, 1, 2].map((axis) =>
    atMm === undefined
      ? BLANK
      : { text: numberText(Math.round(10 * atMm[axis as 0 | 1 | 2]) / 10 + 0), unit: 'mm' },
  );

function withRows({ venting, fields }: Said, rows: readonly Row[]): Said {
  const typed = Array.from({ length: MOST_VENTS }, (_, row) =>
    ventFields(row).map((name, axis) => [name, rows[row]?.[axis] ?? BLANK] as const),
  ).flat();
  return {
    venting: { ...venting, rows: rows.length },
    fields: { ...fields, ...Object.fromEntries(typed) },
  };
}
