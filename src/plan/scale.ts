import { bad, good, type Outcome } from '../problem';
import { planeInUnits, type Cut } from './cuts';
import { findZero } from './findZero';
import {
  boundsOf,
  cutMesh,
  extentsOf,
  measureSolid,
  placedBounds,
  placeMesh,
  type PieceWish,
  type TriangleMesh,
  type UpAxis,
} from '../geometry';

/** Millimetres per unit, exact by definition (NIST SP 811, appendix B). */
export const FILE_UNITS = { mm: 1, cm: 10, m: 1000, in: 25.4, ft: 304.8 } as const;
export type FileUnit = keyof typeof FILE_UNITS;

/** How far off a taped length may be, 95 times of 100, mm: common practice, no source. */
export const TAPE_TOLERANCE_MM = 1;

/** A scale within this share of a unit is called by its name; two scales that differ by more are a finding. */
export const SAME_SCALE_SHARE = 0.01;

export type Along = 'tall' | 'wide' | 'deep';
const AXIS_OF: Record<Along, 0 | 1 | 2> = { wide: 0, deep: 1, tall: 2 };

/** One extent of the piece as it is measured: along up, x or y of the placed mesh. */
export interface TapedExtent {
  along: Along;
  lengthMm: number;
}

/** A distance between two points, in file units and the file's own axes. */
export interface Span {
  from: readonly [number, number, number];
  to: readonly [number, number, number];
  lengthMm: number;
}

/** What a scale can be taken from. */
export type ScaleMeasure = Along | 'span' | 'file unit' | 'own unit';

export interface ScaleOptions {
  fileUnit?: FileUnit;
  /** The unit that the file itself states. */
  ownUnit?: FileUnit;
  taped?: readonly TapedExtent[];
  span?: Span;
  /** Which of the measures given sets the scale, where it is not the first of span, tape, unit and the file's own unit. */
  scaleBy?: ScaleMeasure;
  up: UpAxis;
  cuts: readonly Cut[];
  /** What a tape is held against, where not all pieces count as they are. */
  pieces?: PieceWish;
}

export interface Scale {
  mmPerUnit: number;
  /** The unit's name where the scale is one, else the length of a file unit in mm. */
  fileUnit: string;
  from: 'given' | 'taped' | 'file';
  by: ScaleMeasure;
  /** Half-width at 95 of 100, as a share of any length. */
  doubtShare: number;
  /** Other measures given, and by what share each differs from this scale. */
  disagreements: { by: ScaleMeasure; share: number }[];
  /** Measures that should check it and fit no scale, as a tape of what a cut takes away. Only where `scaleBy` chose. */
  unreached: ScaleMeasure[];
}

interface Candidate {
  by: ScaleMeasure;
  mmPerUnit: number;
  doubtShare: number;
  from: Scale['from'];
}

/**
 * The scale of a scan: a distance between two points first, then a taped extent, then the named unit, then the one the file states
 * (only 3MF does), or what `scaleBy` names; the others only check it. With none of them the answer is SCALE_UNKNOWN with the size
 * under each unit.
 */
export function settleScale(mesh: TriangleMesh, options: ScaleOptions): Outcome<Scale> {
  const { scaleBy, up } = options;
  const candidates: Candidate[] = [];
  const unreached: ScaleMeasure[] = [];
  for (const candidate of candidatesOf(mesh, options)) {
    if (candidate.ok) candidates.push(candidate.value);
    else if (scaleBy === undefined || candidate.by === scaleBy)
      return bad('SCALE_UNREACHED', { by: candidate.by });
    else unreached.push(candidate.by);
  }
  const chosen = scaleBy === undefined ? candidates[0] : candidates.find(({ by }) => by === scaleBy);
  if (chosen === undefined) return bad('SCALE_UNKNOWN', sizeUnderEachUnit(mesh, up));
  return good({
    ...chosen,
    fileUnit: nameOfUnit(chosen.mmPerUnit),
    disagreements: candidates
      .filter((other) => other !== chosen)
      .map((other) => ({ by: other.by, share: other.mmPerUnit / chosen.mmPerUnit - 1 })),
    unreached,
  });
}

type Tried = { ok: true; value: Candidate } | { ok: false; by: ScaleMeasure };

/** Every measure given with the scale it would set, in the order of trust. */
function* candidatesOf(mesh: TriangleMesh, options: ScaleOptions): Iterable<Tried> {
  const { span, taped = [], fileUnit, ownUnit } = options;
  if (span !== undefined) {
    const length = Math.hypot(...span.to.map((x, k) => x - span.from[k]!));
    yield tried('span', span.lengthMm / length, TAPE_TOLERANCE_MM / span.lengthMm);
  }
  for (const one of taped) {
    const mmPerUnit = scaleFromExtent(mesh, options, one);
    yield mmPerUnit === undefined
      ? { ok: false, by: one.along }
      : tried(one.along, mmPerUnit, TAPE_TOLERANCE_MM / one.lengthMm);
  }
  if (fileUnit !== undefined) yield named('file unit', fileUnit, 'given');
  if (ownUnit !== undefined) yield named('own unit', ownUnit, 'file');
}

const named = (by: ScaleMeasure, unit: FileUnit, from: Scale['from']): Tried => ({
  ok: true,
  value: { by, mmPerUnit: FILE_UNITS[unit], doubtShare: 0, from },
});

const tried = (by: ScaleMeasure, mmPerUnit: number, doubtShare: number): Tried =>
  mmPerUnit > 0 && Number.isFinite(mmPerUnit)
    ? { ok: true, value: { by, mmPerUnit, doubtShare, from: 'taped' } }
    : { ok: false, by };

function nameOfUnit(mmPerUnit: number): string {
  for (const [name, factor] of Object.entries(FILE_UNITS)) {
    if (Math.abs(mmPerUnit / factor - 1) <= SAME_SCALE_SHARE) return name;
  }
  return `${Number(mmPerUnit.toPrecision(5))} mm`;
}

/** Length, width and height in file units, for the question "how big is one unit?". */
function sizeUnderEachUnit(mesh: TriangleMesh, up: UpAxis): Record<string, number> {
  const [wide, deep, tall] = extentsOf(placedBounds(mesh, { up, mmPerUnit: 1 }));
  return { wideUnits: wide, deepUnits: deep, tallUnits: tall };
}

/**
 * Millimetres per unit from one extent of what is left after the cuts. A cut given in mm lies elsewhere in the file
 * at another scale, so both are sought together: the scale at which what is left measures what the tape says.
 */
function scaleFromExtent(
  mesh: TriangleMesh,
  { up, cuts, pieces }: ScaleOptions,
  taped: TapedExtent,
): number | undefined {
  const axis = AXIS_OF[taped.along];
  const turned = placeMesh(mesh, { up, mmPerUnit: 1 });
  const uncut = taped.lengthMm / bodyExtent(turned, axis, pieces);
  if (cuts.length === 0) return uncut;
  const bounds = boundsOf(turned);
  const tooLongMm = (mmPerUnit: number): number => {
    const planes = cuts.map((cut) => planeInUnits(cut, bounds, mmPerUnit));
    return mmPerUnit * bodyExtent(cutMesh(turned, planes).mesh, axis, pieces) - taped.lengthMm;
  };
  return findZero(tooLongMm, uncut);
}

/** Extent of the pieces that count: a speck above the head must not stretch it. Of everything, where nothing is solid. */
function bodyExtent(mesh: TriangleMesh, axis: 0 | 1 | 2, pieces: PieceWish | undefined): number {
  if (mesh.triangles.length === 0) return 0;
  const solid = measureSolid(mesh, { coordinateStepMm: 0, ...(pieces === undefined ? {} : { pieces }) });
  return solid.ok ? solid.value.extentsMm[axis] : extentsOf(boundsOf(mesh))[axis];
}
