import type { TriangleMesh } from '../triangleMesh';
import { buildField } from './buildField';
import { measureLevels } from './measureLevels';

/**
 * Runs the whole field once on a small ball, so that this thread's code is compiled before a scan is ready: a helper has nothing else to do
 * while the file is read. Returns the volume, mm3, so that the work cannot be left out.
 */
export function rehearse(): number {
  const field = buildField(
    ball(20, 24),
    { min: [-20, -20, -20], max: [20, 20, 20] },
    { voxelMm: 0.8, levelsMm: [3, -3] },
  );
  const levels = field.ok ? measureLevels(field.value, [3, -3]) : field;
  return levels.ok ? levels.value[0]!.volumeMm3 : 0;
}

/** A ball of `rings` rings and twice as many sides. */
function ball(radiusMm: number, rings: number): TriangleMesh {
  const sides = 2 * rings;
  const positions: number[] = [0, 0, radiusMm, 0, 0, -radiusMm];
  const triangles: number[] = [];
  const vertex = (ring: number, side: number): number =>
    ring === 0 ? 0 : ring === rings ? 1 : 2 + (ring - 1) * sides + (side % sides);
  for (let ring = 1; ring < rings; ring++) {
    for (let side = 0; side < sides; side++) {
      const [polar, turn] = [(Math.PI * ring) / rings, (2 * Math.PI * side) / sides];
      positions.push(
        radiusMm * Math.sin(polar) * Math.cos(turn),
        radiusMm * Math.sin(polar) * Math.sin(turn),
        radiusMm * Math.cos(polar),
      );
    }
  }
  for (let ring = 0; ring < rings; ring++) {
    for (let side = 0; side < sides; side++) {
      const [a, b, c, d] = [
        vertex(ring, side),
        vertex(ring + 1, side),
        vertex(ring + 1, side + 1),
        vertex(ring, side + 1),
      ];
      if (ring < rings - 1) triangles.push(a, b, c);
      if (ring > 0) triangles.push(a, c, d);
    }
  }
  return { positions: Float64Array.from(positions), triangles: Int32Array.from(triangles) };
}
