import { UP_AXES, type UpAxis, type Vector } from '../geometry';
import type { OpeningAsk } from '../plan';
import { bad, good, type Outcome } from '../problem';
import { POUR_BOUNDS } from '../yield';
import { listOf, textOf, type OptionSpec, type OptionValues } from './command';
import { defined, type Figure } from './moldFigures';
import { readBounded, type Bounds } from './openingFigures';

const PLACED =
  'mm from the zero of the scan, turned up, as at_mm and top_mm are printed: z up, y to the front of the piece, x to its own right';

/** Where the mold is opened, vented and which way up it is poured. */
export const PLACE_OPTIONS: readonly OptionSpec[] = [
  { flags: '--base <how>', about: 'the face on the board (assumed open)', choices: ['open', 'closed'] },
  {
    flags: '--opening <point>',
    about: `middle of the pour opening, "x,y,z" (${PLACED}; assumed in the face on the board)`,
  },
  { flags: '--opening-diameter <length>', about: 'width of the opening (bare number: mm; else advised)' },
  {
    flags: '--opening-share <share>',
    about: 'most that the opening may take of the largest section across it (assumed 0.05)',
  },
  { flags: '--vent <point>', about: 'a vent that is planned, "x,y,z" as --opening', repeat: true },
  { flags: '--vent-diameter <length>', about: 'width of each vent (bare number: mm; assumed 2)' },
  {
    flags: '--pour-up <way>',
    about:
      'up when poured, of the piece as it stands on its board: an axis, or "x,y,z" (assumed: the way the opening faces)',
  },
  { flags: '--search-up', about: 'also look for the way up that shuts in the least air' },
  { flags: '--thin <length>', about: 'foam thinner than this is thin (bare number: mm; assumed 6)' },
];

type Key = 'diameterMm' | 'shareMost' | 'ventMm' | 'thinMm';

/** What anyone calls thin. Chosen here. */
const THIN_MM: Bounds = { low: 0.5, high: 200 };

const FIGURES: readonly (Figure<Key> & { bounds: Bounds })[] = [
  {
    key: 'diameterMm',
    option: 'openingDiameter',
    kind: 'length',
    bareUnit: 'mm',
    bounds: POUR_BOUNDS.sprueMm,
  },
  { key: 'shareMost', option: 'openingShare', kind: 'share', bounds: POUR_BOUNDS.shareMost },
  { key: 'ventMm', option: 'ventDiameter', kind: 'length', bareUnit: 'mm', bounds: POUR_BOUNDS.ventMm },
  { key: 'thinMm', option: 'thin', kind: 'length', bareUnit: 'mm', bounds: THIN_MM },
];

type PlaceAsk = Pick<OpeningAsk, 'base' | 'opening' | 'pourUp' | 'vents' | 'ventMm' | 'thinMm' | 'searchUp'>;

/** Errors: BAD_CALL. */
export function placeOptions(options: OptionValues): Outcome<PlaceAsk> {
  const read = readBounded(options, FIGURES);
  if (!read.ok) return read;
  const { diameterMm, shareMost, ventMm, thinMm } = read.value;
  const opening = pointOption('--opening', textOf(options, 'opening'));
  if (!opening.ok) return opening;
  const up = upOption(textOf(options, 'pourUp'));
  if (!up.ok) return up;
  const vents: Vector[] = [];
  for (const text of listOf(options, 'vent')) {
    const vent = pointOption('--vent', text);
    if (!vent.ok) return vent;
    if (vent.value !== undefined) vents.push(vent.value);
  }
  return good(
    defined({
      base: textOf(options, 'base') as PlaceAsk['base'],
      opening: defined({ atMm: opening.value, diameterMm, shareMost }),
      pourUp: up.value,
      vents: vents.length === 0 ? undefined : vents,
      ventMm,
      thinMm,
      searchUp: options.searchUp === true ? true : undefined,
    }),
  );
}

/** Farther than this from the middle of the board nothing is cast, mm. Chosen here. */
const FARTHEST_MM = 1e5;

/** Plain numbers with a point: a comma stands between them. */
const NUMBER = /^\s*[+-]?(\d+\.?\d*|\.\d+)\s*$/;

function pointOption(option: string, text: string | undefined): Outcome<Vector | undefined> {
  if (text === undefined) return good(undefined);
  const point = threeNumbers(text);
  if (point === undefined)
    return bad('BAD_CALL', {
      text: `${option} "${text}" is not a place: three numbers in mm are needed.`,
      hint: `Write "x,y,z" with a point as decimal sign, as "12.5,-30,140" (${PLACED}).`,
    });
  if (point.some((c) => Math.abs(c) > FARTHEST_MM))
    return bad('BAD_CALL', {
      text: `${option} "${text}" lies more than ${FARTHEST_MM / 1000} m away.`,
      hint: `Check the unit: a place is in mm (${PLACED}).`,
    });
  return good(point);
}

const AXES: Readonly<Record<UpAxis, Vector>> = {
  '+x': [1, 0, 0],
  '-x': [-1, 0, 0],
  '+y': [0, 1, 0],
  '-y': [0, -1, 0],
  '+z': [0, 0, 1],
  '-z': [0, 0, -1],
};

function upOption(text: string | undefined): Outcome<Vector | undefined> {
  if (text === undefined) return good(undefined);
  const axis = UP_AXES.find((one) => one === text.trim().toLowerCase());
  if (axis !== undefined) return good(AXES[axis]);
  const way = threeNumbers(text);
  if (way !== undefined && Math.hypot(...way) > 0) return good(way);
  return bad('BAD_CALL', {
    text: `--pour-up "${text}" is not a direction.`,
    hint: `Write one of ${UP_AXES.join(', ')}, or "x,y,z" with one of them other than 0, as "0.5,0,-1".`,
  });
}

function threeNumbers(text: string): Vector | undefined {
  const parts = text.split(',');
  if (parts.length !== 3 || !parts.every((part) => NUMBER.test(part))) return undefined;
  return parts.map(Number) as unknown as Vector;
}
