import { bad, good } from '../problem';
import type { Outcome } from '../problem';
import type { Source } from '../estimate';
import { checkInput } from './checkInput';
import { INPUT_BOUNDS } from './rules';

/** Parts A to parts B, A the isocyanate side; always in that order. */
export interface MixRatio {
  a: number;
  b: number;
  by: 'mass' | 'volume';
}

export interface PartDensities {
  aKgM3: number;
  bKgM3: number;
}

/** What the shop knows about one foam. Nothing in it is ours: it is the user's data sheet and cup tests. */
export interface FoamCard {
  name: string;
  freeRiseKgM3: number;
  freeRiseFrom: Source;
  ratio: MixRatio;
  partDensities?: PartDensities;
  liquidDensityKgM3?: number;
  creamS?: number;
  riseS?: number;
  openMin?: number;
}

/** The ratio by mass: as given, or through the densities of the parts. */
export interface MassRatio {
  a: number;
  b: number;
  by: 'mass';
}

/**
 * The ratio by mass. By volume it needs both part densities, since a mL of A and a mL of B do not weigh the same:
 * without them the problem PART_DENSITIES_NEEDED comes back, never a guess.
 */
export function massRatio(ratio: MixRatio, partDensities?: PartDensities): Outcome<MassRatio> {
  const sound = checkRatio(ratio);
  if (!sound.ok) return sound;
  const dense = partDensities === undefined ? undefined : checkPartDensities(partDensities);
  if (dense?.ok === false) return dense;
  if (ratio.by === 'mass') return good({ a: ratio.a, b: ratio.b, by: 'mass' });
  if (partDensities === undefined) return bad('PART_DENSITIES_NEEDED', { a: ratio.a, b: ratio.b });
  const byMass = { a: ratio.a * partDensities.aKgM3, b: ratio.b * partDensities.bKgM3, by: 'mass' as const };
  const again = checkRatio(byMass);
  return again.ok ? good(byMass) : again;
}

/** Parts A per 100 parts B by mass: 52 for 52:100. */
export const partsAPer100B = (ratio: MassRatio): number => (100 * ratio.a) / ratio.b;

/** Parts B per 100 parts A by mass: 192.3 for 52:100. */
export const partsBPer100A = (ratio: MassRatio): number => (100 * ratio.b) / ratio.a;

/** Share of A in the mass of the mix, 0..1. */
export const shareOfA = (ratio: MassRatio): number => ratio.a / (ratio.a + ratio.b);

/** The A that belongs to the B that lies in the cup: what was poured too much or too little of B is made good. */
export const targetAG = (ratio: MassRatio, weighedBG: number): number => (ratio.a / ratio.b) * weighedBG;

/** Density of the mixed liquid in kg/m3, the volumes taken as additive (no excess volume). */
export function mixedLiquidKgM3(ratio: MassRatio, parts: PartDensities): number {
  const a = shareOfA(ratio);
  return 1 / (a / parts.aKgM3 + (1 - a) / parts.bKgM3);
}

/** How many times its liquid volume the foam fills. */
export const expansionRatio = (liquidKgM3: number, foamKgM3: number): number => liquidKgM3 / foamKgM3;

function checkRatio({ a, b, by }: MixRatio): Outcome<true> {
  const finite = Number.isFinite(a) && Number.isFinite(b) && a > 0 && b > 0;
  if (!finite || (by !== 'mass' && by !== 'volume')) {
    return bad('RATIO_NOT_POSITIVE', { a: String(a), b: String(b), by: String(by) });
  }
  const { low, high } = INPUT_BOUNDS.ratioOfSides;
  const sides = a / b;
  return sides >= low && sides <= high ? good(true) : bad('RATIO_EXTREME', { a, b, low, high });
}

function checkPartDensities(parts: PartDensities): Outcome<true> {
  const a = checkInput(parts.aKgM3, 'partDensityKgM3', 'partDensityAKgM3');
  if (!a.ok) return a;
  const b = checkInput(parts.bKgM3, 'partDensityKgM3', 'partDensityBKgM3');
  return b.ok ? good(true) : b;
}
