/** Where labels may sit around their dots, px: eight ways, each near and further off. Chosen here. */
const WAYS = 8;
const DISTANCES = [27, 46, 65] as const;

/** Half of the height of a label, and the room it keeps from others and from dots. */
export const LABEL_HALF_PX = 11;
const GAP_PX = 2;

/** One label over another, or over the edge, weighs more than a dot that it covers, and that more than any turn away from the way out. To keep the seat of before weighs a little. */
const OVERLAP = 30;
const COVERS = 5;
const KEPT = 0.6;

export interface LabelSeats {
  /** x and y of every dot. */
  dots: Float32Array;
  /** Half of the width of every label. */
  halfWide: Float32Array;
  /** x and y of the middle of every label: written. */
  labels: Float32Array;
  /** Which seat each one has: read and written, so that labels stay where they are while the eye turns. 255: none yet. */
  seat: Uint8Array;
}

export const openSeats = (halfWide: readonly number[]): LabelSeats => ({
  dots: new Float32Array(2 * halfWide.length),
  halfWide: Float32Array.from(halfWide),
  labels: new Float32Array(2 * halfWide.length),
  seat: new Uint8Array(halfWide.length).fill(255),
});

/** Seats labels outwards of their dots, clear of each other, of other dots and of the edge of the card, as far as there is room. Makes nothing anew. */
export function seatLabels(seats: LabelSeats, card: { width: number; height: number }): void {
  const { dots, labels, seat } = seats;
  for (let i = 0; i < seat.length; i++) {
    let [best, least] = [0, Infinity];
    for (let s = 0; s < WAYS * DISTANCES.length; s++) {
      const cost = costOf(seats, i, s, card) - (seat[i] === s ? KEPT : 0);
      if (cost < least) [best, least] = [s, cost];
    }
    seat[i] = best;
    labels[2 * i] = dots[2 * i]! + offX(best);
    labels[2 * i + 1] = dots[2 * i + 1]! + offY(best);
  }
}

const farOf = (s: number): number => DISTANCES[Math.floor(s / WAYS)]!;
const offX = (s: number): number => farOf(s) * Math.cos((2 * Math.PI * s) / WAYS);
const offY = (s: number): number => farOf(s) * Math.sin((2 * Math.PI * s) / WAYS);

function costOf(
  { dots, labels, halfWide }: LabelSeats,
  i: number,
  s: number,
  card: { width: number; height: number },
): number {
  const [x, y] = [dots[2 * i]! + offX(s), dots[2 * i + 1]! + offY(s)];
  const [outX, outY] = [dots[2 * i]! - card.width / 2, dots[2 * i + 1]! - card.height / 2];
  const out = Math.hypot(outX, outY) || 1;
  // 0 straight out, 2 straight in.
  let cost = 1 - (outX * offX(s) + outY * offY(s)) / (out * farOf(s)) + Math.floor(s / WAYS);
  if (x < halfWide[i]! || y < LABEL_HALF_PX) cost += OVERLAP;
  if (x > card.width - halfWide[i]! || y > card.height - LABEL_HALF_PX) cost += OVERLAP;
  for (let j = 0; j < halfWide.length; j++) {
    const wide = halfWide[i]! + GAP_PX;
    if (
      j < i &&
      isNear(x - labels[2 * j]!, wide + halfWide[j]!) &&
      isNear(y - labels[2 * j + 1]!, 2 * LABEL_HALF_PX + GAP_PX)
    )
      cost += OVERLAP;
    if (
      j !== i &&
      isNear(x - dots[2 * j]!, wide + 4) &&
      isNear(y - dots[2 * j + 1]!, LABEL_HALF_PX + GAP_PX + 4)
    )
      cost += COVERS;
  }
  return cost;
}

const isNear = (distance: number, within: number): boolean => Math.abs(distance) < within;
