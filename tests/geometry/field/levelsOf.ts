import {
  boundsOf,
  type Bounds,
  buildField,
  measureLevels,
  type Field,
  type FieldOptions,
  type LevelVolume,
  type TriangleMesh,
} from '../../../src/geometry';
import { valueOf } from '../../support/outcome';

/** A field of a closed mesh with 1 mm voxels, unless the options say otherwise. */
export const fieldOf = (
  mesh: TriangleMesh,
  levelsMm: readonly number[],
  options: Partial<FieldOptions> = {},
  bounds: Bounds = boundsOf(mesh),
): Field => valueOf(buildField(mesh, bounds, { voxelMm: 1, levelsMm, ...options }));

/** The levels of a closed mesh from a field of its own. */
export const levelsOf = (
  mesh: TriangleMesh,
  levelsMm: readonly number[],
  options: Partial<FieldOptions> = {},
  bounds?: Bounds,
): LevelVolume[] => valueOf(measureLevels(fieldOf(mesh, levelsMm, options, bounds), levelsMm));
