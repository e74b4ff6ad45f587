/** More corners than this in one polygon are refused: cutting is quadratic, and no scanner writes such a face. */
export const POLYGON_LIMIT = 4096;

/** What is left of the comparisons that the polygons of one file may take. Long spirals take the third power of their corners. */
export interface CutWork {
  left: number;
}

/** A few seconds. A round of 1 000 corners takes half a million: two thousand of them are let through. Chosen here. */
export const newCutWork = (): CutWork => ({ left: 1e9 });

/**
 * Cuts a polygon in space into triangles by clipping ears (Meisters 1975, "Polygons have ears", from memory), seen
 * along its own normal (Newell's sum), so that concave outlines keep their area and volume.
 *
 * @param points positions of all vertices; `ring` the vertex numbers of the outline, in order
 * @returns three vertex numbers a triangle in the same turning sense, or undefined where the outline crosses itself, or no work is left
 */
export function cutPolygon(
  points: Float64Array,
  ring: readonly number[],
  work = newCutWork(),
): number[] | undefined {
  if (ring.length === 3) return [...ring];
  const flat = flatten(points, ring);
  if (ring.length === 4 && isConvex(flat))
    return [ring[0]!, ring[1]!, ring[2]!, ring[0]!, ring[2]!, ring[3]!];
  const triangles = clipEars(flat, ring, work);
  return triangles !== undefined && coversOnce(points, ring, triangles) ? triangles : undefined;
}

/** An outline that crosses itself is told by its areas: the cut triangles hold more than the outline encloses. */
function coversOnce(points: Float64Array, ring: readonly number[], triangles: readonly number[]): boolean {
  const outline = newellNormal(points, ring);
  const enclosed = Math.hypot(...outline);
  let covered = 0;
  let along = 0;
  for (let i = 0; i < triangles.length; i += 3) {
    const n = newellNormal(points, triangles.slice(i, i + 3));
    covered += Math.hypot(...n);
    along += Math.abs(n[0] * outline[0] + n[1] * outline[1] + n[2] * outline[2]);
  }
  if (enclosed < 1e-9 * covered) return false;
  return along <= (1 + 1e-9) * enclosed * enclosed;
}

/** Largest distance of a corner from the polygon's mean plane, in the unit of the points. */
export function outOfPlane(points: Float64Array, ring: readonly number[]): number {
  const n = newellNormal(points, ring);
  const length = Math.hypot(n[0], n[1], n[2]);
  if (length === 0) return 0;
  const heights = ring.map(
    (v) => (points[3 * v]! * n[0] + points[3 * v + 1]! * n[1] + points[3 * v + 2]! * n[2]) / length,
  );
  const mean = heights.reduce((a, b) => a + b, 0) / heights.length;
  return Math.max(...heights.map((h) => Math.abs(h - mean)));
}

/** Twice the vector area of the outline. */
function newellNormal(p: Float64Array, ring: readonly number[]): [number, number, number] {
  let x = 0,
    y = 0,
    z = 0;
  const o = 3 * ring[0]!;
  for (let i = 1; i + 1 < ring.length; i++) {
    const a = 3 * ring[i]!,
      b = 3 * ring[i + 1]!;
    const ux = p[a]! - p[o]!,
      uy = p[a + 1]! - p[o + 1]!,
      uz = p[a + 2]! - p[o + 2]!;
    const vx = p[b]! - p[o]!,
      vy = p[b + 1]! - p[o + 1]!,
      vz = p[b + 2]! - p[o + 2]!;
    x += uy * vz - uz * vy;
    y += uz * vx - ux * vz;
    z += ux * vy - uy * vx;
  }
  return [x, y, z];
}

/** The outline seen along its normal, counter-clockwise: u, v per corner. */
function flatten(p: Float64Array, ring: readonly number[]): Float64Array {
  const n = newellNormal(p, ring);
  const [sx, sy, sz] = [Math.abs(n[0]), Math.abs(n[1]), Math.abs(n[2])];
  const drop = sx > sy ? (sx > sz ? 0 : 2) : sy > sz ? 1 : 2;
  const [u, v] = n[drop] >= 0 ? [(drop + 1) % 3, (drop + 2) % 3] : [(drop + 2) % 3, (drop + 1) % 3];
  const flat = new Float64Array(2 * ring.length);
  ring.forEach((vertex, i) => {
    flat[2 * i] = p[3 * vertex + u]!;
    flat[2 * i + 1] = p[3 * vertex + v]!;
  });
  return flat;
}

const turn = (f: Float64Array, a: number, b: number, c: number): number =>
  (f[2 * b]! - f[2 * a]!) * (f[2 * c + 1]! - f[2 * a + 1]!) -
  (f[2 * b + 1]! - f[2 * a + 1]!) * (f[2 * c]! - f[2 * a]!);

function isConvex(f: Float64Array): boolean {
  const n = f.length / 2;
  for (let i = 0; i < n; i++) if (turn(f, i, (i + 1) % n, (i + 2) % n) < 0) return false;
  return true;
}

function clipEars(f: Float64Array, ring: readonly number[], work: CutWork): number[] | undefined {
  const left = ring.map((_, i) => i);
  const out: number[] = [];
  let misses = 0;
  for (let i = 0; left.length > 3 && misses <= left.length && work.left > 0;) {
    const n = left.length;
    const [a, b, c] = [left[i % n]!, left[(i + 1) % n]!, left[(i + 2) % n]!];
    if (isEar(f, left, [a, b, c], work)) {
      out.push(ring[a]!, ring[b]!, ring[c]!);
      left.splice((i + 1) % n, 1);
      misses = 0;
      i = i % left.length;
    } else {
      misses++;
      i = (i + 1) % n;
    }
  }
  if (left.length > 3) return undefined;
  out.push(ring[left[0]!]!, ring[left[1]!]!, ring[left[2]!]!);
  return out;
}

/** Is the corner convex, with no other corner of the rest inside the triangle it would cut off? */
function isEar(
  f: Float64Array,
  left: readonly number[],
  [a, b, c]: readonly [number, number, number],
  work: CutWork,
): boolean {
  work.left--;
  if (turn(f, a, b, c) < 0) return false;
  for (const q of left) {
    work.left--;
    if (q === a || q === b || q === c || samePoint(f, q, a) || samePoint(f, q, b) || samePoint(f, q, c))
      continue;
    if (turn(f, a, b, q) >= 0 && turn(f, b, c, q) >= 0 && turn(f, c, a, q) >= 0) return false;
  }
  return true;
}

const samePoint = (f: Float64Array, a: number, b: number): boolean =>
  f[2 * a] === f[2 * b] && f[2 * a + 1] === f[2 * b + 1];
