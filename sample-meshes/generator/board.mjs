import { boundaryLoops, pointAt } from './measure.mjs';

/** How far out the rings of the board's top lie, from the foot of the piece (0) to the board's edge (1). */
const RINGS = [0.12, 0.3, 0.55, 1];

/**
 * A piece that stands open at z = 0, with the board under it in one closed surface, as a scanner sees both: the rim
 * runs on into the top, then come the sides and the bottom. The rim must be one loop that a ray from (0, 0) meets
 * once. Inner vertices of the top are off by up to noiseMm either way.
 * @param sizeMm [x, y, thickness]; the middle of the top is (0, 0, 0)
 */
export function onBoard({ mesh, sizeMm, noiseMm, random }) {
  const loops = boundaryLoops(mesh);
  if (loops.length !== 1) throw new Error(`onBoard: expected one rim, got ${loops.length}`);
  const rim = loops[0].map((v) => pointAt(mesh.points, v));
  const edge = boardEdge(rim, sizeMm);
  const points = [...mesh.points];
  const triangles = [...mesh.triangles];
  const add = (ring) => {
    const first = points.length / 3;
    points.push(...ring.flat());
    return ring.map((_, n) => first + n);
  };
  const rings = RINGS.map((share) =>
    rim.map((p, n) => {
      const lift = share === 1 ? 0 : noiseMm * random();
      return [0, 1].map((k) => p[k] + share * (edge[n][k] - p[k])).concat(lift);
    }),
  );
  const under = edge.map(([x, y]) => [x, y, -sizeMm[2]]);
  const all = [loops[0], ...[...rings, under].map(add)];
  for (let r = 0; r + 1 < all.length; r += 1) triangles.push(...band(all[r], all[r + 1]));
  const [middle] = add([[0, 0, -sizeMm[2]]]);
  const last = all[all.length - 1];
  last.forEach((v, n) => triangles.push(last[(n + 1) % last.length], v, middle));
  return { points, triangles };
}

// Where rays from (0, 0) through the rim meet the board's edge; the one nearest to each corner is put on it.
function boardEdge(rim, [width, depth]) {
  const edge = rim.map(([x, y]) => {
    const stretch = 1 / Math.max(Math.abs(x) / (width / 2), Math.abs(y) / (depth / 2));
    return [x * stretch, y * stretch];
  });
  for (const corner of [0, 1, 2, 3].map((n) =>
    [n & 1, n >> 1].map((s, k) => (s - 0.5) * [width, depth][k]),
  )) {
    const away = edge.map((p) => (p[0] - corner[0]) ** 2 + (p[1] - corner[1]) ** 2);
    edge[away.indexOf(Math.min(...away))] = corner;
  }
  return edge;
}

// Quads between two rings of equally many vertices, each against the way its inner ring runs.
function band(inner, outer) {
  return inner.flatMap((v, n) => {
    const m = (n + 1) % inner.length;
    return [inner[m], v, outer[n], inner[m], outer[n], outer[m]];
  });
}
