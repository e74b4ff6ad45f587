import { pointAt } from './measure.mjs';
import { mapped } from './mesh-ops.mjs';

/**
 * What two closed outward meshes have in common, exact for their facets but for rounding: {volumeMm3, hiddenMm2: the
 * area of each that lies inside the other}.
 *
 * Looking up from a point, the outward facets above it that face up, less those that face down, are 1 inside a solid
 * and 0 outside. So a solid is the signed sum of the columns below its facets, and what two solids share is the signed
 * sum over pairs of facets of the column below the lower one, over the polygon that both cover in plan.
 */
export function overlapOf(a, b) {
  const [ours, theirs] = [columns(turned(a)), columns(turned(b))];
  const near = planIndex(theirs);
  const sum = { volumeMm3: 0, hiddenMm2: [0, 0] };
  for (const one of ours) for (const other of near(one)) addPair(sum, one, other);
  return sum;
}

/** Measures of the union of two closed outward meshes. */
export function unionOf({ volumesMm3, areasMm2, overlap }) {
  return {
    volumeMm3: volumesMm3[0] + volumesMm3[1] - overlap.volumeMm3,
    areaMm2: areasMm2[0] + areasMm2[1] - overlap.hiddenMm2[0] - overlap.hiddenMm2[1],
  };
}

// Two turns by Pythagorean triples, so that faces along the axes are not seen edge on.
function turned(mesh) {
  return mapped(mesh, ([x, y, z]) => {
    const [u, v] = [(12 * x - 5 * y) / 13, (5 * x + 12 * y) / 13];
    return [u, (15 * v - 8 * z) / 17, (8 * v + 15 * z) / 17];
  });
}

// Per facet: corners anticlockwise in plan, +1 where it faces up, its plane z = at + px x + py y, area per plan area.
function columns({ points, triangles }) {
  const out = [];
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [0, 1, 2].map((n) => pointAt(points, triangles[t + n]));
    const [u, v] = [b, c].map((p) => p.map((value, k) => value - a[k]));
    const n = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
    if (n[2] === 0) continue;
    const [px, py] = [-n[0] / n[2], -n[1] / n[2]];
    out.push({
      corners: n[2] > 0 ? [a, b, c] : [a, c, b],
      facing: n[2] > 0 ? 1 : -1,
      plane: { px, py, at: a[2] - px * a[0] - py * a[1] },
      slant: Math.sqrt(1 + px * px + py * py),
      box: [0, 1].map((k) => [Math.min(a[k], b[k], c[k]), Math.max(a[k], b[k], c[k])]),
    });
  }
  return out;
}

// The facets whose plan box meets that of a given one, by a grid over the plan.
function planIndex(facets) {
  const cellMm =
    4 + Math.max(...facets.map(({ box }) => Math.max(box[0][1] - box[0][0], box[1][1] - box[1][0])));
  const cells = new Map();
  const cellsOf = ({ box }) => {
    const [xs, ys] = box.map(([low, high]) => [Math.floor(low / cellMm), Math.floor(high / cellMm)]);
    const keys = [];
    for (let i = xs[0]; i <= xs[1]; i += 1) for (let j = ys[0]; j <= ys[1]; j += 1) keys.push(`${i},${j}`);
    return keys;
  };
  for (const facet of facets)
    for (const key of cellsOf(facet)) cells.set(key, [...(cells.get(key) ?? []), facet]);
  return (one) => {
    const found = new Set(cellsOf(one).flatMap((key) => cells.get(key) ?? []));
    return [...found].filter(({ box }) =>
      [0, 1].every((k) => box[k][0] < one.box[k][1] && one.box[k][0] < box[k][1]),
    );
  };
}

function addPair(sum, one, other) {
  const common = [0, 1, 2].reduce(
    (polygon, n) => kept(polygon, leftOf(other.corners[n], other.corners[(n + 1) % 3])),
    one.corners,
  );
  if (common.length < 3) return;
  const [f, g] = [heightOf(one.plane), heightOf(other.plane)];
  const [oneLower, otherLower] = [kept(common, (p) => g(p) - f(p)), kept(common, (p) => f(p) - g(p))];
  const [low, high] = [integral(oneLower, f), integral(otherLower, g)];
  sum.volumeMm3 += one.facing * other.facing * (low.ofHeight + high.ofHeight);
  sum.hiddenMm2[0] += other.facing * one.slant * low.ofOne;
  sum.hiddenMm2[1] += one.facing * other.slant * high.ofOne;
}

const leftOf = (a, b) => (p) => (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]);
const heightOf =
  ({ px, py, at }) =>
  (p) =>
    at + px * p[0] + py * p[1];

// The part of a convex polygon where a linear function is positive.
function kept(polygon, f) {
  return polygon.flatMap((p, n) => {
    const q = polygon[(n + 1) % polygon.length];
    const [fp, fq] = [f(p), f(q)];
    const t = fp / (fp - fq);
    const cut = fp > 0 !== fq > 0 ? [[p[0] + t * (q[0] - p[0]), p[1] + t * (q[1] - p[1])]] : [];
    return fp > 0 ? [p, ...cut] : cut;
  });
}

// Integrals over a convex polygon in plan: of 1, and of a linear function.
function integral(polygon, f) {
  const out = { ofOne: 0, ofHeight: 0 };
  for (let n = 1; n + 1 < polygon.length; n += 1) {
    const [a, b, c] = [polygon[0], polygon[n], polygon[n + 1]];
    const areaMm2 = leftOf(a, b)(c) / 2;
    out.ofOne += areaMm2;
    out.ofHeight += (areaMm2 * (f(a) + f(b) + f(c))) / 3;
  }
  return out;
}
