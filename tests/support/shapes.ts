import type { TriangleMesh } from '../../src/geometry';

/**
 * Solids with known volumes, built here and nowhere else. Every revolved shape is a polyhedron with flat sides, so its
 * volume and area have closed forms of their own (`revolvedVolume`, `revolvedArea`): no tessellation error is left over.
 */

export type Vec3 = readonly [number, number, number];
/** Radius and height of a point of an outline that is turned about z. */
export type OutlinePoint = readonly [r: number, z: number];

const meshOf = (positions: readonly number[], triangles: readonly number[]): TriangleMesh => ({
  positions: Float64Array.from(positions),
  triangles: Int32Array.from(triangles),
});

/** A box with one corner at `at`; volume and area are the products of its sides. */
export function box(size: Vec3, at: Vec3 = [0, 0, 0]): TriangleMesh {
  const positions: number[] = [];
  for (let i = 0; i < 8; i++)
    positions.push(at[0] + (i & 1) * size[0], at[1] + ((i >> 1) & 1) * size[1], at[2] + (i >> 2) * size[2]);
  const quads = [
    [0, 2, 3, 1],
    [4, 5, 7, 6],
    [0, 1, 5, 4],
    [2, 6, 7, 3],
    [0, 4, 6, 2],
    [1, 3, 7, 5],
  ] as const;
  return meshOf(
    positions,
    quads.flatMap(([a, b, c, d]) => [a, b, c, a, c, d]),
  );
}

/**
 * An outline turned about z in `sides` flat steps. Points on the axis become one pole. Going up means facing out.
 * `ring`: the outline closes on itself, as for a torus.
 */
export function revolve(outline: readonly OutlinePoint[], sides: number, ring = false): TriangleMesh {
  const positions: number[] = [];
  const starts = outline.map(([r, z]) => {
    const start = positions.length / 3;
    for (let s = 0; s < (r === 0 ? 1 : sides); s++) {
      const angle = (2 * Math.PI * s) / sides;
      positions.push(r * Math.cos(angle), r * Math.sin(angle), z);
    }
    return start;
  });
  const vertex = (k: number, s: number): number => starts[k]! + (outline[k]![0] === 0 ? 0 : s % sides);
  const triangles: number[] = [];
  for (let k = 0; k < outline.length - (ring ? 0 : 1); k++) {
    const next = (k + 1) % outline.length;
    for (let s = 0; s < sides; s++) {
      if (outline[k]![0] !== 0) triangles.push(vertex(k, s), vertex(k, s + 1), vertex(next, s + 1));
      if (outline[next]![0] !== 0) triangles.push(vertex(k, s), vertex(next, s + 1), vertex(next, s));
    }
  }
  return meshOf(positions, triangles);
}

/** Exact volume of `revolve`: frusta of regular polygons, area of a polygon n/2 sin(2 pi/n) r2 (elementary geometry). */
export function revolvedVolume(outline: readonly OutlinePoint[], sides: number, ring = false): number {
  let sum = 0;
  eachEdge(outline, ring, ([r1, z1], [r2, z2]) => (sum += ((z2 - z1) / 3) * (r1 * r1 + r1 * r2 + r2 * r2)));
  return (sides / 2) * Math.sin((2 * Math.PI) / sides) * sum;
}

/** Exact area of `revolve`: trapezoids, each half the sum of its two sides times its slant height. */
export function revolvedArea(outline: readonly OutlinePoint[], sides: number, ring = false): number {
  const half = Math.PI / sides;
  let sum = 0;
  eachEdge(outline, ring, ([r1, z1], [r2, z2]) => {
    sum += sides * (r1 + r2) * Math.sin(half) * Math.hypot(z2 - z1, (r2 - r1) * Math.cos(half));
  });
  return sum;
}

function eachEdge(
  outline: readonly OutlinePoint[],
  ring: boolean,
  each: (a: OutlinePoint, b: OutlinePoint) => void,
): void {
  for (let k = 0; k < outline.length - (ring ? 0 : 1); k++)
    each(outline[k]!, outline[(k + 1) % outline.length]!);
}

/** Half a circle from pole to pole, in `rings` steps. The poles lie on the axis exactly. */
export const sphereOutline = (radius: number, rings: number): OutlinePoint[] =>
  Array.from({ length: rings + 1 }, (_, k): OutlinePoint => {
    const angle = (Math.PI * k) / rings;
    return [k === 0 || k === rings ? 0 : radius * Math.sin(angle), -radius * Math.cos(angle)];
  });

/** Two half balls and a tube of `length` between them. `rings` is even: the equator is doubled. */
export const capsuleOutline = (radius: number, length: number, rings: number): OutlinePoint[] => {
  const ball = sphereOutline(radius, rings);
  const lower = ball.slice(0, rings / 2 + 1).map(([r, z]): OutlinePoint => [r, z - length / 2]);
  const upper = ball.slice(rings / 2).map(([r, z]): OutlinePoint => [r, z + length / 2]);
  return [...lower, ...upper];
};

/** The tube's circle, for `revolve(..., true)`. */
export const torusOutline = (ringRadius: number, tubeRadius: number, steps: number): OutlinePoint[] =>
  Array.from({ length: steps }, (_, k): OutlinePoint => {
    const angle = (2 * Math.PI * k) / steps;
    return [ringRadius + tubeRadius * Math.cos(angle), tubeRadius * Math.sin(angle)];
  });

export const sphere = (radius: number, rings: number, sides = 2 * rings): TriangleMesh =>
  revolve(sphereOutline(radius, rings), sides);
export const torus = (ringRadius: number, tubeRadius: number, sides: number, steps: number): TriangleMesh =>
  revolve(torusOutline(ringRadius, tubeRadius, steps), sides, true);

/** A head on a neck that flares towards the board: the lower it is cut, the wider it is open. Heights and radii in mm. */
export const flaredHead: readonly OutlinePoint[] = [
  [58, 5],
  [52, 12],
  [46, 20],
  [41, 30],
  [37, 40],
  [34.5, 50],
  [33, 60],
  [34, 72],
  [42, 90],
  [55, 110],
  [62, 135],
  [60, 160],
  [48, 185],
  [25, 202],
  [0, 208],
];

/** An icosahedron whose triangles are quartered `levels` times and pushed onto the ball: 20 x 4^levels triangles. */
export function icosphere(radius: number, levels: number): TriangleMesh {
  const g = (1 + Math.sqrt(5)) / 2;
  const points: number[][] = [];
  for (const a of [-1, 1]) for (const b of [-g, g]) points.push([a, b, 0], [0, a, b], [b, 0, a]);
  let faces = hullOfIcosahedron(points);
  for (let level = 0; level < levels; level++) faces = quartered(points, faces);
  const positions = points.flatMap((p) => p.map((x) => (radius * x) / Math.hypot(...p)));
  return meshOf(positions, faces.flat());
}

/** Twenty triples of neighbors (edge length 2), turned to face out. */
function hullOfIcosahedron(points: readonly number[][]): number[][] {
  const near = (i: number, j: number): boolean =>
    Math.abs(Math.hypot(...points[i]!.map((x, k) => x - points[j]![k]!)) - 2) < 1e-9;
  const faces: number[][] = [];
  for (let i = 0; i < 12; i++)
    for (let j = i + 1; j < 12; j++)
      for (let k = j + 1; k < 12; k++) {
        if (near(i, j) && near(j, k) && near(i, k))
          faces.push(tripleProduct(points[i]!, points[j]!, points[k]!) > 0 ? [i, j, k] : [i, k, j]);
      }
  return faces;
}

const tripleProduct = (a: readonly number[], b: readonly number[], c: readonly number[]): number =>
  a[0]! * (b[1]! * c[2]! - b[2]! * c[1]!) +
  a[1]! * (b[2]! * c[0]! - b[0]! * c[2]!) +
  a[2]! * (b[0]! * c[1]! - b[1]! * c[0]!);

function quartered(points: number[][], faces: readonly number[][]): number[][] {
  const made = new Map<string, number>();
  const between = (i: number, j: number): number => {
    const key = i < j ? `${i} ${j}` : `${j} ${i}`;
    const known = made.get(key);
    if (known !== undefined) return known;
    const middle = points[i]!.map(
      (x, k) => x / Math.hypot(...points[i]!) + points[j]![k]! / Math.hypot(...points[j]!),
    );
    made.set(key, points.push(middle) - 1);
    return points.length - 1;
  };
  return faces.flatMap(([a, b, c]) => {
    const [ab, bc, ca] = [between(a!, b!), between(b!, c!), between(c!, a!)];
    return [
      [a!, ab, ca],
      [ab, b!, bc],
      [ca, bc, c!],
      [ab, bc, ca],
    ];
  });
}
