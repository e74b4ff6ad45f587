/** Solids through Manifold, which is loaded only when one is made. Apart from the other shapes, so that a page without solids is without it. */
export { MESH_WRITERS, writerFor, type MeshWriter } from '../io/writers';
export type { LevelField, LevelOptions } from './levelField';
export { finestEdgeMm } from './levelGrid';
export { levelShell, levelSurface } from './levelSurface';
export { makeSolid } from './makeSolid';
export type { Solid } from './solid';
export { SolidsOutOfMemory } from './solidsOutOfMemory';
export { surfaceFile } from './surfaceFile';
export type { WasmSource } from './wasmSource';
