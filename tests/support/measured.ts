import { measureSolid, type SolidMeasure, type TriangleMesh } from '../../src/geometry';
import type { Outcome } from '../../src/problem';
import { valueOf } from './outcome';

/** Measures a mesh whose coordinates are exact: nothing is rounded in any file. */
export const outcomeOf = (mesh: TriangleMesh): Outcome<SolidMeasure> =>
  measureSolid(mesh, { coordinateStepMm: 0 });
export const measured = (mesh: TriangleMesh): SolidMeasure => valueOf(outcomeOf(mesh));

/** Half-width of the range, mm3, the scale being known: the same sum of squares as a size has. */
export const halfWidth = ({ doubt }: SolidMeasure): number =>
  Math.hypot(doubt.capsMm3, doubt.islandsMm3, doubt.overlapMm3, doubt.coordinatesMm3, doubt.weldMm3);
