import { BASE, FREE, RIM } from './dual-grid.mjs';
import { gradient } from './fields.mjs';

/**
 * Moves the vertices of a dual-grid mesh onto the surface and evens them out: each round steps half-way to
 * the mean of the neighbours, along the surface only, then returns to field = 0 by Newton steps along the
 * gradient. Rim vertices move along the rim in the plane z = 0, base vertices in that plane.
 * Changes mesh.points; returns the largest |field| left on surface and rim vertices (mm).
 */
export function settle({ mesh, field, hMm, rounds = 6 }) {
  const rimEdges = findRimEdges(mesh);
  let worst = project({ mesh, field, hMm });
  for (let round = 0; round < rounds; round += 1) {
    relax({ mesh, field, rimEdges });
    worst = project({ mesh, field, hMm });
  }
  return worst;
}

// Edges of base quads that no second base quad shares.
function findRimEdges({ quads, kinds }) {
  const edges = new Map();
  for (const quad of quads.filter((q) => q.every((v) => kinds[v] !== FREE))) {
    quad.forEach((v, n) => {
      const w = quad[(n + 1) % 4];
      const key = `${Math.min(v, w)},${Math.max(v, w)}`;
      if (edges.has(key)) edges.set(key, undefined);
      else edges.set(key, [v, w]);
    });
  }
  return [...edges.values()].filter((edge) => edge !== undefined);
}

function relax({ mesh, field, rimEdges }) {
  const { points, kinds, quads } = mesh;
  const sum = new Float64Array(points.length);
  const count = new Float64Array(kinds.length);
  const add = (v, w) => {
    for (let a = 0; a < 3; a += 1) sum[3 * v + a] += points[3 * w + a];
    count[v] += 1;
  };
  for (const quad of quads) {
    quad.forEach((v, n) => {
      const w = quad[(n + 1) % 4];
      if (kinds[v] !== RIM) add(v, w);
      if (kinds[w] !== RIM) add(w, v);
    });
  }
  for (const [v, w] of rimEdges) {
    add(v, w);
    add(w, v);
  }
  kinds.forEach((kind, v) => {
    const p = points.slice(3 * v, 3 * v + 3);
    const step = p.map((c, a) => 0.5 * (sum[3 * v + a] / count[v] - c));
    const moved = kind === FREE ? withoutNormalPart(step, gradient(field, ...p)) : step;
    for (let a = 0; a < 3; a += 1) points[3 * v + a] += moved[a];
  });
}

function withoutNormalPart(step, g) {
  const t = (step[0] * g[0] + step[1] * g[1] + step[2] * g[2]) / (g[0] * g[0] + g[1] * g[1] + g[2] * g[2]);
  return step.map((s, a) => s - t * g[a]);
}

function project({ mesh, field, hMm }) {
  const { points, kinds } = mesh;
  let worst = 0;
  for (let v = 0; v < kinds.length; v += 1) {
    if (kinds[v] === BASE) continue;
    let p = points.slice(3 * v, 3 * v + 3);
    for (let step = 0; step < 8; step += 1) p = newtonStep({ field, p, hMm, inPlane: kinds[v] === RIM });
    for (let a = 0; a < 3; a += 1) points[3 * v + a] = p[a];
    worst = Math.max(worst, Math.abs(field(...p)));
  }
  return worst;
}

// One Newton step along the gradient, never longer than a grid step.
function newtonStep({ field, p, hMm, inPlane }) {
  const g = gradient(field, ...p);
  if (inPlane) g[2] = 0;
  const square = g[0] * g[0] + g[1] * g[1] + g[2] * g[2];
  const t = field(...p) / square;
  const tooFar = (Math.abs(t) * Math.sqrt(square)) / hMm;
  const shorten = tooFar > 1 ? 1 / tooFar : 1;
  return p.map((c, a) => c - t * shorten * g[a]);
}
