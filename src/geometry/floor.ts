import { boundsOf, extentsOf, type Bounds, type TriangleMesh } from './triangleMesh';
import { dot } from './vector';

/*
 * What makes a table: much nearly level area that faces up, in one plane, low under the piece. All shares chosen here. Single
 * facets of a rough scan lean by 20 degrees and more, so they may; the plane is that of their mean normal, and only what lies in
 * one thin layer along it counts.
 */
const LEANING_COSINE = 0.8;
const LOWEST_SHARE = 0.35;
const FOOTPRINT_SHARE = 0.25;
/** Steeper than 10 degrees it is no table. */
const LEVEL_COSINE = 0.985;
/** Layers of 0.5 % of the height; two neighbors make a floor. */
const LAYERS = 200;

/**
 * A corner further above the floor's plane than this many deviations of its facets is a speck on it, not its roughness. Chosen
 * here: a facet is the mean of three corners, so corners deviate by the root of 3 more, and the highest of 1e5 normal ones lies
 * near 4.4 of their deviations (order statistics), 7.6 of the facets'.
 */
const ROUGHEST = 8;

export interface Floor {
  /**
   * Height on the placed mesh's own zero, mm, of the table's top wherever the piece stands: its plane, its highest corner above
   * that, and what its tilt adds across the footprint, so that a level cut there leaves no skin of it.
   */
  topMm: number;
  areaMm2: number;
  /** Angle of its plane against level. */
  tiltDegrees: number;
}

/**
 * Looks for a table top under the sculpt. `isInsideOut` says that the file's facets face inward. A proposal only: the wide flat
 * step of a plinth looks the same, so nothing is cut unasked.
 */
export function findFloor(
  mesh: TriangleMesh,
  known: { bounds?: Bounds; isInsideOut?: boolean } = {},
): Floor | undefined {
  const bounds = known.bounds ?? boundsOf(mesh);
  const [width, depth, height] = extentsOf(bounds);
  if (!(height > 0)) return undefined;
  const facing = known.isInsideOut === true ? -1 : 1;
  const belowMm = bounds.min[2] + LOWEST_SHARE * height;
  const mean: Vector = [0, 0, 0];
  const facets: Facet[] = [];
  eachLeaningFacet(mesh, { facing, belowMm }, (facet) => {
    facets.push(facet);
    for (let k = 0; k < 3; k++) mean[k]! += facet.twiceArea[k]!;
  });
  const length = Math.hypot(...mean);
  const up: Vector =
    mean[2] > LEVEL_COSINE * length ? [mean[0] / length, mean[1] / length, mean[2] / length] : [0, 0, 1];
  const layer = thickestLayer(facets, up, height / LAYERS);
  if (layer === undefined || layer.areaMm2 < FOOTPRINT_SHARE * width * depth) return undefined;
  return {
    topMm: highestOver(bounds, up, highestPeak(mesh, up, layer)),
    areaMm2: layer.areaMm2,
    tiltDegrees: (Math.acos(Math.min(1, up[2])) * 180) / Math.PI,
  };
}

type Vector = [number, number, number];

interface Facet {
  triangle: number;
  middle: Vector;
  twiceArea: Vector;
}

/** Every facet below a height whose upward side leans by less than LEANING_COSINE says. */
function eachLeaningFacet(
  { positions: p, triangles }: TriangleMesh,
  { facing, belowMm }: { facing: 1 | -1; belowMm: number },
  each: (facet: Facet) => void,
): void {
  for (let t = 0; t < triangles.length; t += 3) {
    const a = 3 * triangles[t]!;
    if (p[a + 2]! > belowMm) continue;
    const b = 3 * triangles[t + 1]!;
    const c = 3 * triangles[t + 2]!;
    const ux = p[b]! - p[a]!;
    const uy = p[b + 1]! - p[a + 1]!;
    const uz = p[b + 2]! - p[a + 2]!;
    const vx = p[c]! - p[a]!;
    const vy = p[c + 1]! - p[a + 1]!;
    const vz = p[c + 2]! - p[a + 2]!;
    const nz = facing * (ux * vy - uy * vx);
    if (!(nz > 0)) continue;
    const nx = facing * (uy * vz - uz * vy);
    const ny = facing * (uz * vx - ux * vz);
    if (nz < LEANING_COSINE * Math.sqrt(nx * nx + ny * ny + nz * nz)) continue;
    each({
      triangle: t / 3,
      middle: [p[a]! + (ux + vx) / 3, p[a + 1]! + (uy + vy) / 3, p[a + 2]! + (uz + vz) / 3],
      twiceArea: [nx, ny, nz],
    });
  }
}

interface Layer {
  areaMm2: number;
  /** Mean place along the normal, and its standard deviation. */
  along: number;
  deviation: number;
  triangles: number[];
}

/** The two neighboring layers with the most area, by the places of the facets along a direction. */
function thickestLayer(facets: readonly Facet[], up: Vector, layerMm: number): Layer | undefined {
  const places = facets.map(({ middle }) => dot(middle, up));
  let lowest = Infinity;
  for (const place of places) lowest = Math.min(lowest, place);
  const sums = new Map<number, { area: number; first: number; second: number }>();
  places.forEach((place, i) => {
    const number = Math.floor((place - lowest) / layerMm);
    const sum = sums.get(number) ?? { area: 0, first: 0, second: 0 };
    sums.set(number, sum);
    const area = dot(facets[i]!.twiceArea, up) / 2;
    sum.area += area;
    sum.first += area * (place - lowest);
    sum.second += area * (place - lowest) ** 2;
  });
  let best: (Omit<Layer, 'triangles'> & { number: number }) | undefined;
  for (const [number, one] of sums) {
    const next = sums.get(number + 1) ?? { area: 0, first: 0, second: 0 };
    const areaMm2 = one.area + next.area;
    if (best !== undefined && areaMm2 <= best.areaMm2) continue;
    const mean = (one.first + next.first) / areaMm2;
    const variance = (one.second + next.second) / areaMm2 - mean * mean;
    best = { number, areaMm2, along: lowest + mean, deviation: Math.sqrt(Math.max(0, variance)) };
  }
  if (best === undefined) return undefined;
  const { number } = best;
  const isIn = (_: Facet, i: number): boolean => {
    const above = Math.floor((places[i]! - lowest) / layerMm) - number;
    return above === 0 || above === 1;
  };
  return { ...best, triangles: facets.filter(isIn).map(({ triangle }) => triangle) };
}

/**
 * The place along the normal of the layer's highest corner without a higher neighbor: a cut there leaves no island of skin.
 * Corners with one lie on the way up to the piece, whose foot may be in the layer. At least three deviations above the plane:
 * a table of few corners may go up to the piece from every one.
 */
function highestPeak({ positions: p, triangles }: TriangleMesh, up: Vector, layer: Layer): number {
  const place = (v: number): number => p[3 * v]! * up[0] + p[3 * v + 1]! * up[1] + p[3 * v + 2]! * up[2];
  const isPeak = new Uint8Array(p.length / 3);
  for (const t of layer.triangles) for (let e = 0; e < 3; e++) isPeak[triangles[3 * t + e]!] = 1;
  for (let h = 0; h < triangles.length; h++) {
    const v = triangles[h]!;
    if (isPeak[v] === 0) continue;
    const first = h - (h % 3);
    for (let e = 0; e < 3; e++) if (place(triangles[first + e]!) > place(v)) isPeak[v] = 0;
  }
  const most = layer.along + ROUGHEST * layer.deviation;
  let highest = layer.along + 3 * layer.deviation;
  isPeak.forEach((flag, v) => {
    if (flag === 1 && place(v) <= most) highest = Math.max(highest, place(v));
  });
  return highest;
}

/** The highest z that the plane up.x = place reaches over the footprint. */
function highestOver({ min, max }: Bounds, up: Vector, place: number): number {
  const corners = [min[0], max[0]].flatMap((x) =>
    [min[1], max[1]].map((y) => (place - up[0] * x - up[1] * y) / up[2]),
  );
  return Math.max(...corners);
}
