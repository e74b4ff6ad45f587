import type { Vector } from '../geometry';
import type { CapLook } from './capMaterial';
import type { Cut } from './cut';
import type { Tone } from './surfaceMaterials';

/** Triangles in mm on the placed piece. */
export interface Surfaces {
  positions: Float32Array;
  normals: Float32Array;
  index: Uint32Array;
}

/** What is drawn around the scan, from the inside out. */
export interface ShownShell {
  surface: Surfaces;
  tone: Tone;
}

/** A cut as it shows: outlines in mm on the placed piece, the inner ones first. */
export interface ShownCut {
  axis: Cut['axis'];
  faces: readonly { look: CapLook; outlines: readonly Float64Array[] }[];
}

/** From mm on the placed piece to the picture's units from its middle. */
export interface MmSeat {
  mmPerUnit: number;
  middleUnits: Vector;
}

export const unitsOf = (atMm: Vector, { mmPerUnit, middleUnits }: MmSeat): Vector => [
  atMm[0] / mmPerUnit - middleUnits[0],
  atMm[1] / mmPerUnit - middleUnits[1],
  atMm[2] / mmPerUnit - middleUnits[2],
];
