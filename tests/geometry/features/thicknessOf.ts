import {
  buildField,
  extentsOf,
  measureThickness,
  type Crew,
  type Thickness,
  type TriangleMesh,
} from '../../../src/geometry';
import type { ThicknessOptions } from '../../../src/geometry/features/thickness';
import { damaged, quartered } from '../../support/meshTools';
import { measured } from '../../support/measured';
import { lcg } from '../../support/lcg';
import { valueOf } from '../../support/outcome';
import type { Vec3 } from '../../support/shapes';

/** The thickness of a mesh that is measured and closed as a scan is; voxels of 1 mm and a field as deep as the body, unless told otherwise. */
export function thicknessOf(
  mesh: TriangleMesh,
  {
    voxelMm = 1,
    levelsMm,
    crew,
    ...options
  }: ThicknessOptions & { voxelMm?: number; levelsMm?: readonly number[]; crew?: Crew } = {},
): Thickness {
  const { chain, bounds } = measured(mesh);
  const deepMm = Math.min(...extentsOf(bounds)) / 2;
  const field = valueOf(
    buildField(chain, bounds, {
      voxelMm,
      levelsMm: levelsMm ?? [-deepMm],
      ...(crew === undefined ? {} : { crew }),
    }),
  );
  return valueOf(measureThickness(field, options));
}

/** Thickness at these shares of the measured samples, thinnest first; of the places that `isAsked`. */
export function percentiles(
  { thicknessMm, positions }: Thickness,
  shares: readonly number[],
  isAsked: (at: Vec3) => boolean = () => true,
): number[] {
  const asked = thicknessMm.filter((mm, s) =>
    isAsked([positions[3 * s]!, positions[3 * s + 1]!, positions[3 * s + 2]!]) ? mm > 0 : false,
  );
  asked.sort();
  return shares.map((share) => asked[Math.min(asked.length - 1, Math.floor(share * asked.length))]!);
}

/** 5 % of the facets deleted, 5 % turned over, 5 % doubled. */
export const hurt = (mesh: TriangleMesh, seed: number): TriangleMesh =>
  damaged(mesh, 'all three', 0.05, lcg(seed));

/** Every triangle in four, so many times: the same body. */
export function finely(mesh: TriangleMesh, times: number): TriangleMesh {
  let result = mesh;
  for (let n = 0; n < times; n++) result = quartered(result);
  return result;
}
