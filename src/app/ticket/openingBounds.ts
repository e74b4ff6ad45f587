import { bad, type Problem } from '../../problem';
import { DEMOLD_BOUNDS, POUR_BOUNDS } from '../../yield';
import type { FieldName, Fields } from './fields';
import type { OpeningField } from './openingFields';
import { valueIn } from './readField';

interface Bounded {
  field: OpeningField;
  input: string;
  low: number;
  high: number;
  unit: string;
}

const stretch = DEMOLD_BOUNDS.elongationAtBreak;

/** Bounds of sense of what is typed here. The engine uses some of it only where all of the pour is known: what is out of bounds is told at once. */
const BOUNDED: readonly Bounded[] = [
  { field: 'openWide', input: 'sprueMm', ...POUR_BOUNDS.sprueMm },
  { field: 'pourWithin', input: 'withinS', ...POUR_BOUNDS.withinS },
  { field: 'mixViscosity', input: 'mixPaS', ...POUR_BOUNDS.mixPaS },
  { field: 'riseTime', input: 'riseS', ...POUR_BOUNDS.riseS },
  { field: 'ventWide', input: 'ventMm', ...POUR_BOUNDS.ventMm },
  {
    field: 'breakStretch',
    input: 'elongationAtBreak',
    low: 100 * stretch.low,
    high: 100 * stretch.high,
    unit: '%',
  },
];

/** The first box that is beyond what makes sense. */
export function openingRefusal(fields: Fields): Problem | undefined {
  for (const { field, input, low, high, unit } of BOUNDED) {
    const value = valueIn(fields, field);
    if (value !== undefined && (value < low || value > high))
      return bad('INPUT_OUT_OF_BOUNDS', { input, value, low, high, unit }).problem;
  }
  return undefined;
}

const FIELD_OF_INPUT: Readonly<Record<string, FieldName>> = {
  ...Object.fromEntries(BOUNDED.map(({ field, input }) => [input, field])),
  openingMm: 'openWide',
  freeRiseKgM3: 'freeRise',
  packFactor: 'pack',
};

/** The box by which a problem of opening and vents is told, if it has one. */
export const fieldOfOpening = ({ code, values }: Problem): FieldName | undefined =>
  code === 'PACK_REFUSED' ? 'pack' : FIELD_OF_INPUT[String(values.input ?? '')];
