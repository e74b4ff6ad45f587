import { cross, dot, minus, pointAt } from './measure.mjs';

/** The least distance from a vertex of one mesh to a facet of another, and where: {mm, at}. */
export function thinnestWall(inner, outer) {
  const facets = Array.from({ length: outer.triangles.length / 3 }, (_, t) =>
    [0, 1, 2].map((n) => pointAt(outer.points, outer.triangles[3 * t + n])),
  );
  const longest = Math.sqrt(
    Math.max(...facets.map(([a, b, c]) => Math.max(away(a, b), away(b, c), away(c, a)))),
  );
  let best = { mm: Infinity, at: undefined };
  for (let v = 0; v < inner.points.length / 3; v += 1) {
    const p = pointAt(inner.points, v);
    for (const facet of facets) {
      // No point of a facet is further from its first corner than its longest side.
      if (Math.sqrt(away(p, facet[0])) - longest > best.mm) continue;
      const mm = distanceToFacet(p, facet);
      if (mm < best.mm) best = { mm, at: p };
    }
  }
  return best;
}

function distanceToFacet(p, [a, b, c]) {
  const n = cross(minus(b, a), minus(c, a));
  const sides = [
    [a, b],
    [b, c],
    [c, a],
  ];
  const isAbove = sides.every(([from, to]) => dot(cross(n, minus(to, from)), minus(p, from)) >= 0);
  if (isAbove) return Math.abs(dot(n, minus(p, a))) / Math.sqrt(dot(n, n));
  return Math.min(...sides.map(([from, to]) => distanceToSide(p, from, to)));
}

function distanceToSide(p, from, to) {
  const side = minus(to, from);
  const t = Math.min(1, Math.max(0, dot(minus(p, from), side) / dot(side, side)));
  return Math.sqrt(
    away(
      p,
      from.map((c, k) => c + t * side[k]),
    ),
  );
}

// Squared distance.
function away(a, b) {
  const d = minus(a, b);
  return dot(d, d);
}
