import type { TriangleMesh } from '../../src/geometry';
import { between, lcg } from './lcg';

/**
 * A table top of 300 x 300 mm about z = 0 as a scanner sees it: one side, 5 mm squares, every corner up or down by as much as
 * `roughMm` (0.25 mm is common practice, no source).
 */
export function roughTable(seed: number, roughMm = 0.25): TriangleMesh {
  const [cells, sizeMm] = [60, 300];
  const random = lcg(seed);
  const row = cells + 1;
  const positions = new Float64Array(3 * row * row);
  for (let i = 0; i < row * row; i++) {
    positions[3 * i] = (sizeMm * (i % row)) / cells - sizeMm / 2;
    positions[3 * i + 1] = (sizeMm * Math.floor(i / row)) / cells - sizeMm / 2;
    positions[3 * i + 2] = between(random, -roughMm, roughMm);
  }
  const triangles: number[] = [];
  for (let y = 0; y < cells; y++) {
    for (let x = 0; x < cells; x++) {
      const a = y * row + x;
      triangles.push(a, a + 1, a + row + 1, a, a + row + 1, a + row);
    }
  }
  return { positions, triangles: Int32Array.from(triangles) };
}
