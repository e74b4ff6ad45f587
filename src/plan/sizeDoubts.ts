import type { SolidMeasure } from '../geometry';
import type { Scale } from './scale';

/** 1 cm3 (1 mL) is 1000 mm3: here, once, shapes become amounts. */
export const MM3_PER_CM3 = 1000;

/** How well the height of a cut is known, 95 times of 100, mm: common practice, no source. */
export const CUT_HEIGHT_DOUBT_MM = 0.5;

/** Half-widths at 95 of 100, cm3. Independent of each other, so they add as squares (JCGM 100:2008, 5.1.2). */
export interface SizeDoubts {
  caps: number;
  scale: number;
  /** Of the cuts: where exactly a plane was meant. */
  cut: number;
  islands: number;
  overlaps: number;
  coordinates: number;
  /** Of merging corners that neighbors do not share. */
  weld: number;
}

export function doubtsOf({ doubt, volumeMm3, cutAreaMm2 }: SolidMeasure, scale: Scale): SizeDoubts {
  return {
    caps: doubt.capsMm3 / MM3_PER_CM3,
    scale: (3 * scale.doubtShare * volumeMm3) / MM3_PER_CM3,
    cut: (CUT_HEIGHT_DOUBT_MM * cutAreaMm2) / MM3_PER_CM3,
    islands: doubt.islandsMm3 / MM3_PER_CM3,
    overlaps: doubt.overlapMm3 / MM3_PER_CM3,
    coordinates: doubt.coordinatesMm3 / MM3_PER_CM3,
    weld: doubt.weldMm3 / MM3_PER_CM3,
  };
}
