/**
 * Distance functions, in mm: negative inside, positive outside, (x, y, z) => distance.
 * Only + - * / and sqrt are used, which IEEE 754 rounds correctly, so every machine gets the same bits.
 */

/** Ball of radius r about c. Exact distance. */
export function ball(c, r) {
  return (x, y, z) => length(x - c[0], y - c[1], z - c[2]) - r;
}

/**
 * Ellipsoid with semi-axes r about c. Zero exactly on the ellipsoid; elsewhere a first-order distance
 * q(q - 1)/|grad|, q the scaled radius, good near the surface and only a bound far from it.
 */
export function ellipsoid(c, r) {
  return (x, y, z) => {
    const [u, v, w] = [(x - c[0]) / r[0], (y - c[1]) / r[1], (z - c[2]) / r[2]];
    const q = length(u, v, w);
    const slope = length(u / r[0], v / r[1], w / r[2]);
    return slope === 0 ? -Math.min(r[0], r[1], r[2]) : (q * (q - 1)) / slope;
  };
}

/**
 * Hull of two balls (centre a radius ra, centre b radius rb). Exact distance: the cone's normal through
 * the point meets the axis at t - s tan(slope); the ball there is the one that touches.
 * Needs |b - a| > |ra - rb|.
 */
export function taperedCapsule(a, ra, b, rb) {
  const axis = [b[0] - a[0], b[1] - a[1], b[2] - a[2]];
  const len = length(...axis);
  const sin = (ra - rb) / len;
  const tan = sin / Math.sqrt(1 - sin * sin);
  return (x, y, z) => {
    const [px, py, pz] = [x - a[0], y - a[1], z - a[2]];
    const t = (px * axis[0] + py * axis[1] + pz * axis[2]) / len;
    const s = Math.sqrt(Math.max(0, px * px + py * py + pz * pz - t * t));
    const t0 = clamp(t - s * tan, 0, len);
    return length(t - t0, s, 0) - (ra + ((rb - ra) * t0) / len);
  };
}

/** Box of the given size about c, sharp edges. Exact distance. */
export function box(c, size) {
  return (x, y, z) => {
    const dx = Math.abs(x - c[0]) - size[0] / 2;
    const dy = Math.abs(y - c[1]) - size[1] / 2;
    const dz = Math.abs(z - c[2]) - size[2] / 2;
    const outside = length(Math.max(dx, 0), Math.max(dy, 0), Math.max(dz, 0));
    return outside + Math.min(Math.max(dx, dy, dz), 0);
  };
}

/** Box of the given size over all about c, edges rounded by rMm. Exact distance. */
export function roundBox(c, size, rMm) {
  const core = box(
    c,
    size.map((s) => s - 2 * rMm),
  );
  return (x, y, z) => core(x, y, z) - rMm;
}

/** Plain union: exact outside, a bound inside. */
export function union(a, b) {
  return (x, y, z) => Math.min(a(x, y, z), b(x, y, z));
}

/** The same shape on both sides of x = 0: give the side with positive x. */
export function mirrored(field) {
  return (x, y, z) => field(Math.abs(x), y, z);
}

/** Union with a fillet. kMm is the width of the blend: where |a - b| >= kMm nothing is added. */
export function smoothUnion(a, b, kMm) {
  return (x, y, z) => smoothMin(a(x, y, z), b(x, y, z), kMm);
}

/** a without b, the edge rounded over kMm. */
export function smoothMinus(a, b, kMm) {
  return (x, y, z) => -smoothMin(-a(x, y, z), b(x, y, z), kMm);
}

/** Gradient by central differences, step 1e-3 mm. */
export function gradient(field, x, y, z) {
  const e = 1e-3;
  return [
    (field(x + e, y, z) - field(x - e, y, z)) / (2 * e),
    (field(x, y + e, z) - field(x, y - e, z)) / (2 * e),
    (field(x, y, z + e) - field(x, y, z - e)) / (2 * e),
  ];
}

// Polynomial smooth minimum: min(a, b) - (k - |a - b|)^2 / 4k inside the blend.
function smoothMin(a, b, k) {
  const overlap = Math.max(k - Math.abs(a - b), 0);
  return Math.min(a, b) - (overlap * overlap) / (4 * k);
}

function length(x, y, z) {
  return Math.sqrt(x * x + y * y + z * z);
}

function clamp(v, low, high) {
  return Math.min(Math.max(v, low), high);
}
