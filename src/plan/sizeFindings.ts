import { diagonalOf, type Floor, type ScanFile, type SolidMeasure } from '../geometry';
import { finding, type Problem, type Status } from '../problem';
import type { Cut } from './cuts';
import { SAME_SCALE_SHARE, type Scale } from './scale';
import type { Offsets } from './offsets';
import { MM3_PER_CM3, type SizeDoubts } from './sizeDoubts';

/** Below this share of the volume a doubt is *Fine*, above the second *Stop*. Chosen here, to match what a good cup test leaves. */
const LOOK_SHARE = 0.01;
const STOP_SHARE = 0.1;

/** Cracks whose closing could change the volume by more than this share are told as such. Chosen here. */
const CRACK_SHARE = 1e-4;

/** Sizes a workshop does not cast in one piece: outside these the unit is asked about. Chosen here. */
const SMALLEST_MM = 25;
const LARGEST_MM = 3000;

/** A cut that takes less than this share took nothing. */
const NOTHING_SHARE = 1e-6;

/** A center further from zero than this many diagonals costs digits. */
const FAR_SHARE = 1000;

export interface SizeFacts {
  scan: ScanFile;
  solid: SolidMeasure;
  scale: Scale;
  doubts: SizeDoubts;
  cuts: readonly Cut[];
  floor: Floor | undefined;
  removedCm3: number | undefined;
  offsets: Offsets | undefined;
  offsetsWanted: boolean;
}

/** Everything about a scan that its user should know, in the order of weight: closing, pieces, facets, scale, cut. */
export function sizeFindings(facts: SizeFacts): Problem[] {
  return [
    ...facts.scan.findings,
    ...closing(facts),
    ...pieces(facts),
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
        pointOf(largest.centreMm),
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
        pointOf(seams[0]!.centreMm),
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
    found.push(finding('NOT_CLOSED', 'look', { part: 'sheets', count: solid.byRole.sheet.count }));
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

function pieces({ solid }: SizeFacts): Problem[] {
  const found: Problem[] = [];
  const { body, void: inner, island } = solid.byRole;
  const solidInside = solid.byRole['inner solid'];
  // A solid that was taken for one inside another but sticks out counts like any other.
  const isWholeInside = solid.method === 'exact';
  const bodies = body.count + (isWholeInside ? 0 : solidInside.count);
  if (bodies > 1) found.push(finding('MULTI_SHELL', 'look', { part: 'bodies', count: bodies }));
  if (island.count > 0) {
    found.push(
      finding('MULTI_SHELL', statusOf(island.heldMm3 / solid.volumeMm3), {
        part: 'islands',
        count: island.count,
        effectCm3: -island.heldMm3 / MM3_PER_CM3,
      }),
    );
  }
  if (inner.count > 0) {
    found.push(
      finding('NESTED_SHELL', 'look', {
        part: 'void',
        count: inner.count,
        effectCm3: inner.volumeMm3 / MM3_PER_CM3,
        envelopeCm3: (solid.volumeMm3 - inner.volumeMm3) / MM3_PER_CM3,
      }),
    );
  }
  if (solidInside.count > 0 && isWholeInside) {
    found.push(
      finding('NESTED_SHELL', 'look', {
        part: 'solid',
        count: solidInside.count,
        effectCm3: -Math.abs(solidInside.volumeMm3) / MM3_PER_CM3,
        hollowCm3: (solid.volumeMm3 - Math.abs(solidInside.volumeMm3)) / MM3_PER_CM3,
      }),
    );
  }
  if (solid.turnedPieces.count > 0)
    found.push(finding('INSIDE_OUT', 'fine', { count: solid.turnedPieces.count }));
  return found;
}

function facets({ solid, doubts, scan }: SizeFacts): Problem[] {
  const found: Problem[] = [];
  const { collapsed, merged, cancelled, flipped, sharedEdges, oneSidedEdges } = solid.repairs;
  if (collapsed > 0) found.push(finding('DEGENERATE_FACES', 'fine', { count: collapsed, effectCm3: 0 }));
  if (merged + cancelled > 0)
    found.push(finding('DUPLICATE_FACES', 'fine', { count: merged + cancelled, merged, cancelled }));
  if (flipped > 0)
    found.push(
      finding('NOT_ORIENTED', shareStatus(flipped / scan.trianglesRead), { count: flipped, part: 'turned' }),
    );
  if (oneSidedEdges > 0)
    found.push(finding('NOT_ORIENTED', 'look', { count: oneSidedEdges, part: 'one-sided' }));
  if (sharedEdges > 0) found.push(finding('NON_MANIFOLD', 'look', { count: sharedEdges }));
  const roughShare = doubts.coordinates / (solid.volumeMm3 / MM3_PER_CM3);
  if (roughShare > 1e-4)
    found.push(
      finding('PRECISION', statusOf(roughShare), { doubtShare: roughShare, effectCm3: doubts.coordinates }),
    );
  const offCentre = Math.hypot(...solid.bounds.min.map((low, k) => (low + solid.bounds.max[k]!) / 2));
  if (offCentre > FAR_SHARE * diagonalOf(solid.bounds))
    found.push(finding('FAR_FROM_ORIGIN', 'fine', { distanceMm: offCentre }));
  return found;
}

function scaleFindings({ solid, scale }: SizeFacts): Problem[] {
  const found: Problem[] = [];
  const longestMm = Math.max(...solid.extentsMm);
  if (longestMm < SMALLEST_MM || longestMm > LARGEST_MM) {
    found.push(finding('UNITS_SUSPECT', 'look', { part: 'size', longestMm, unit: scale.fileUnit }));
  }
  for (const { by, share } of scale.disagreements) {
    if (Math.abs(share) > SAME_SCALE_SHARE)
      found.push(
        finding('UNITS_SUSPECT', Math.abs(share) > STOP_SHARE ? 'stop' : 'look', {
          part: 'disagree',
          by,
          share,
        }),
      );
  }
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

const statusOf = (share: number): Status =>
  share <= LOOK_SHARE ? 'fine' : share <= STOP_SHARE ? 'look' : 'stop';
const looseStatus = (share: number): Status => (share <= LOOK_SHARE ? 'fine' : 'look');
const shareStatus = (share: number): Status => (share <= 0.2 ? 'fine' : 'look');
const pointOf = ([xMm, yMm, zMm]: readonly [number, number, number]): Problem['at'] => ({ xMm, yMm, zMm });
