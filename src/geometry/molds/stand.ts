import { extentsOf, type Bounds, type TriangleMesh } from '../triangleMesh';

/** Where a sculpt meets the board: on a face, or on so little that it is a point or an edge. */
export type Stand = { kind: 'face'; topMm: number } | { kind: 'point'; areaMm2: number };

/** Facets that look down this steeply may be part of the face. cos 37 degrees. Chosen here. */
const DOWN_COSINE = 0.8;
/** Only this share of the height is looked at, in layers of a thinner one. Chosen here: 9 mm and 1.5 mm of a 290 mm head. */
const LOW_SHARE = 0.03;
const LAYER_SHARE = 0.005;
/** A face holds this much of what looks down there (a ball's cap spreads evenly: a sixth), and this share of the plan. Chosen here. */
const FACE_SHARE = 0.6;
const PLAN_SHARE = 0.01;
/** So much of the face lies at or below the height the board is taken at. Chosen here. */
const COVERED_SHARE = 0.98;

interface Facet {
  highMm: number;
  areaMm2: number;
}

/** Looks for the face a sculpt stands on. */
export function findStand(mesh: TriangleMesh, bounds: Bounds): Stand {
  const [wide, deep, tall] = extentsOf(bounds);
  const lowMm = bounds.min[2];
  const facets = facetsDown(mesh, lowMm + LOW_SHARE * tall);
  const total = facets.reduce((sum, { areaMm2 }) => sum + areaMm2, 0);
  const layerMm = LAYER_SHARE * tall;
  let best = { areaMm2: 0, from: 0 };
  for (let from = lowMm; from < lowMm + LOW_SHARE * tall; from += layerMm / 2) {
    const areaMm2 = within(facets, from, from + layerMm).reduce((sum, f) => sum + f.areaMm2, 0);
    if (areaMm2 > best.areaMm2 * (1 + 1e-9)) best = { areaMm2, from };
  }
  if (best.areaMm2 < FACE_SHARE * total || best.areaMm2 < PLAN_SHARE * wide * deep)
    return { kind: 'point', areaMm2: best.areaMm2 };
  const face = within(facets, best.from, best.from + layerMm).sort((a, b) => a.highMm - b.highMm);
  let covered = 0;
  let topMm = lowMm;
  for (const { highMm, areaMm2 } of face) {
    if (covered >= COVERED_SHARE * best.areaMm2) break;
    covered += areaMm2;
    topMm = highMm;
  }
  const isLevel = topMm - lowMm < 1e-6 * tall;
  return { kind: 'face', topMm: isLevel ? lowMm : topMm };
}

const within = (facets: readonly Facet[], from: number, to: number): Facet[] =>
  facets.filter(({ highMm }) => highMm >= from - 1e-9 && highMm <= to);

function facetsDown({ positions: p, triangles }: TriangleMesh, belowMm: number): Facet[] {
  const facets: Facet[] = [];
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [3 * triangles[t]!, 3 * triangles[t + 1]!, 3 * triangles[t + 2]!];
    const highMm = Math.max(p[a + 2]!, p[b + 2]!, p[c + 2]!);
    if (highMm > belowMm) continue;
    const [ux, uy, uz] = [p[b]! - p[a]!, p[b + 1]! - p[a + 1]!, p[b + 2]! - p[a + 2]!];
    const [wx, wy, wz] = [p[c]! - p[a]!, p[c + 1]! - p[a + 1]!, p[c + 2]! - p[a + 2]!];
    const nz = ux * wy - uy * wx;
    const twice = Math.hypot(uy * wz - uz * wy, uz * wx - ux * wz, nz);
    if (-nz >= DOWN_COSINE * twice && twice > 0) facets.push({ highMm, areaMm2: twice / 2 });
  }
  return facets;
}
