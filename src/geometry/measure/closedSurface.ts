import { coneLoops, type Capped } from '../repair/closeCycle';
import { findLoops, type Loop } from '../repair/loops';
import { pairEdges, partConflicts, type EdgePairs } from '../repair/edges';
import { dropCollapsed, dropLoose, mergeDuplicates } from '../repair/facets';
import { applyFlips, orientPatches, type Orientation } from '../repair/orient';
import { settlePatches } from '../repair/patches';
import type { TriangleMesh } from '../triangleMesh';

/** What was done to a scan to give it an inside, in counts. Nothing else is ever done to it. */
export interface RepairCounts {
  collapsed: number;
  merged: number;
  cancelled: number;
  /** Facets that shared no edge with any other, left out. */
  loose: number;
  flipped: number;
  openEdges: number;
  sharedEdges: number;
  oneSidedEdges: number;
}

export interface ClosedSurface {
  capped: Capped;
  pairs: EdgePairs;
  loops: Loop[];
  counts: RepairCounts;
  oneSidedArea: number;
}

/**
 * Gives any triangle list an inside: collapsed and repeated facets go, neighbors are made to agree, and what is left open is
 * closed algebraically. The input mesh is not changed. Linear but for a sort of the facets when some edge is not shared by two.
 * `keepWinding` turns no facet over: where two run the same way along an edge, they are taken apart there instead.
 */
export function closeSurface(input: TriangleMesh, keepWinding = false): ClosedSurface {
  const collapsed = dropCollapsed(input);
  let mesh = collapsed.mesh;
  let pairs = pairEdges(mesh);
  let merged = { merged: 0, cancelled: 0 };
  if (pairs.openCount + pairs.shared.length + pairs.conflictCount > 0) {
    const result = mergeDuplicates(mesh);
    merged = result;
    if (result.mesh !== mesh) {
      mesh = result.mesh;
      pairs = pairEdges(mesh);
    }
  }
  const { mesh: joined, loose } = dropLoose(mesh, pairs);
  if (loose > 0) {
    mesh = joined;
    pairs = pairEdges(mesh);
  }
  if (keepWinding) partConflicts(mesh, pairs);
  const orientation = orientPatches(mesh, pairs);
  settlePatches(mesh, pairs, orientation.flip);
  const loops = findLoops(mesh, pairs, orientation.flip);
  const flipped = orientation.flip.reduce((sum, one) => sum + one, 0);
  if (flipped > 0) {
    mesh = { positions: mesh.positions, triangles: mesh.triangles.slice() };
    applyFlips(mesh, orientation.flip);
  }
  const counts = countRepairs(
    { collapsed: collapsed.dropped, ...merged, loose, flipped },
    pairs,
    orientation,
  );
  return { capped: coneLoops(mesh, loops), pairs, loops, counts, oneSidedArea: orientation.oneSidedArea };
}

function countRepairs(
  facets: Pick<RepairCounts, 'collapsed' | 'merged' | 'cancelled' | 'loose' | 'flipped'>,
  pairs: EdgePairs,
  orientation: Orientation,
): RepairCounts {
  let sharedEdges = 0;
  for (let i = 0; i < pairs.shared.length; i += pairs.shared[i]! + 1) sharedEdges++;
  return {
    collapsed: facets.collapsed,
    merged: facets.merged,
    cancelled: facets.cancelled,
    loose: facets.loose,
    flipped: facets.flipped,
    openEdges: pairs.openCount,
    sharedEdges,
    oneSidedEdges: orientation.oneSidedEdges,
  };
}
