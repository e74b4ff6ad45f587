import { facetVector } from '../facetVector';
import { dot } from '../vector';
import type { DeepBody } from './demoldCuts';

/** What of a body faces out of the mold. Areas as seen along the way. */
export interface FacingOut {
  /** The flat end at the mouth, where no rubber is; undefined where the body ends round or pointed. */
  flat?: {
    areaMm2: number;
    /** Depth at which it ends: above 0 where it is not quite across the way. */
    endMm: number;
  };
  /** Faces that look out with rubber before them: what the rubber is dragged by. Faces buried in overlapping shells count too. */
  undercutMm2: number;
}

/**
 * What faces out to within 25 degrees and hangs on the mouth is a flat end if six tenths of it do to within 10: of a cylinder on its side it is sin 10 /
 * sin 25 = 0.41, of a ball its square. A scan's base may be rough by some 7 degrees. Chosen here.
 */
const [FACING_COSINE, FLAT_COSINE, FLAT_PART] = [Math.cos((25 * Math.PI) / 180), Math.cos(Math.PI / 18), 0.6];

/** A flat end lies in the first tenth of the body, and begins in its first 500th. Chosen here. */
const [FLAT_SHARE, BEGIN_SHARE] = [0.1, 0.002];

/** Share of a flat end's area that tells where it ends: repairs and stray facets reach farther. Chosen here. */
const MOST_OF_FLAT = 0.98;

interface FlatFacet {
  t: number;
  areaMm2: number;
  depthMm: number;
  isFlat: boolean;
}

/** One pass over the facets, and one over those of the end to find which hang together. */
export function facingOut(body: DeepBody): FacingOut {
  const { mesh, way, depths, lengthMm } = body;
  let outMm2 = 0;
  const candidates: FlatFacet[] = [];
  for (let t = 0; t < mesh.triangles.length; t += 3) {
    const across = facetVector(mesh, t);
    const seen = dot(across, way);
    if (!(seen > 0)) continue;
    outMm2 += seen / 2;
    const cosine = seen / Math.hypot(...across);
    if (cosine < FACING_COSINE) continue;
    const depthMm = Math.max(...[0, 1, 2].map((k) => depths[mesh.triangles[t + k]!]!));
    if (depthMm > FLAT_SHARE * lengthMm) continue;
    candidates.push({ t, areaMm2: seen / 2, depthMm, isFlat: cosine >= FLAT_COSINE });
  }
  const end = hangingOnMouth(body, candidates).sort((a, b) => a.depthMm - b.depthMm);
  const areaMm2 = areaOf(end);
  if (areaMm2 === 0 || areaOf(end.filter(({ isFlat }) => isFlat)) < FLAT_PART * areaMm2)
    return { undercutMm2: outMm2 };
  const endMm = endOf(end, MOST_OF_FLAT * areaMm2);
  return { flat: { areaMm2, endMm }, undercutMm2: Math.max(0, outMm2 - areaMm2) };
}

const areaOf = (facets: readonly FlatFacet[]): number =>
  facets.reduce((sum, { areaMm2 }) => sum + areaMm2, 0);

function endOf(flat: readonly FlatFacet[], mostMm2: number): number {
  let sum = 0;
  for (const { areaMm2, depthMm } of flat) {
    sum += areaMm2;
    if (sum >= mostMm2) return depthMm;
  }
  return 0;
}

/** The facets that share corners, over any number of facets, with one right at the mouth: the brim of a hat does not. */
function hangingOnMouth(
  { mesh: { triangles }, depths, lengthMm }: DeepBody,
  facets: readonly FlatFacet[],
): FlatFacet[] {
  const leader = new Map<number, number>();
  const find = (v: number): number => {
    let at = v;
    for (let up = leader.get(at); up !== undefined && up !== at; up = leader.get(at)) at = up;
    leader.set(v, at);
    return at;
  };
  for (const { t } of facets)
    for (const k of [1, 2]) leader.set(find(triangles[t + k]!), find(triangles[t]!));
  const begun = new Set<number>();
  for (const { t } of facets)
    if ([0, 1, 2].some((k) => depths[triangles[t + k]!]! <= BEGIN_SHARE * lengthMm))
      begun.add(find(triangles[t]!));
  return facets.filter(({ t }) => begun.has(find(triangles[t]!)));
}
