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

export interface ScaleOptions {
  fileUnit?: FileUnit;
  taped?: readonly TapedExtent[];
  span?: Span;
  up: UpAxis;
  cuts: readonly Cut[];
}

export interface Scale {
  mmPerUnit: number;
  /** The unit's name where the scale is one, else the length of a file unit in mm. */
  fileUnit: string;
  from: 'given' | 'taped';
  /** Half-width at 95 of 100, as a share of any length. */
  doubtShare: number;
  /** Other measures given, and by what share each differs from this scale. */
  disagreements: { by: string; share: number }[];
}

/**
 * The scale of a scan: a distance between two points first, then a taped extent, then the named unit; the others only check
 * it. STL and OBJ carry no unit, so with none of them the answer is SCALE_UNKNOWN with the size under each unit.
 */
export function settleScale(mesh: TriangleMesh, options: ScaleOptions): Outcome<Scale> {
  const candidates: { by: string; mmPerUnit: number; doubtShare: number; from: Scale['from'] }[] = [];
  if (options.span !== undefined) {
    const length = Math.hypot(...options.span.to.map((x, k) => x - options.span!.from[k]!));
    if (!(length > 0)) return bad('SCALE_UNREACHED', { by: 'span' });
    candidates.push({
      by: 'span',
      mmPerUnit: options.span.lengthMm / length,
      doubtShare: TAPE_TOLERANCE_MM / options.span.lengthMm,
      from: 'taped',
    });
  }
  for (const taped of options.taped ?? []) {
    const mmPerUnit = scaleFromExtent(mesh, options, taped);
    if (!mmPerUnit.ok) return mmPerUnit;
    candidates.push({
      by: taped.along,
      mmPerUnit: mmPerUnit.value,
      doubtShare: TAPE_TOLERANCE_MM / taped.lengthMm,
      from: 'taped',
    });
  }
  if (options.fileUnit !== undefined) {
    candidates.push({
      by: 'file unit',
      mmPerUnit: FILE_UNITS[options.fileUnit],
      doubtShare: 0,
      from: 'given',
    });
  }
  const unfit = candidates.find(({ mmPerUnit }) => !(mmPerUnit > 0 && Number.isFinite(mmPerUnit)));
  if (unfit !== undefined) return bad('SCALE_UNREACHED', { by: unfit.by });
  const [chosen, ...others] = candidates;
  if (chosen === undefined) return bad('SCALE_UNKNOWN', sizeUnderEachUnit(mesh, options.up));
  return good({
    mmPerUnit: chosen.mmPerUnit,
    from: chosen.from,
    doubtShare: chosen.doubtShare,
    fileUnit: nameOfUnit(chosen.mmPerUnit),
    disagreements: others.map((o) => ({ by: o.by, share: o.mmPerUnit / chosen.mmPerUnit - 1 })),
  });
}

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
function scaleFromExtent(mesh: TriangleMesh, options: ScaleOptions, taped: TapedExtent): Outcome<number> {
  const axis = AXIS_OF[taped.along];
  const turned = placeMesh(mesh, { up: options.up, mmPerUnit: 1 });
  const uncut = taped.lengthMm / bodyExtent(turned, axis);
  if (options.cuts.length === 0) return good(uncut);
  const bounds = boundsOf(turned);
  const tooLongMm = (mmPerUnit: number): number => {
    const planes = options.cuts.map((cut) => planeInUnits(cut, bounds, mmPerUnit));
    return mmPerUnit * bodyExtent(cutMesh(turned, planes).mesh, axis) - taped.lengthMm;
  };
  const mmPerUnit = findZero(tooLongMm, uncut);
  return mmPerUnit === undefined ? bad('SCALE_UNREACHED', { by: taped.along }) : good(mmPerUnit);
}

/** Extent of the pieces that count: a speck above the head must not stretch it. Of everything, where nothing is solid. */
function bodyExtent(mesh: TriangleMesh, axis: 0 | 1 | 2): number {
  if (mesh.triangles.length === 0) return 0;
  const solid = measureSolid(mesh, { coordinateStepMm: 0 });
  return solid.ok ? solid.value.extentsMm[axis] : extentsOf(boundsOf(mesh))[axis];
}
