import {
  buildField,
  extentsOf,
  measureThickness,
  type Crew,
  type Thickness,
  type TriangleMesh,
} from '../../../src/geometry';
import type { ThicknessOptions } from '../../../src/geometry/features/thickness';
import { damaged, withTriangles, type Triple, trianglesOf } from '../../support/meshTools';
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

function quartered(mesh: TriangleMesh): TriangleMesh {
  const points = [...mesh.positions];
  const made = new Map<string, number>();
  const middle = (a: number, b: number): number => {
    const key = a < b ? `${a} ${b}` : `${b} ${a}`;
    if (!made.has(key)) {
      made.set(key, points.length / 3);
      for (let k = 0; k < 3; k++) points.push((mesh.positions[3 * a + k]! + mesh.positions[3 * b + k]!) / 2);
    }
    return made.get(key)!;
  };
  const triples = trianglesOf(mesh).flatMap(([a, b, c]): Triple[] => {
    const [ab, bc, ca] = [middle(a, b), middle(b, c), middle(c, a)];
    return [
      [a, ab, ca],
      [ab, b, bc],
      [ca, bc, c],
      [ab, bc, ca],
    ];
  });
  return withTriangles({ positions: Float64Array.from(points), triangles: mesh.triangles }, triples);
}
