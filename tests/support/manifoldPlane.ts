import Module from 'manifold-3d';
import type { CrossSection } from 'manifold-3d';
import type { TriangleMesh } from '../../src/geometry';

/**
 * Second opinion on plane figures of closed solids: level sections and shadows along z of the union of some meshes, by the Manifold
 * library (Lalish and others). It takes vertices as float32, so meshes handed to it should be float32 already.
 */
const wasm = await Module();
wasm.setup();

export interface PlaneFigures {
  area: number;
  /** Perimeter of the convex hull. */
  girth: number;
}

export const sliceByManifold = (meshes: readonly TriangleMesh[], z: number): PlaneFigures =>
  figuresOf(meshes, (solid) => solid.slice(z));

export const shadowByManifold = (...meshes: readonly TriangleMesh[]): PlaneFigures =>
  figuresOf(meshes, (solid) => solid.project());

type Solid = InstanceType<typeof wasm.Manifold>;

function figuresOf(meshes: readonly TriangleMesh[], flatten: (solid: Solid) => CrossSection): PlaneFigures {
  const solids = meshes.map(solidOf);
  const union = wasm.Manifold.union(solids);
  const flat = flatten(union);
  const hull = flat.hull();
  const figures = { area: flat.area(), girth: perimeterOf(hull.toPolygons()) };
  for (const made of [...solids, union, flat, hull]) made.delete();
  return figures;
}

function solidOf(mesh: TriangleMesh): Solid {
  const solid = new wasm.Manifold(
    new wasm.Mesh({
      numProp: 3,
      vertProperties: Float32Array.from(mesh.positions),
      triVerts: Uint32Array.from(mesh.triangles),
    }),
  );
  if (solid.status() !== 'NoError') throw new Error(String(solid.status()));
  return solid;
}

const perimeterOf = (polygons: readonly (readonly (readonly [number, number])[])[]): number =>
  polygons.reduce(
    (sum, ring) =>
      sum + ring.reduce((length, point, i) => length + gap(point, ring[(i + 1) % ring.length]!), 0),
    0,
  );

const gap = (a: readonly [number, number], b: readonly [number, number]): number =>
  Math.hypot(a[0] - b[0], a[1] - b[1]);
