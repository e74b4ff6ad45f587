/**
 * What the strict parsers of this folder give: points and faces as the file lists them. They are the other opinion of the fuzz,
 * written from the descriptions of the formats and sharing no code with `src/geometry/io`. Slow and short on purpose.
 */
export interface StrictShape {
  /** x, y, z a point, in the unit of the file. */
  points: number[][];
  /** Numbers of points from 0. */
  faces: number[][];
}

/** The file is not what its format says. */
export class NotStrict extends Error {}

export function refuse(why: string): never {
  throw new NotStrict(why);
}

/** Coordinates further out than this are refused by the program, so here too: see COORDINATE_LIMIT. */
const FURTHEST = 1e8;

/** A decimal number, as C's `%f` takes it, without the names of numbers that are none. */
export function decimal(text: string | undefined): number {
  if (text === undefined || !/^[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?$/.test(text))
    refuse(`no number: ${text}`);
  return Number(text);
}

export interface StrictMeasure {
  triangles: number;
  /** Sum of signed tetrahedra over fans, in file units cubed. */
  volume: number;
  /** What that sum is uncertain by: rounding, and faces of four and more corners that are not flat. */
  doubt: number;
  /** Does every edge meet its like in the other direction, points at one place being one? */
  isClosed: boolean;
}

/** Checks every number and measures by fans. */
export function measure({ points, faces }: StrictShape): StrictMeasure {
  if (faces.length === 0) refuse('no faces');
  const known = new Map<string, number>();
  const place = points.map((point) => {
    const key = point.map((x) => x + 0).join();
    if (!known.has(key)) known.set(key, known.size);
    return known.get(key)!;
  });
  const edges = new Map<string, number>();
  let [triangles, volume, sizes, bent] = [0, 0, 0, 0];
  for (const face of faces) {
    if (face.length < 3) refuse('a face of fewer than three corners');
    const ring = face.map((v) => points[v] ?? refuse(`no point ${v}`));
    for (const x of ring.flat()) if (!(Math.abs(x) <= FURTHEST)) refuse(`out of range: ${x}`);
    for (let k = 0; k < face.length; k++) {
      const [a, b] = [place[face[k]!]!, place[face[(k + 1) % face.length]!]!];
      if (a === b) continue;
      const [key, way] = a < b ? [`${a} ${b}`, 1] : [`${b} ${a}`, -1];
      edges.set(key, (edges.get(key) ?? 0) + way);
    }
    triangles += face.length - 2;
    for (let k = 1; k + 1 < ring.length; k++) {
      const six = tripleProduct(ring[0]!, ring[k]!, ring[k + 1]!);
      volume += six / 6;
      sizes += product(ring[0]!, ring[k]!, ring[k + 1]!) / 6;
    }
    bent += face.length > 3 ? spread(ring) : 0;
  }
  const isClosed = [...edges.values()].every((balance) => balance === 0);
  return { triangles, volume, doubt: 1e-12 * sizes + bent, isClosed };
}

const tripleProduct = (a: number[], b: number[], c: number[]): number =>
  a[0]! * (b[1]! * c[2]! - b[2]! * c[1]!) +
  a[1]! * (b[2]! * c[0]! - b[0]! * c[2]!) +
  a[2]! * (b[0]! * c[1]! - b[1]! * c[0]!);

/** No determinant of these is larger, nor is its rounding larger than this times the step of a double. */
const product = (...corners: number[][]): number =>
  corners.reduce((all, corner) => all * Math.hypot(...corner), 6);

/** Volume between any two ways to cut this polygon, at most: the tetrahedra that its corners span with the first three. */
function spread(ring: number[][]): number {
  let sum = 0;
  const from = (k: number): number[] => ring[k]!.map((x, axis) => x - ring[0]![axis]!);
  for (let i = 1; i < ring.length; i++)
    for (let j = i + 1; j < ring.length; j++)
      for (let k = j + 1; k < ring.length; k++) sum += Math.abs(tripleProduct(from(i), from(j), from(k))) / 6;
  return sum;
}
