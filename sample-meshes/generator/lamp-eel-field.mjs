import { ellipsoid, smoothUnion, taperedCapsule } from './fields.mjs';

/** Box that holds the eel, mm (x symmetric). It swims 12 mm above its recipe, clear of the cut at z = 0. */
export const EEL_REACH = { x: 284, y: [-84, 84], z: 92 };

/** The fin: a plate along the back, mm. */
export const FIN = { thickMm: 3.2, reachMm: 150, topMm: 76, blendMm: 5 };

const SPINE = Array.from({ length: 13 }, (_, n) => spineNode(n / 12));

/** The Lamp Eel without its fin: head towards +x, z up, mm. */
export const eelBodyField = smoothUnion(
  SPINE.slice(1)
    .map(({ at, rMm }, n) => taperedCapsule(SPINE[n].at, SPINE[n].rMm, at, rMm))
    .reduce((body, piece) => smoothUnion(body, piece, 8)),
  ellipsoid([238, SPINE[12].at[1], SPINE[12].at[2]], [34, 22, 18]), // head
  14,
);

/** How far a point lies outside the fin, above the spine; a bound off its corners. */
export function finField(x, y, z) {
  const { y: middle, slope } = finLine(x);
  const aside = Math.abs(y - middle) / Math.sqrt(1 + slope * slope) - FIN.thickMm / 2;
  return Math.max(aside, Math.abs(x) - FIN.reachMm, z - FIN.topMm, 40 - z);
}

export const eelField = smoothUnion(eelBodyField, finField, FIN.blendMm);

/** The line the fin follows, seen from above: straight from node to node of the spine. */
export function finLine(x) {
  const n = Math.min(11, Math.max(0, SPINE.findIndex(({ at }) => at[0] > x) - 1));
  const [a, b] = [SPINE[n].at, SPINE[n + 1].at];
  const slope = (b[1] - a[1]) / (b[0] - a[0]);
  return { y: a[1] + slope * (x - a[0]), slope };
}

// Share 0 is the tip of the tail. Coordinates are rounded, as sines may differ between machines in the last digit.
function spineNode(share) {
  const x = -238 + 468 * share;
  const angle = (2 * Math.PI * x) / 468;
  const at = [x, 46 * Math.sin(angle), 40 - 6 * Math.sin(2 * angle)].map((c) => Math.round(c * 100) / 100);
  return { at, rMm: share < 0.5 ? 10 + 36 * share : 28 - 14 * (2 * share - 1) ** 2 };
}
