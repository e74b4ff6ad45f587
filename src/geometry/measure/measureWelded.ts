import { bad, good, type Outcome } from '../../problem';
import { edgeGaps, type EdgeGaps } from '../repair/edgeGaps';
import { pairEdges } from '../repair/edges';
import { weldNear, type NearWeld } from '../repair/weldNear';
import { diagonalOf, type TriangleMesh } from '../triangleMesh';
import { measureSurface, type SurfaceOptions } from './measureSurface';
import { DOUBT_LIMIT } from './refusal';
import type { Shell } from './shells';
import type { SolidMeasure } from './solidMeasure';

/**
 * Widest weld, as a share of the median edge. Measured on seven closed shapes (balls, torus, box, two real scans, a sculpt): welding
 * them at 0.4 of it, needlessly, moved their volume by at most 0.002 %, at 0.7 by up to 0.08 %; a box of twelve facets
 * loses a side beyond 0.5.
 */
const WIDEST_SHARE = 0.4;

/** Fewer of the open edges than this with a partner within the widest weld: they are no cracks. Chosen here. */
const LEAST_PARTNERED = 0.5;

/**
 * Half of the gaps must be narrower than this share of the widest weld. In a tangle they crowd at its end: of edges strewn at
 * random the number within g goes as the sixth power of g (two free ends), so half of them lie beyond 0.89 of it (derived).
 */
const NARROW_SHARE = 0.5;

/** No surface comes of a weld that leaves more of the edges than this open or shared by three and more. Chosen here. */
const TANGLED_SHARE = 0.5;

/**
 * First tolerance: what joins nine of ten open edges that can be joined. For corners moved at random by s along each axis that
 * is some 4 s, and all are joined at 6 s, two steps on (measured on the same shapes).
 */
const FIRST_QUANTILE = 0.9;
const STEP = 1.5;

/**
 * Cracks of one kind: nine of ten are narrower than this many times the middle one (1.2 to 1.7 times for corners moved at random or
 * rounded, measured on the same shapes). Beyond, edges of a hole or of a cut stand among them, which meet nothing but the far side of
 * a thin body; then the cracks alone are tried first.
 */
const ONE_KIND = 4;

/**
 * A loop shorter than this share of the size is small; a step that closes less than a tenth of the open edges was not worth it.
 * Chosen here.
 */
const SMALL_LOOP = 0.05;
const WORTH_IT = 0.9;

/** Digits that coordinates of this size have, at least: no weld is finer. Chosen here. */
const FINEST_SHARE = 1e-9;

export interface WeldTrial {
  solid?: SolidMeasure;
  /** The widest tolerance tried. */
  triedMm: number;
}

/**
 * Merges corners that lie close together, with the smallest tolerance that leaves a trustworthy volume and no large loop; tried
 * from what the gaps at the open edges ask for up to WIDEST_SHARE of the median edge. Undefined where the open edges are no
 * cracks: most have no partner anywhere near.
 */
export function measureWelded(mesh: TriangleMesh, options: SurfaceOptions): WeldTrial | undefined {
  const gaps = edgeGaps(mesh, WIDEST_SHARE);
  if (gaps === undefined || !areCracks(gaps)) return undefined;
  let best: SolidMeasure | undefined;
  let openBefore = Infinity;
  let triedMm = 0;
  for (const toleranceMm of tolerances(gaps)) {
    triedMm = toleranceMm;
    const weld = weldNear(mesh, toleranceMm);
    if (isTangled(weld.mesh)) continue;
    const outcome = measureWeld(weld, toleranceMm, options);
    if (!outcome.ok) continue;
    const solid = outcome.value;
    if (best === undefined || doubtOf(solid) < doubtOf(best)) best = solid;
    const isWorthIt = solid.repairs.openEdges < WORTH_IT * openBefore;
    if (longestRim(solid) <= SMALL_LOOP * diagonalOf(solid.scanBounds) || !isWorthIt) break;
    openBefore = solid.repairs.openEdges;
  }
  return best === undefined ? { triedMm } : { solid: best, triedMm };
}

function areCracks({ gapsMm, medianEdgeMm, partneredShare }: EdgeGaps): boolean {
  const middle = gapsMm[gapsMm.length >> 1];
  if (middle === undefined || partneredShare < LEAST_PARTNERED) return false;
  return middle < NARROW_SHARE * WIDEST_SHARE * medianEdgeMm;
}

function isTangled(mesh: TriangleMesh): boolean {
  const { mate } = pairEdges(mesh);
  return mate.reduce((sum, one) => sum + (one < 0 ? 1 : 0), 0) > TANGLED_SHARE * mate.length;
}

function tolerances({ gapsMm, medianEdgeMm }: EdgeGaps): number[] {
  const widest = WIDEST_SHARE * medianEdgeMm;
  const first = gapsMm[Math.floor(FIRST_QUANTILE * (gapsMm.length - 1))]!;
  const finest = FINEST_SHARE * medianEdgeMm;
  const cracks = Math.max(ONE_KIND * gapsMm[gapsMm.length >> 1]!, finest);
  const steps = cracks < first ? [cracks] : [];
  // A hair wider, so that the gap that was measured is closed.
  for (let mm = Math.max(first * (1 + 1e-9), finest); mm < widest; mm *= STEP) steps.push(mm);
  return [...steps, widest];
}

/**
 * Facets tangled by noise as wide as themselves may agree with no winding: then the file's own is kept. What moving corners may
 * have changed: the part of the moves along the surface's normal, were it all one way. Of directions spread evenly over a sphere
 * half the length lies along any axis (the mean of |cos|; derived here), so half the area times the mean move.
 */
function measureWeld(weld: NearWeld, toleranceMm: number, options: SurfaceOptions): Outcome<SolidMeasure> {
  const isCutVertex = cutsAfter(weld, options.isCutVertex);
  const pieces = wishAfter(weld, options.pieces);
  const steps: SurfaceOptions = {
    coordinateStepMm: options.coordinateStepMm,
    ...(isCutVertex === undefined ? {} : { isCutVertex }),
    ...(pieces === undefined ? {} : { pieces }),
  };
  const turned = measureSurface(weld.mesh, steps);
  const outcome =
    turned.ok || turned.problem.code !== 'NOT_ORIENTED'
      ? turned
      : measureSurface(weld.mesh, { ...steps, keepWinding: true });
  if (!outcome.ok) return outcome;
  const solid = outcome.value;
  const weldMm3 = (solid.areaMm2 * weld.meanMoveMm) / 2;
  const doubtShare = (solid.doubt.capsMm3 + weldMm3) / solid.volumeMm3;
  if (doubtShare > DOUBT_LIMIT) return bad('NOT_CLOSED', { doubtShare });
  const { cornersMoved, meanMoveMm } = weld;
  const repairs = { ...solid.repairs, collapsed: solid.repairs.collapsed + weld.collapsed };
  return good({
    ...solid,
    shells: solid.shells.map((shell) => namedBefore(weld, shell)),
    repairs,
    doubt: { ...solid.doubt, weldMm3 },
    welded: { toleranceMm, cornersMoved, meanMoveMm },
  });
}

/** A merged corner lies on a cut of ours when one of those merged into it does. */
function cutsAfter(
  { index, mesh }: NearWeld,
  isCutVertex: SurfaceOptions['isCutVertex'],
): SurfaceOptions['isCutVertex'] {
  if (isCutVertex === undefined) return undefined;
  const onCut = new Uint8Array(mesh.positions.length / 3);
  for (let v = 0; v < index.length; v++) if (index[v]! >= 0 && isCutVertex(v)) onCut[index[v]!] = 1;
  return (v) => onCut[v] === 1;
}

/** The same pieces by the vertices they have now; -1 is in none of them. */
const wishAfter = ({ index }: NearWeld, pieces: SurfaceOptions['pieces']): SurfaceOptions['pieces'] =>
  pieces?.leaveOut === undefined
    ? pieces
    : { ...pieces, leaveOut: pieces.leaveOut.map((v) => index[v] ?? -1) };

/** A shell by a vertex of the mesh as it was read. */
const namedBefore = ({ index }: NearWeld, shell: Shell): Shell =>
  shell.corner === undefined ? shell : { ...shell, corner: index.indexOf(shell.corner) };

const doubtOf = ({ doubt }: SolidMeasure): number => doubt.capsMm3 + doubt.weldMm3;
const longestRim = ({ rims }: SolidMeasure): number =>
  rims.reduce((longest, rim) => (rim.kind === 'cut' ? longest : Math.max(longest, rim.lengthMm)), 0);
