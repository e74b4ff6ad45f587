import type { Outcome } from '../../problem';
import type { TriangleMesh } from '../triangleMesh';
import { withManifold } from './manifold';
import type { Solid } from './solid';
import { solidIn } from './solidIn';
import type { WasmSource } from './wasmSource';

/**
 * Takes a mesh in mm as a solid, unchanged, if Manifold accepts it (every edge shared by two facets that agree).
 * Errors: NOT_CLOSED, NON_MANIFOLD, NOT_ORIENTED, INSIDE_OUT, ZERO_VOLUME.
 */
export function makeSolid(mesh: TriangleMesh, source?: WasmSource): Promise<Outcome<Solid>> {
  return withManifold((scope) => solidIn(scope, mesh), source);
}
