import type { ScanFile, TriangleMesh } from '../../src/geometry';
import {
  openMoldBench,
  planMold,
  type Mold,
  type MoldAsk,
  type MoldBench,
  type SizeOptions,
} from '../../src/plan';
import { valueOf } from './outcome';

/** A mesh as if a reader had read it: in mm, nothing rounded. */
export const scanOf = (mesh: TriangleMesh): ScanFile => ({
  mesh,
  format: 'stl',
  trianglesRead: mesh.triangles.length / 3,
  coordinateStep: 0,
  findings: [],
});

/** A bench of its own, with nothing in memory yet. */
export const benchOf = (mesh: TriangleMesh, options: SizeOptions = {}): MoldBench =>
  valueOf(openMoldBench(scanOf(mesh), { fileUnit: 'mm', voxelMm: 2, ...options })).bench;

export const moldOn = (bench: MoldBench, ask: MoldAsk): Mold => valueOf(planMold(bench, ask));
