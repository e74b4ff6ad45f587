import { diagonalOf, type SolidMeasure } from '../geometry';
import { finding, type Problem, type Status } from '../problem';
import { LOOK_SHARE, statusOf, STOP_SHARE } from './doubtStatus';
import { pieceFindings } from './pieceFindings';
import { scaleFindings } from './scaleFindings';
import { MM3_PER_CM3 } from './sizeDoubts';
import type { SizeFacts } from './sizeFacts';

/** Cracks whose closing could change the volume by more than this share are told as such. Chosen here. */
const CRACK_SHARE = 1e-4;

/** A cut that takes less than this share took nothing. */
const NOTHING_SHARE = 1e-6;

/** A center further from zero than this many diagonals costs digits. */
const FAR_SHARE = 1000;

/** Everything about a scan that its user should know, in the order of weight: closing, pieces, facets, scale, cut. */
export function sizeFindings(facts: SizeFacts): Problem[] {
  return [
    ...facts.scan.findings,
    ...closing(facts),
    ...pieceFindings(facts),
    ...facets(facts),
    ...scaleFindings(facts),
    ...table(facts),
    ...offsetFindings(facts),
  ];
}

function closing({ scan, solid, doubts }: SizeFacts): Problem[] {
  const found = corners(solid);
  const holes = solid.rims.filter((rim) => rim.kind === 'hole');
  const largest = holes[0];
  const volumeCm3 = solid.volumeMm3 / MM3_PER_CM3;
  if (largest !== undefined) {
    found.push(
      finding(
        'NOT_CLOSED',
        statusOf(doubts.caps / volumeCm3),
        {
          part: 'holes',
          count: holes.length,
          areaCm2: holes.reduce((sum, rim) => sum + rim.areaMm2, 0) / 100,
          largestLengthMm: largest.lengthMm,
          flatnessMm: largest.flatnessMm,
          effectCm3: doubts.caps,
        },
        pointOf(largest.centerMm),
      ),
    );
  }
  const seams = solid.rims.filter((rim) => rim.kind === 'seam');
  if (seams.length > 0) {
    found.push(
      finding(
        'NOT_CLOSED',
        'fine',
        { part: 'seams', count: seams.length, effectCm3: 0 },
        pointOf(seams[0]!.centerMm),
      ),
    );
  }
  if (solid.repairs.loose > 0)
    found.push(
      finding('NOT_CLOSED', looseStatus(solid.repairs.loose / scan.trianglesRead), {
        part: 'loose',
        count: solid.repairs.loose,
        effectCm3: 0,
      }),
    );
  if (solid.byRole.sheet.count > 0)
    found.push(
      finding(
        'NOT_CLOSED',
        'look',
        { part: 'sheets', count: solid.byRole.sheet.count, effectCm3: 0 },
        solid.byRole.sheet.middleMm && pointOf(solid.byRole.sheet.middleMm),
      ),
    );
  if (solid.soup === undefined && solid.method === 'field') {
    const effectCm3 = (solid.volumeMm3 - solid.plainSumMm3) / MM3_PER_CM3;
    found.push(
      finding('SELF_INTERSECT', 'look', {
        doubledCm3: solid.winding.doubledMm3 / MM3_PER_CM3,
        negativeCm3: -solid.winding.negativeMm3 / MM3_PER_CM3,
        effectCm3,
      }),
    );
  } else if (doubts.overlaps > 1e-9 * volumeCm3) {
    found.push(
      finding('SELF_INTERSECT', 'fine', {
        doubledCm3: solid.winding.doubledMm3 / MM3_PER_CM3,
        negativeCm3: -solid.winding.negativeMm3 / MM3_PER_CM3,
        effectCm3: 0,
      }),
    );
  }
  return found;
}

/** What was done where neighbors do not share their corners. */
function corners({ welded, soup, doubt, volumeMm3 }: SolidMeasure): Problem[] {
  const found: Problem[] = [];
  if (welded !== undefined) {
    const doubtShare = doubt.weldMm3 / volumeMm3;
    const effectCm3 = doubt.weldMm3 / MM3_PER_CM3;
    found.push(finding('WELDED', 'look', { ...welded, effectCm3, doubtShare }));
    if (doubtShare > CRACK_SHARE)
      found.push(finding('NOT_CLOSED', statusOf(doubtShare), { part: 'cracks', effectCm3, doubtShare }));
  }
  if (soup !== undefined) {
    const doubtShare = doubt.capsMm3 / volumeMm3;
    found.push(
      finding('NOT_CLOSED', doubtShare > STOP_SHARE ? 'stop' : 'look', {
        part: 'winding',
        effectCm3: doubt.capsMm3 / MM3_PER_CM3,
        doubtShare,
        insideWinding: soup.insideWinding,
        sampledCm3: soup.sampledMm3 / MM3_PER_CM3,
        unclearCm3: soup.unclearMm3 / MM3_PER_CM3,
      }),
    );
  }
  return found;
}

function facets({ solid, doubts, scan }: SizeFacts): Problem[] {
  const found: Problem[] = [];
  const { collapsed, merged, cancelled, flipped, sharedEdges, oneSidedEdges } = solid.repairs;
  if (collapsed > 0) found.push(finding('DEGENERATE_FACES', 'fine', { count: collapsed, effectCm3: 0 }));
  if (merged + cancelled > 0)
    found.push(
      finding('DUPLICATE_FACES', 'fine', { count: merged + cancelled, merged, cancelled, effectCm3: 0 }),
    );
  if (flipped > 0)
    found.push(
      finding('NOT_ORIENTED', shareStatus(flipped / scan.trianglesRead), {
        count: flipped,
        part: 'turned',
        effectCm3: 0,
      }),
    );
  if (oneSidedEdges > 0)
    found.push(finding('NOT_ORIENTED', 'look', { count: oneSidedEdges, part: 'one-sided' }));
  if (sharedEdges > 0) found.push(finding('NON_MANIFOLD', 'look', { count: sharedEdges, effectCm3: 0 }));
  const roughShare = doubts.coordinates / (solid.volumeMm3 / MM3_PER_CM3);
  if (roughShare > 1e-4)
    found.push(
      finding('PRECISION', statusOf(roughShare), { doubtShare: roughShare, effectCm3: doubts.coordinates }),
    );
  const offCenter = Math.hypot(...solid.bounds.min.map((low, k) => (low + solid.bounds.max[k]!) / 2));
  if (offCenter > FAR_SHARE * diagonalOf(solid.bounds))
    found.push(finding('FAR_FROM_ORIGIN', 'fine', { distanceMm: offCenter, effectCm3: 0 }));
  return found;
}

function table({ cuts, floor, removedCm3, solid, scale }: SizeFacts): Problem[] {
  if (cuts.length > 0) {
    const values = {
      count: cuts.length,
      keptCm3: solid.volumeMm3 / MM3_PER_CM3,
      perMmCm3: solid.cutAreaMm2 / MM3_PER_CM3,
    };
    if (removedCm3 === undefined) return [finding('CUT_AWAY', 'look', values)];
    return [
      finding('CUT_AWAY', cutStatus(removedCm3, values.keptCm3), { ...values, effectCm3: -removedCm3 }),
    ];
  }
  if (floor === undefined) return [];
  const found = {
    topMm: floor.topMm,
    topUnits: floor.topMm / scale.mmPerUnit,
    areaCm2: floor.areaMm2 / 100,
    tiltDegrees: floor.tiltDegrees,
  };
  return [finding('FLOOR_FOUND', 'look', found, { zMm: floor.topMm })];
}

/** Walls the voxels are too coarse for, and offsets that could not be measured. */
function offsetFindings({ offsets, offsetsWanted }: SizeFacts): Problem[] {
  if (!offsetsWanted) return [];
  if (offsets === undefined) return [finding('NOT_CLOSED', 'unknown', { part: 'offsets' })];
  const found: Problem[] = [];
  const { fieldCm3, differenceCm3, toleranceCm3 } = offsets.check;
  if (Math.abs(differenceCm3) > toleranceCm3)
    found.push(finding('SELF_INTERSECT', 'look', { part: 'check', fieldCm3, differenceCm3 }));
  if (offsets.thin !== undefined) {
    const { thinnestMm, areaCm2 } = offsets.thin;
    found.push(finding('THIN', 'look', { thinnestMm, areaCm2, voxelMm: offsets.voxel.voxelMm }));
  }
  return found;
}

/** A cut that takes nothing misses the piece; one that takes more than it leaves may be a slip of the pen. Chosen here. */
function cutStatus(removedCm3: number, keptCm3: number): Status {
  return Math.abs(removedCm3) < NOTHING_SHARE * keptCm3 || removedCm3 > keptCm3 ? 'look' : 'fine';
}

const looseStatus = (share: number): Status => (share <= LOOK_SHARE ? 'fine' : 'look');
const shareStatus = (share: number): Status => (share <= 0.2 ? 'fine' : 'look');
const pointOf = ([xMm, yMm, zMm]: readonly [number, number, number]): Problem['at'] => ({ xMm, yMm, zMm });
