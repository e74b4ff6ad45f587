import type { Source } from '../estimate';
import { bad, good } from '../problem';
import type { Outcome } from '../problem';
import { checkInput } from './checkInput';
import { massRatio } from './foam';
import type { FoamCard, MixRatio, PartDensities } from './foam';

/**
 * A foam card out of a shop file: unknown JSON in, a checked card or FOAM_CARD_FIELD with the field and what it needs.
 * Fields it does not know stay on the card untouched.
 */
export function readFoamCard(json: unknown): Outcome<FoamCard> {
  if (!isRecord(json)) return field('card', 'an object');
  const { name, freeRiseKgM3, freeRiseFrom, ratio, partDensities, ...more } = json;
  if (typeof name !== 'string' || name.trim() === '') return field('name', 'a text');
  if (typeof freeRiseKgM3 !== 'number') return field('freeRiseKgM3', 'a number in kg/m3');
  const dense = checkInput(freeRiseKgM3, 'freeRiseKgM3');
  if (!dense.ok) return dense;
  if (!isSource(freeRiseFrom)) return field('freeRiseFrom', `one of ${CARD_SOURCES.join(', ')}`);
  if (!isRatio(ratio)) return field('ratio', "{ a, b, by } with two numbers, A first, by 'mass' or 'volume'");
  if (partDensities !== undefined && !isPartDensities(partDensities)) {
    return field('partDensities', '{ aKgM3, bKgM3 } with two numbers in kg/m3');
  }
  const byMass = massRatio(ratio, partDensities);
  if (!byMass.ok) return byMass;
  const card: FoamCard = {
    ...more,
    name,
    freeRiseKgM3,
    freeRiseFrom,
    ratio: { ...ratio },
  };
  if (partDensities !== undefined) card.partDensities = { ...partDensities };
  return withOptionalNumbers(card, json);
}

/** True when a typed ratio is the card's in the other order, and not the card's as it stands. Volume is not mass. */
export function reversedRatio(card: FoamCard, typed: MixRatio): boolean {
  if (typed.by !== card.ratio.by) return false;
  const asOnCard = sameProportion(typed, card.ratio);
  return !asOnCard && sameProportion({ a: typed.b, b: typed.a }, card.ratio);
}

function withOptionalNumbers(card: FoamCard, json: Record<string, unknown>): Outcome<FoamCard> {
  for (const [name, unit] of OPTIONAL) {
    const value = json[name];
    if (value === undefined) continue;
    if (typeof value !== 'number' || !Number.isFinite(value) || value <= 0)
      return field(name, `a number above 0 in ${unit}`);
    card[name] = value;
  }
  if (card.liquidDensityKgM3 === undefined) return good(card);
  const dense = checkInput(card.liquidDensityKgM3, 'liquidKgM3', 'liquidDensityKgM3');
  return dense.ok ? good(card) : dense;
}

const OPTIONAL = [
  ['liquidDensityKgM3', 'kg/m3'],
  ['creamS', 's'],
  ['riseS', 's'],
  ['openMin', 'min'],
] as const;

const CARD_SOURCES: readonly Source[] = ['given', 'data-sheet', 'cup-test', 'assumed', 'learned'];

const field = (name: string, need: string): ReturnType<typeof bad> =>
  bad('FOAM_CARD_FIELD', { field: name, need });

const isRecord = (json: unknown): json is Record<string, unknown> =>
  typeof json === 'object' && json !== null && !Array.isArray(json);

const isSource = (value: unknown): value is Source => CARD_SOURCES.some((source) => source === value);

const isRatio = (value: unknown): value is MixRatio =>
  isRecord(value) &&
  typeof value.a === 'number' &&
  typeof value.b === 'number' &&
  (value.by === 'mass' || value.by === 'volume');

const isPartDensities = (value: unknown): value is PartDensities =>
  isRecord(value) && typeof value.aKgM3 === 'number' && typeof value.bKgM3 === 'number';

const sameProportion = (one: { a: number; b: number }, other: { a: number; b: number }): boolean =>
  Math.abs(one.a * other.b - one.b * other.a) <= 1e-9 * Math.abs(one.a * other.b);
