import { buildField, distanceFunction, type ScanFile } from '../geometry';
import { finestEdgeMm, SolidsOutOfMemory, surfaceFile, type WasmSource } from '../geometry/solids';
import { bad, type Outcome } from '../problem';
import { voxelFor } from './offsets';
import { settleSolid } from './settleSolid';
import type { SizeOptions } from './sizeOptions';

/** Facets may move by this share of a voxel, so that flat stretches need few of them. Chosen here. */
const SIMPLIFY_SHARE = 0.05;

/** So often it is tried again with facets twice as long, which take an eighth of the memory. Chosen here. */
const COARSER_TRIES = 3;

/**
 * The surface of the body grown (or, negative, shrunk) by one distance, as the bytes of a mesh file whose name says the format: for a
 * printer, or to look at. Facets are about two voxels long; the volume that `sizeScan` gives is the better one. Where there is not enough
 * memory for that, `onCoarser` is asked for leave by being given: the surface then has longer facets, and it is told how long. Without it
 * the call rejects with SolidsOutOfMemory.
 * Errors: those of `settleSolid`, `chooseVoxel`, `buildField` and `surfaceFile`; NOT_CLOSED (part `offsets`) for a scan whose
 * facets do not join.
 */
export async function offsetSurface(
  scan: ScanFile,
  options: SizeOptions & { offsetMm: number; fileName: string; onCoarser?: (edgeMm: number) => void },
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
  const distanceAtMm = distanceFunction(field.value);
  const finestMm = Math.max(2 * voxelMm, finestEdgeMm({ bounds, levelMm: offsetMm }));
  const { fileName, onCoarser } = options;
  const withEdge = (edgeMm: number): Promise<Outcome<Uint8Array>> =>
    surfaceFile(
      {
        distanceAtMm,
        bounds,
        levelMm: offsetMm,
        edgeMm,
        simplifyMm: SIMPLIFY_SHARE * voxelMm * (edgeMm / finestMm),
        fileName,
      },
      source,
    );
  for (let tries = 0; ; tries++) {
    const edgeMm = finestMm * 2 ** tries;
    try {
      const surface = await withEdge(edgeMm);
      if (tries > 0 && surface.ok) onCoarser?.(edgeMm);
      return surface;
    } catch (fault) {
      const mayBeCoarser = onCoarser !== undefined && tries < COARSER_TRIES;
      if (!(fault instanceof SolidsOutOfMemory) || !mayBeCoarser) throw fault;
    }
  }
}
