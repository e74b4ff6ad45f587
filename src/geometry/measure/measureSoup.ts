import { bad, good, type Outcome } from '../../problem';
import { dropCollapsed, mergeDuplicates } from '../repair/facets';
import { applyFlips } from '../repair/orient';
import { boundsOf, diagonalOf, extentsOf, type TriangleMesh } from '../triangleMesh';
import type { RepairCounts } from './closedSurface';
import { DOUBT_LIMIT } from './refusal';
import { fixedRandom, sampleWinding, type WindingSamples } from './sampleWinding';
import { coneAll, fluxOf, type Flux } from './soupFlux';
import type { PieceGroup, SolidMeasure } from './solidMeasure';
import { windingAbout, windingTree, type WindingTree } from './windingTree';

/** Facets that hold less than this share of area x diagonal are a sheet (as an open piece is, see `assignRoles`). */
const SHEET_SHARE = 2e-3;

/** The first look turns tangles away before they cost seconds. Chosen here. */
const FIRST_LOOK = { cells: 16, fine: 1 };

/** Places inside that are asked for the winding number there, of so many tried, and how closely. Chosen here. */
const PROBES = 60;
const TRIES = 4096;
const CLOSE = 12;

/** Below this the facets do not wind about anything: a third of them is missing or turned over. Chosen here. */
const LEAST_WINDING = 0.65;

/**
 * A solid from facets that do not close, by the winding number of all of them together: the flux through them about their area
 * centroid, a third of it the volume, divided by the winding number well inside, since a share of the surface that is missing
 * evenly takes the same share off both (derived here). Sampled winding numbers check it. The doubt is their difference, two
 * standard deviations of the sampling, and all that is neither clearly in nor clearly out. The facets must mostly agree which
 * side is out. NOT_CLOSED where the doubt is too large.
 */
export function measureSoup(input: TriangleMesh, coordinateStepMm: number): Outcome<SolidMeasure> {
  const { mesh: sound, dropped } = dropCollapsed(input);
  const merged = mergeDuplicates(sound);
  if (merged.mesh.triangles.length === 0) return bad('NOT_CLOSED');
  const { mesh, flux, turned } = facingOut(merged.mesh);
  if (!(flux.volumeMm3 > SHEET_SHARE * flux.areaMm2 * diagonalOf(boundsOf(mesh)))) return bad('NOT_CLOSED');
  const tree = windingTree(mesh);
  const first = sampleWinding(tree, 1, FIRST_LOOK);
  if (!(first.unclearMm3 < 2 * DOUBT_LIMIT * first.insideMm3)) return bad('NOT_CLOSED');
  const insideWinding = windingWellInside(tree);
  if (!(insideWinding > LEAST_WINDING)) return bad('NOT_CLOSED');
  const found = sampleWinding(tree, insideWinding);
  const volumeMm3 = flux.volumeMm3 / insideWinding;
  const doubtMm3 = Math.abs(volumeMm3 - found.insideMm3) + 2 * found.spreadMm3 + found.unclearMm3;
  if (!(doubtMm3 < DOUBT_LIMIT * volumeMm3)) return bad('NOT_CLOSED', { doubtShare: doubtMm3 / volumeMm3 });
  const repairs = { collapsed: dropped, merged: merged.merged, cancelled: merged.cancelled };
  return good(
    asSolid(mesh, { ...found, flux, turned, insideWinding, volumeMm3, doubtMm3, coordinateStepMm, repairs }),
  );
}

function facingOut(mesh: TriangleMesh): { mesh: TriangleMesh; flux: Flux; turned: boolean } {
  const flux = fluxOf(mesh);
  if (flux.volumeMm3 >= 0) return { mesh, flux, turned: false };
  const over = { positions: mesh.positions, triangles: mesh.triangles.slice() };
  applyFlips(over, new Uint8Array(mesh.triangles.length / 3).fill(1));
  return { mesh: over, flux: { ...flux, volumeMm3: -flux.volumeMm3 }, turned: true };
}

/** Median over places inside, which are found by the same winding number, at random in the bounds. 0 where none is. */
function windingWellInside(tree: WindingTree): number {
  const { min, max } = boundsOf(tree.mesh);
  const random = fixedRandom();
  const windings: number[] = [];
  for (let i = 0; i < TRIES && windings.length < PROBES; i++) {
    const at = min.map((low, k) => low + random() * (max[k]! - low)) as [number, number, number];
    if (windingAbout(tree, at) > 0.5) windings.push(windingAbout(tree, at, CLOSE));
  }
  windings.sort((a, b) => a - b);
  return windings[windings.length >> 1] ?? 0;
}

interface SoupFacts extends WindingSamples {
  flux: Flux;
  turned: boolean;
  insideWinding: number;
  volumeMm3: number;
  doubtMm3: number;
  coordinateStepMm: number;
  repairs: Pick<RepairCounts, 'collapsed' | 'merged' | 'cancelled'>;
}

/** One body, open everywhere: what a measure says that looked at no piece and no rim. */
function asSolid(mesh: TriangleMesh, facts: SoupFacts): SolidMeasure {
  const { flux, volumeMm3 } = facts;
  const bounds = boundsOf(mesh);
  const { openEdges, ...chain } = coneAll(mesh, flux.centerMm);
  const none: PieceGroup = { count: 0, volumeMm3: 0, heldMm3: 0, areaMm2: 0 };
  const whole: PieceGroup = { count: 1, volumeMm3, heldMm3: volumeMm3, areaMm2: flux.areaMm2 };
  return {
    volumeMm3,
    doubt: {
      capsMm3: facts.doubtMm3,
      islandsMm3: 0,
      overlapMm3: 0,
      coordinatesMm3: (facts.coordinateStepMm * flux.areaMm2) / 2,
      weldMm3: 0,
    },
    areaMm2: flux.areaMm2,
    cutAreaMm2: 0,
    bounds,
    scanBounds: bounds,
    extentsMm: extentsOf(bounds),
    pieces: 1,
    byRole: {
      body: whole,
      void: none,
      'inner solid': none,
      island: none,
      sheet: none,
      'left out': none,
      filled: none,
    },
    shells: [],
    wished: { specks: none, hollowed: none, lost: 0 },
    turnedPieces: facts.turned ? whole : none,
    isMainTurned: facts.turned,
    rims: [],
    repairs: { ...facts.repairs, loose: 0, flipped: 0, openEdges, sharedEdges: 0, oneSidedEdges: 0 },
    closed: false,
    method: 'field',
    winding: {
      signedMm3: flux.volumeMm3,
      doubledMm3: 0,
      negativeMm3: 0,
      latticeErrorMm3: facts.spreadMm3,
      spacingMm: facts.spacingMm,
    },
    soup: {
      insideWinding: facts.insideWinding,
      sampledMm3: facts.insideMm3,
      unclearMm3: facts.unclearMm3,
    },
    plainSumMm3: flux.volumeMm3,
    chain,
    envelope: chain,
  };
}
