import { cross, dot, minus, pointAt } from './measure.mjs';

/** The facets nearest to nearMm that face `towards`, `count` of them, turned over. Returns {mesh, turned: their numbers}. */
export function withFlippedPatch({ mesh, nearMm, towards, count }) {
  const facets = facetsOf(mesh)
    .filter(({ normal }) => dot(normal, towards) > 0)
    .map(({ t, centre }) => ({ t, away: square(minus(centre, nearMm)) }))
    .sort((a, b) => a.away - b.away || a.t - b.t);
  const turned = new Set(facets.slice(0, count).map(({ t }) => t));
  const triangles = mesh.triangles.map((v, c) => {
    const t = Math.floor(c / 3);
    return turned.has(t) ? mesh.triangles[3 * t + 2 - (c % 3)] : v;
  });
  return { mesh: { ...mesh, triangles }, turned };
}

/** `count` facets spread over the list, none of them in `spared`, written once more at its end. */
export function withDuplicates({ mesh, count, spared }) {
  const open = facetsOf(mesh).filter(({ t }) => !spared.has(t));
  const again = Array.from(
    { length: count },
    (_, n) => open[Math.floor(((n + 0.5) * open.length) / count)].t,
  );
  const copies = again.flatMap((t) => mesh.triangles.slice(3 * t, 3 * t + 3));
  return { ...mesh, triangles: [...mesh.triangles, ...copies] };
}

/**
 * A T-junction: the facet nearest to nearMm is cut in two from the middle of its longest side; its neighbour across
 * that side is not. Nothing moves, so the volume stays, but three edges are left without a partner.
 */
export function withTJunction({ mesh, nearMm }) {
  const { t } = facetsOf(mesh).reduce((best, one) =>
    square(minus(one.centre, nearMm)) < square(minus(best.centre, nearMm)) ? one : best,
  );
  const corners = mesh.triangles.slice(3 * t, 3 * t + 3);
  const lengths = corners.map((v, n) =>
    square(minus(pointAt(mesh.points, v), pointAt(mesh.points, corners[(n + 1) % 3]))),
  );
  const first = lengths.indexOf(Math.max(...lengths));
  const [a, b, c] = [0, 1, 2].map((n) => corners[(first + n) % 3]);
  const halfway = pointAt(mesh.points, a).map((x, k) => (x + mesh.points[3 * b + k]) / 2);
  const m = mesh.points.length / 3;
  const triangles = [...mesh.triangles.slice(0, 3 * t), a, m, c, m, b, c, ...mesh.triangles.slice(3 * t + 3)];
  return { mesh: { ...mesh, points: [...mesh.points, ...halfway], triangles }, at: halfway };
}

function facetsOf({ points, triangles }) {
  return Array.from({ length: triangles.length / 3 }, (_, t) => {
    const [a, b, c] = [0, 1, 2].map((n) => pointAt(points, triangles[3 * t + n]));
    return { t, centre: a.map((x, k) => (x + b[k] + c[k]) / 3), normal: cross(minus(b, a), minus(c, a)) };
  });
}

const square = (v) => dot(v, v);
