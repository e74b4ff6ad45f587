import { dot, minus, pointAt } from './measure.mjs';

/**
 * Two parts that face each other across the plane x = nearMm[0] made to touch along one edge: both swell towards each
 * other, most at the two edges nearest to each other and not at all at reachMm from them, until those edges are one.
 * Vertices stay apart in the list; their coordinates become equal, so a reader that welds finds an edge of four facets.
 * Throws if anything else of one part would reach the other.
 * @returns {mesh, edge: [from, to] in mm}
 */
export function withTouch({ mesh, nearMm, reachMm }) {
  const [one, other] = nearestEdges(mesh, nearMm, reachMm);
  const meeting = one.map((v, n) => middle(pointAt(mesh.points, v), pointAt(mesh.points, other[n])));
  const points = [...mesh.points];
  for (const edge of [one, other]) swell({ mesh, points, edge, meeting, nearMm, reachMm });
  const touched = { ...mesh, points };
  checkApart({ mesh: touched, edges: [one, other], nearMm, reachMm });
  return { mesh: touched, edge: meeting };
}

// One edge on each side, matched end to end, with the least distance between their ends.
function nearestEdges({ points, triangles }, nearMm, reachMm) {
  const sides = [[], []];
  for (let t = 0; t < triangles.length; t += 3) {
    for (let n = 0; n < 3; n += 1) {
      const edge = [triangles[t + n], triangles[t + ((n + 1) % 3)]];
      if (edge.some((v) => distance(pointAt(points, v), nearMm) > reachMm)) continue;
      sides[points[3 * edge[0]] < nearMm[0] ? 0 : 1].push(edge);
    }
  }
  let [best, least] = [undefined, Infinity];
  for (const one of sides[0]) {
    for (const other of sides[1]) {
      const gap = one.reduce((sum, v, n) => sum + distance(pointAt(points, v), pointAt(points, other[n])), 0);
      if (gap < least) [best, least] = [[one, other], gap];
    }
  }
  return best;
}

function swell({ mesh, points, edge, meeting, nearMm, reachMm }) {
  const ends = edge.map((v) => pointAt(mesh.points, v));
  const top = middle(...ends);
  const shift = minus(middle(...meeting), top);
  const side = Math.sign(top[0] - nearMm[0]);
  for (let v = 0; v < points.length / 3; v += 1) {
    const p = pointAt(mesh.points, v);
    const share = 1 - (distance(p, top) / reachMm) ** 2;
    if (share <= 0 || Math.sign(p[0] - nearMm[0]) !== side) continue;
    for (let a = 0; a < 3; a += 1) points[3 * v + a] += share * share * shift[a];
  }
  edge.forEach((v, n) => meeting[n].forEach((c, a) => (points[3 * v + a] = c)));
}

// Every other vertex stays on its own side of the plane in which the edges meet.
function checkApart({ mesh, edges, nearMm, reachMm }) {
  const [place] = pointAt(mesh.points, edges[0][0]);
  for (let v = 0; v < mesh.points.length / 3; v += 1) {
    const p = pointAt(mesh.points, v);
    if (edges.flat().includes(v) || distance(p, nearMm) > reachMm) continue;
    if (Math.abs(p[0] - place) < 0.05) throw new Error(`checkApart: expected parts apart, got one at ${p}`);
  }
}

const middle = (a, b) => a.map((c, k) => (c + b[k]) / 2);

function distance(a, b) {
  const d = minus(a, b);
  return Math.sqrt(dot(d, d));
}
