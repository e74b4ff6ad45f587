import { OBJLoader, STLLoader } from 'three-stdlib';
import type { BufferGeometry, Mesh } from 'three';
import { describe, expect, it } from 'vitest';
import { boundsOf, divergenceVolume, triangleCount, type TriangleMesh } from '../../../src/geometry';
import { expectClose } from '../../support/close';
import { asFloat32 } from '../../support/meshTools';
import { sampleBytes, sampleScan, TRUTH } from '../../support/samples';

/** The loaders of three-stdlib, which share no code with ours: triangle count, bounds and signed volume of each file. */
function byThree(file: string): BufferGeometry {
  const bytes = sampleBytes(file);
  if (file.endsWith('.stl'))
    return new STLLoader().parse(
      bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.length) as ArrayBuffer,
    );
  return (new OBJLoader().parse(new TextDecoder().decode(bytes)).children[0] as Mesh).geometry;
}

const soupOf = (geometry: BufferGeometry): TriangleMesh => {
  const { array, count } = geometry.getAttribute('position');
  return { positions: Float64Array.from(array), triangles: Int32Array.from({ length: count }, (_, i) => i) };
};

describe('three-stdlib reads the same triangles from every sample file', () => {
  it.each(TRUTH.map((t) => t.file))('%s', (file) => {
    const [ours, theirs] = [sampleScan(file).mesh, soupOf(byThree(file))];
    expect(triangleCount(ours)).toBe(triangleCount(theirs));
    // Both hold float32 values, or short decimals that float32 rounds: 6e-8.
    const [a, b] = [boundsOf(ours), boundsOf(theirs)];
    for (const end of ['min', 'max'] as const)
      a[end].forEach((x, k) => expect(Math.abs(x - b[end][k]!)).toBeLessThanOrEqual(6e-8 * Math.abs(x)));
    // The loaders keep float32, and ours keeps what a text file says: rounded alike, the sums must agree.
    expectClose(
      divergenceVolume(asFloat32(ours)),
      divergenceVolume(theirs),
      1e-9,
      'signed volume about the same middle',
    );
  });

  it('corner by corner, in file order, on the troll scan', () => {
    const [ours, theirs] = [sampleScan('quay-troll-scan.stl').mesh, soupOf(byThree('quay-troll-scan.stl'))];
    for (let c = 0; c < ours.triangles.length; c++) {
      for (let k = 0; k < 3; k++)
        if (ours.positions[3 * ours.triangles[c]! + k] !== theirs.positions[3 * c + k])
          throw new Error(`corner ${c} differs`);
    }
    expect(ours.triangles.length).toBe(theirs.triangles.length);
  });
});
