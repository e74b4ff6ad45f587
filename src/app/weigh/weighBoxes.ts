import type { WeighBox, WeighState } from '../../job/weighState';
import type { SavedField } from '../../job/piece';
import { numberText } from '../../units';
import type { FieldSpec } from '../ticket/fieldSpec';
import { readSpec, type BoxText, type FieldRead } from '../ticket/readSpec';

/** As read or weighed at the bench. */
export interface AtBench {
  roomC?: number;
  moldC?: number;
  aG?: number;
  bG?: number;
  opening?: 'open' | 'plug';
  /** YYYY-MM-DD of the pour. */
  day: string;
}

const WEIGHT = { kind: 'mass', units: ['g', 'oz', 'lb', 'kg'] } as const;
const WARMTH = { kind: 'temperature', units: ['C', 'F'] } as const;

export const BOX_SPECS: Readonly<Record<WeighBox, FieldSpec>> = {
  mixed: WEIGHT,
  residue: { ...WEIGHT, allowZero: true },
  trim: { ...WEIGHT, allowZero: true },
  casting: WEIGHT,
  room: WARMTH,
  mold: WARMTH,
};

/** What a shop calls the unit of each box among those it remembers. */
export const unitKey = (box: WeighBox | 'missing'): string => `weigh-${box}`;

/** The units that the shop chose last, by `unitKey`. */
export type UnitMemory = Readonly<Record<string, string>>;

/** What stands in a box: as typed; else the temperature from the bench, in the unit chosen last; else nothing. */
export function boxOf(
  box: WeighBox,
  { boxes }: WeighState,
  bench: Pick<AtBench, 'roomC' | 'moldC'>,
  units: UnitMemory,
): BoxText | 'not' {
  const typed = boxes[box];
  if (typed === 'not') return 'not';
  const unit = startUnit(BOX_SPECS[box].units, typed?.unit ?? units[unitKey(box)]);
  if (typed !== undefined) return { ...typed, unit };
  const atC = box === 'room' ? bench.roomC : box === 'mold' ? bench.moldC : undefined;
  return { text: atC === undefined ? '' : temperatureText(atC, unit), unit };
}

const startUnit = (units: readonly string[], chosen: string | undefined): string =>
  chosen !== undefined && units.includes(chosen) ? chosen : (units[0] ?? '');

/** A temperature in C as it reads in C or F, to a tenth. */
export const temperatureText = (atC: number, unit: string): string =>
  numberText(Math.round(10 * (unit === 'F' ? 1.8 * atC + 32 : atC)) / 10);

/** What a box says. */
export const readBox = (box: WeighBox, text: BoxText | 'not'): FieldRead =>
  text === 'not' ? { kind: 'blank' } : readSpec(BOX_SPECS[box], text);

const VOLUME: FieldSpec = { kind: 'volume', units: ['cm3', '%'], allowZero: true };
const SHARE: FieldSpec = { kind: 'share', units: ['cm3', '%'] };

/** How what is missing is read: as a share where the unit beside the box or the text itself says so. */
export const missingSpec = ({ text, unit }: BoxText): FieldSpec =>
  unit === '%' || text.includes('%') ? SHARE : VOLUME;

export const missingBox = (missing: SavedField | undefined, units: UnitMemory): BoxText => ({
  ...(missing ?? { text: '' }),
  unit: startUnit(VOLUME.units, missing?.unit ?? units[unitKey('missing')]),
});

/** What is missing of a short one, cm3; a share is of the cavity, and nothing where nobody knows that. */
export function missingCm3(box: BoxText, cavityCm3: number | undefined): number | undefined {
  const spec = missingSpec(box);
  const read = readSpec(spec, spec.kind === 'share' ? { ...box, unit: '%' } : box);
  if (read.kind !== 'one') return undefined;
  if (spec.kind === 'volume') return read.value;
  return cavityCm3 === undefined ? undefined : read.value * cavityCm3;
}
