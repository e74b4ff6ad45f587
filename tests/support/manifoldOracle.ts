import Module from 'manifold-3d';
import type { Manifold } from 'manifold-3d';
import type { TriangleMesh } from '../../src/geometry';

/**
 * Second opinion on closed solids: the Manifold library (Lalish and others), an independent program. It takes vertices as
 * float32, so meshes handed to it should be float32 already. An open or tangled mesh throws there.
 */
const wasm = await Module();
wasm.setup();

export interface SecondOpinion {
  volume: number;
  area: number;
  pieces: number;
}

export function byManifold(mesh: TriangleMesh): SecondOpinion {
  return freed(solidOf(mesh), opinionOf);
}

/** The union of two closed meshes: its measures, and its surface as a mesh of ours. */
export function unionByManifold(a: TriangleMesh, b: TriangleMesh): SecondOpinion & { mesh: TriangleMesh } {
  return freed(solidOf(a), (one) =>
    freed(solidOf(b), (two) =>
      freed(one.add(two), (both) => ({ ...opinionOf(both), mesh: surfaceOf(both) })),
    ),
  );
}

export const rejectedByManifold = (mesh: TriangleMesh): boolean => {
  try {
    byManifold(mesh);
    return false;
  } catch {
    return true;
  }
};

function solidOf(mesh: TriangleMesh): Manifold {
  const gl = new wasm.Mesh({
    numProp: 3,
    vertProperties: Float32Array.from(mesh.positions),
    triVerts: Uint32Array.from(mesh.triangles),
  });
  const solid = new wasm.Manifold(gl);
  const status = solid.status();
  if (status !== 'NoError') {
    solid.delete();
    throw new Error(String(status));
  }
  return solid;
}

function opinionOf(solid: Manifold): SecondOpinion {
  const parts = solid.decompose();
  const pieces = parts.length;
  for (const part of parts) part.delete();
  return { volume: solid.volume(), area: solid.surfaceArea(), pieces };
}

function surfaceOf(solid: Manifold): TriangleMesh {
  const gl = solid.getMesh();
  const positions = new Float64Array(3 * gl.numVert);
  for (let v = 0; v < gl.numVert; v++)
    for (let k = 0; k < 3; k++) positions[3 * v + k] = gl.vertProperties[v * gl.numProp + k]!;
  return { positions, triangles: Int32Array.from(gl.triVerts) };
}

function freed<T>(solid: Manifold, use: (solid: Manifold) => T): T {
  try {
    return use(solid);
  } finally {
    solid.delete();
  }
}
