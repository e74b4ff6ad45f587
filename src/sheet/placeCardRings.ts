/** A place on paper, mm, down from the upper edge. */
export interface PaperPoint {
  x: number;
  y: number;
}

/** Where the outline of a view lies on paper, mm. */
export interface PaperBox extends PaperPoint {
  width: number;
  height: number;
}

/** Air between rings, and between a ring and the view, mm. Chosen here. */
const RING_AIR_MM = 0.8;
const VIEW_AIR_MM = 1.5;

/** What a leader is lengthened by, in choosing, for each ring place it would pass under. Chosen here. */
const PASSING_MM = 20;

/** Radius of the rings, mm: for two digits of 12 pt, and more for more. */
export const ringRadiusMm = (largestNumber: number): number =>
  3.5 + 0.95 * Math.max(0, String(largestNumber).length - 2);

/** Rows of rings around a view: above and below it, and at both sides too unless there is no width for them. */
export interface RingRows {
  radiusMm: number;
  rows: number;
  atSides: boolean;
}

/** How far the rings reach beyond the view, with half of the air, mm. */
export function ringMargins({ radiusMm, rows, atSides }: RingRows): { besideMm: number; aboveMm: number } {
  const aboveMm = VIEW_AIR_MM + 2 * radiusMm + (rows - 1) * pitchMm(radiusMm) + RING_AIR_MM / 2;
  return { aboveMm, besideMm: atSides ? aboveMm : radiusMm + RING_AIR_MM / 2 };
}

const pitchMm = (radiusMm: number): number => 2 * radiusMm + RING_AIR_MM;

/** Places for rings around a view, outside of it, none nearer to another than a ring and some air. */
export function ringPlaces(box: PaperBox, { radiusMm, rows, atSides }: RingRows): PaperPoint[] {
  const pitch = pitchMm(radiusMm);
  const places: PaperPoint[] = [];
  for (let row = 0; row < rows; row++) {
    const off = VIEW_AIR_MM + radiusMm + row * pitch;
    const beside = atSides ? off : 0;
    const [left, right] = [box.x - beside, box.x + box.width + beside];
    const [upper, lower] = [box.y - off, box.y + box.height + off];
    for (const x of spread(left, right, pitch)) places.push({ x, y: upper }, { x, y: lower });
    if (!atSides || lower - upper < 2 * pitch) continue;
    for (const y of spread(upper + pitch, lower - pitch, pitch)) places.push({ x: left, y }, { x: right, y });
  }
  return places;
}

/** As many places from end to end as keep the pitch, evenly; the middle where only one does. */
function spread(from: number, to: number, pitch: number): number[] {
  const steps = Math.floor((to - from) / pitch + 1e-9);
  if (steps < 1) return [(from + to) / 2];
  return Array.from({ length: steps + 1 }, (_, i) => from + (i * (to - from)) / steps);
}

/**
 * A ring place for each spot. Starts with the nearest free place for each in turn, then trades places as long as leaders get shorter all
 * told: two that cross always do by trading. Throws where places are too few.
 */
export function placeRings(
  spots: readonly PaperPoint[],
  places: readonly PaperPoint[],
  radiusMm: number,
): PaperPoint[] {
  if (places.length < spots.length)
    throw new Error(`placeRings: expected ${spots.length} places or more, got ${places.length}`);
  const costs = spots.map((spot) => places.map((place) => leaderCost(spot, place, places, radiusMm)));
  const taken = nearestFree(costs);
  while (tradeOnce(costs, taken));
  return taken.map((place) => places[place]!);
}

function nearestFree(costs: readonly (readonly number[])[]): number[] {
  const taken: number[] = [];
  for (const cost of costs) {
    let best = -1;
    cost.forEach((mm, place) => {
      if (!taken.includes(place) && (best < 0 || mm < cost[best]!)) best = place;
    });
    taken.push(best);
  }
  return taken;
}

/** Two spots trade their places, or one moves to a free place, wherever that is shorter; says whether any did. */
function tradeOnce(costs: readonly (readonly number[])[], taken: number[]): boolean {
  let traded = false;
  costs.forEach((cost, spot) => {
    cost.forEach((mm, place) => {
      const held = taken[spot]!;
      const other = taken.indexOf(place);
      const now = cost[held]! + (other < 0 ? 0 : costs[other]![place]!);
      const then = mm + (other < 0 ? 0 : costs[other]![held]!);
      if (place === held || then > now - 1e-6) return;
      taken[spot] = place;
      if (other >= 0) taken[other] = held;
      traded = true;
    });
  });
  return traded;
}

/** Length of a leader, and more for each ring place it would pass under. */
function leaderCost(
  from: PaperPoint,
  to: PaperPoint,
  places: readonly PaperPoint[],
  radiusMm: number,
): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const lengthMm = Math.hypot(dx, dy);
  const passed = places.filter(({ x, y }) => {
    if (x === to.x && y === to.y) return false;
    const share = Math.min(1, Math.max(0, ((x - from.x) * dx + (y - from.y) * dy) / (lengthMm || 1) ** 2));
    return Math.hypot(x - from.x - share * dx, y - from.y - share * dy) < radiusMm;
  });
  return lengthMm + PASSING_MM * passed.length;
}
