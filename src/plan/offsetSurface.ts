import { buildField, distanceFunction, type ScanFile } from '../geometry';
import { finestEdgeMm, surfaceFile, type WasmSource } from '../geometry/solids';
import { bad, type Outcome } from '../problem';
import { voxelFor } from './offsets';
import { settleSolid } from './settleSolid';
import type { SizeOptions } from './sizeOptions';

/** Facets may move by this share of a voxel, so that flat stretches need few of them. Chosen here. */
const SIMPLIFY_SHARE = 0.05;

/**
 * The surface of the body grown (or, negative, shrunk) by one distance, as the bytes of a mesh file whose name says the format: for a
 * printer, or to look at. Facets are about two voxels long; the volume that `sizeScan` gives is the better one.
 * Errors: those of `settleSolid`, `chooseVoxel`, `buildField` and `surfaceFile`; NOT_CLOSED (part `offsets`) for a scan whose
 * facets do not join.
 */
export async function offsetSurface(
  scan: ScanFile,
  options: SizeOptions & { offsetMm: number; fileName: string },
  source?: WasmSource,
): Promise<Outcome<Uint8Array>> {
  const settled = settleSolid(scan, options);
  if (!settled.ok) return settled;
  const { solid } = settled.value;
  if (solid.soup !== undefined) return bad('NOT_CLOSED', { part: 'offsets' });
  const { offsetMm } = options;
  const voxel = voxelFor(solid, [offsetMm], options);
  if (!voxel.ok) return voxel;
  const { voxelMm } = voxel.value;
  const field = buildField(solid.chain, solid.bounds, {
    voxelMm,
    // The grid of the facets reaches two of their edges beyond the level.
    levelsMm: [offsetMm, Math.max(0, offsetMm) + 5 * voxelMm],
    ...(options.crew === undefined ? {} : { crew: options.crew }),
    ...(options.shouldStop === undefined ? {} : { shouldStop: options.shouldStop }),
  });
  if (!field.ok) return field;
  const { bounds } = solid;
  return surfaceFile(
    {
      distanceAtMm: distanceFunction(field.value),
      bounds,
      levelMm: offsetMm,
      edgeMm: Math.max(2 * voxelMm, finestEdgeMm({ bounds, levelMm: offsetMm })),
      simplifyMm: SIMPLIFY_SHARE * voxelMm,
      fileName: options.fileName,
    },
    source,
  );
}
