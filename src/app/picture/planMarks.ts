import { dot, type Vector } from '../../geometry';
import type { MarkedPlace, OpeningPlan } from '../../plan';
import type { Level } from '../../viewer/levelEnds';
import type { Mark } from '../../viewer/mark';
import { unitsOf, type MmSeat } from '../../viewer/shown';
import type { BoxMm } from './cutControls';

/** Every numbered place of the plan as a mark with the same number: the opening as its true ring, vents up to the outside of all that is drawn. */
export function planMarks(plan: OpeningPlan, seat: MmSeat, box: BoxMm): Mark[] {
  return plan.places.map((place) => ({
    label: String(place.n),
    at: unitsOf(place.atMm, seat),
    normal: place.normal,
    isRow: true,
    ...(place.kind === 'opening' ? { ringRadius: place.diameterMm / 2 / seat.mmPerUnit } : {}),
    ...(isVent(place) ? { upTo: unitsOf(outOf(box, place.atMm, plan.filling.up), seat) } : {}),
  }));
}

const isVent = ({ kind }: MarkedPlace): boolean => kind === 'vent planned' || kind === 'vent advised';

/** Vents end this far above what they lead out of, as a share of it. Chosen here. */
const ABOVE = 0.04;

/** Where a line from a place leaves the box, and a little further. */
export function outOf({ min, max }: BoxMm, from: Vector, up: Vector): Vector {
  const reaches = [0, 1, 2].flatMap((k) => {
    const c = up[k]!;
    if (Math.abs(c) < 1e-9) return [];
    return [((c > 0 ? max[k]! : min[k]!) - from[k]!) / c];
  });
  const size = Math.max(...max.map((high, k) => high - min[k]!));
  const reach = Math.max(0, Math.min(...reaches)) + ABOVE * size;
  return [from[0] + reach * up[0], from[1] + reach * up[1], from[2] + reach * up[2]];
}

/** A line this far above a level, as a share of the pocket's rise, keeps off the rim where the pocket opens. Chosen here. */
const OFF_RIM = 0.02;

/** How far air stays in each pocket: as it is poured, and under silicone poured over the standing sculpt. */
export function planLevels({ filling, underSilicone, places }: OpeningPlan, seat: MmSeat): Level[] {
  const marked = places.filter(({ kind }) => kind === 'air under silicone');
  const silicone = underSilicone?.traps.slice(0, marked.length) ?? [];
  return [
    ...filling.traps.map((trap) => ({ trap, up: filling.up })),
    ...silicone.map((trap) => ({ trap, up: STANDING })),
  ].map(({ trap: { topMm, saddleMm, riseMm }, up }) => ({
    top: unitsOf(topMm, seat),
    up,
    at: dot(unitsOf(saddleMm, seat), up) + (OFF_RIM * riseMm) / seat.mmPerUnit,
  }));
}

const STANDING: Vector = [0, 0, 1];

/** Up when poured, where it is not the picture's own up. */
export function pouredUp({ filling: { up } }: OpeningPlan): Vector | undefined {
  return up[2] > 0.9998 ? undefined : up;
}
