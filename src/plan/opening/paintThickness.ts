import { nearestSamples, type BaseChoice, type Thickness, type Watched } from '../../geometry';
import { bad, good, type Outcome } from '../../problem';
import { sculptOn, type MoldBench } from '../mold/moldBench';
import { castingSamples } from './thin';

/** Thickness of the casting at each of some points, mm; NaN where it is not known. What is thicker than `cappedMm` is told as that. */
export interface PaintedThickness {
  thicknessMm: Float32Array;
  cappedMm: number;
}

/**
 * A point takes after the nearest sample that has a thickness, up to so many times their spacing away. Farther off it is not known: no two faces face each other there
 * (`Thickness.notMeasuredShare`), or the surface was not looked at (a hollow, a part that was left out). Chosen here: single samples without one are bridged.
 */
const REACH_SPACINGS = 2;

/**
 * The casting's thickness where the samples of its surface have it, as `castingThickness` sums it up; measured once for a bench.
 *
 * @param points x, y, z each, mm on the placed piece
 * Errors: those of `standSculpt` and `castingThickness`; MOLD_NEEDS_SURFACE.
 */
export function paintThickness(
  bench: MoldBench,
  base: BaseChoice,
  points: Float32Array | Float64Array,
  watch: Watched,
): Outcome<PaintedThickness> {
  const sculpt = sculptOn(bench, base);
  if (!sculpt.ok) return sculpt;
  if (sculpt.value.chain === undefined) return bad('MOLD_NEEDS_SURFACE', { what: 'a thickness' });
  const found = castingSamples(bench, base, sculpt.value, watch);
  if (!found.ok) return found;
  const { spacingMm, cappedMm } = found.value;
  const { positions, thicknessMm } = knownSamples(found.value);
  const nearest = nearestSamples(points, positions, REACH_SPACINGS * spacingMm);
  return good({ thicknessMm: Float32Array.from(nearest, (s) => (s < 0 ? NaN : thicknessMm[s]!)), cappedMm });
}

function knownSamples({ positions, thicknessMm }: Thickness): Pick<Thickness, 'positions' | 'thicknessMm'> {
  const known = Array.from(thicknessMm.keys()).filter((s) => !Number.isNaN(thicknessMm[s]!));
  const kept = new Float32Array(3 * known.length);
  known.forEach((s, n) => kept.set(positions.subarray(3 * s, 3 * s + 3), 3 * n));
  return { positions: kept, thicknessMm: Float32Array.from(known, (s) => thicknessMm[s]!) };
}
