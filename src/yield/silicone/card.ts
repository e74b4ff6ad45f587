import type { Source } from '../../estimate';
import { bad, good } from '../../problem';
import type { Outcome } from '../../problem';
import { readKits } from './cardKits';
import { isWithin } from './checkSilicone';
import type { SiliconeRatio } from './checkSilicone';
import type { SiliconeKit } from './kits';
import { SILICONE_BOUNDS } from './rules';
import type { SiliconeInput } from './rules';

/** What the shop knows about one silicone. Nothing in it is ours: it is the user's data sheet. */
export interface SiliconeCard {
  name: string;
  /** Condensation cures are usually tin catalyzed, addition cures platinum. Unknown when left out. */
  cure?: 'condensation' | 'addition';
  /** Of the mix. */
  densityKgM3: number;
  ratio: SiliconeRatio;
  potLifeMin: number;
  potLifeAtC?: number;
  mixedViscosityPaS?: number;
  shoreA?: number;
  /** Stretch at break; 3 is 300 %. */
  elongationAtBreak?: number;
  linearShrinkShare?: number;
  shrinkFrom?: Source;
  kits: SiliconeKit[];
  /** ISO date, `2026-03-31`. */
  openedOn?: string;
  cureMin?: number;
}

/**
 * A silicone card out of a shop file: unknown JSON in, a checked card or SILICONE_CARD_FIELD with the field and what it
 * needs. Takes `densityGCm3`, `linearShrink` and `kitsKg` of older files as well as the names of the card itself, so a
 * card that was written can be read again. A ratio by volume becomes one by mass through `partDensities` {baseKgM3,
 * catalystKgM3}. Fields it does not know stay on the card untouched.
 */
export function readSiliconeCard(json: unknown): Outcome<SiliconeCard> {
  if (!isRecord(json)) return field('card', 'an object');
  const { name } = json;
  if (typeof name !== 'string' || name.trim() === '') return field('name', 'a text');
  const densityKgM3 = readDensity(json);
  if (!densityKgM3.ok) return densityKgM3;
  const ratio = readRatio(json);
  if (!ratio.ok) return ratio;
  if (!isWithin(json.potLifeMin, 'potLifeMin')) return field('potLifeMin', needOf('potLifeMin'));
  const kits = readKits(json);
  if (!kits.ok) return kits;
  const card: SiliconeCard = {
    ...unknownFields(json),
    name,
    densityKgM3: densityKgM3.value,
    ratio: ratio.value,
    potLifeMin: json.potLifeMin,
    kits: kits.value,
  };
  return withOptions(card, json);
}

function readDensity({ densityKgM3, densityGCm3 }: Json): Outcome<number> {
  if (densityKgM3 !== undefined && densityGCm3 !== undefined)
    return field('densityKgM3', 'to be alone: densityGCm3 stands beside it');
  const value = typeof densityGCm3 === 'number' ? Number((1000 * densityGCm3).toPrecision(12)) : densityKgM3;
  if (isWithin(value, 'densityKgM3')) return good(value);
  const { low, high } = SILICONE_BOUNDS.densityKgM3;
  return densityGCm3 === undefined
    ? field('densityKgM3', needOf('densityKgM3'))
    : field('densityGCm3', `a number from ${low / 1000} to ${high / 1000} g/cm3`);
}

const RATIO_NEED = "{ base, catalyst, by } with two numbers above 0, base first, by 'mass' or 'volume'";

function readRatio({ ratio, partDensities }: Json): Outcome<SiliconeRatio> {
  if (!isRecord(ratio)) return field('ratio', RATIO_NEED);
  const { base, catalyst, by } = ratio;
  if (!isWithin(base, 'ratioPart') || !isWithin(catalyst, 'ratioPart')) return field('ratio', RATIO_NEED);
  if (by === 'mass') return good({ ...ratio, base, catalyst, by });
  if (by !== 'volume') return field('ratio', RATIO_NEED);
  const parts = isRecord(partDensities) ? partDensities : {};
  const { baseKgM3, catalystKgM3 } = parts;
  if (!isWithin(baseKgM3, 'densityKgM3') || !isWithin(catalystKgM3, 'densityKgM3'))
    return field(
      'partDensities',
      '{ baseKgM3, catalystKgM3 } with two densities in kg/m3, as the ratio is by volume and a scale weighs no volume; ' +
        'or give the ratio by mass',
    );
  return good({ ...ratio, base: (base * baseKgM3) / catalystKgM3, catalyst, by: 'mass' });
}

function withOptions(card: SiliconeCard, json: Json): Outcome<SiliconeCard> {
  if (json.linearShrink !== undefined && json.linearShrinkShare !== undefined)
    return field('linearShrinkShare', 'to be alone: linearShrink stands beside it');
  for (const [written, name] of OPTIONAL_NUMBERS) {
    const value = json[written];
    if (value === undefined) continue;
    if (!isWithin(value, BOUNDS_OF[name])) return field(written, needOf(BOUNDS_OF[name]));
    card[name] = value;
  }
  const { cure, shrinkFrom, openedOn } = json;
  if (cure !== undefined) {
    if (cure !== 'condensation' && cure !== 'addition') return field('cure', "'condensation' or 'addition'");
    card.cure = cure;
  }
  if (shrinkFrom !== undefined) {
    if (!isSource(shrinkFrom)) return field('shrinkFrom', `one of ${SHRINK_SOURCES.join(', ')}`);
    card.shrinkFrom = shrinkFrom;
  }
  if (openedOn !== undefined) {
    if (!isIsoDate(openedOn)) return field('openedOn', 'a date such as 2026-03-31');
    card.openedOn = openedOn;
  }
  return good(card);
}

const BOUNDS_OF = {
  potLifeAtC: 'potLifeAtC',
  mixedViscosityPaS: 'viscosityPaS',
  shoreA: 'shoreA',
  elongationAtBreak: 'elongationAtBreak',
  linearShrinkShare: 'linearShrinkShare',
  cureMin: 'cureMin',
} as const satisfies Partial<Record<keyof SiliconeCard, SiliconeInput>>;

const OPTIONAL_NUMBERS = [
  ['potLifeAtC', 'potLifeAtC'],
  ['mixedViscosityPaS', 'mixedViscosityPaS'],
  ['shoreA', 'shoreA'],
  ['elongationAtBreak', 'elongationAtBreak'],
  ['linearShrink', 'linearShrinkShare'],
  ['linearShrinkShare', 'linearShrinkShare'],
  ['cureMin', 'cureMin'],
] as const;

const SHRINK_SOURCES: readonly Source[] = ['given', 'data-sheet', 'taped', 'assumed', 'learned'];

/** The names of older files, whose values stand on the card under the new ones. */
const OLD_NAMES = ['densityGCm3', 'linearShrink', 'kitsKg'];

const unknownFields = (json: Json): Json =>
  Object.fromEntries(Object.entries(json).filter(([name]) => !OLD_NAMES.includes(name)));

const field = (name: string, need: string): ReturnType<typeof bad> =>
  bad('SILICONE_CARD_FIELD', { field: name, need });

function needOf(input: SiliconeInput): string {
  const { low, high, unit } = SILICONE_BOUNDS[input];
  return `a number from ${low} to ${high} ${unit}`.trimEnd();
}

type Json = Record<string, unknown>;

const isRecord = (json: unknown): json is Json =>
  typeof json === 'object' && json !== null && !Array.isArray(json);

const isSource = (value: unknown): value is Source => SHRINK_SOURCES.some((source) => source === value);

/** A day that exists: 2026-02-30 does not. */
export function isIsoDate(value: unknown): value is string {
  if (typeof value !== 'string' || !/^\d{4}-\d{2}-\d{2}$/.test(value)) return false;
  const day = new Date(`${value}T00:00:00Z`);
  return !Number.isNaN(day.getTime()) && day.toISOString().startsWith(value);
}
