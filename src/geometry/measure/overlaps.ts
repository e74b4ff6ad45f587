import { boundsOf, type Bounds, type TriangleMesh } from '../triangleMesh';
import { localOrigin } from './divergence';
import { windingAlongLines, type WindingSums } from './windingLines';

/** Lines across for the overlap watch (cells of 1 % of the size) and, once something is found, for its volume. */
const WATCH_LINES = 96;
const FINE_LINES = 640;

/**
 * Looks along all three axes, since a flat overlap can slip between lines that run along it; then measures what was found with
 * many more lines, the mesh turned askew: a face parallel to the lattice would fall in or out of it as a whole.
 */
export function watchOverlaps(mesh: TriangleMesh, bounds: Bounds, plainSumMm3: number): WindingSums {
  const watch = ([0, 1, 2] as const).map((axis) =>
    windingAlongLines(mesh, bounds, { axis, across: WATCH_LINES }),
  );
  const found = watch.find((sums) => sums.doubledMm3 - sums.negativeMm3 > 1e-9 * Math.abs(plainSumMm3));
  if (found === undefined) return watch[0]!;
  const askew = turnAskew(mesh);
  return windingAlongLines(askew, boundsOf(askew), { axis: 0, across: FINE_LINES });
}

/** Two turns by angles that no modeler uses, about the center of the bounds. */
function turnAskew({ positions: p, triangles }: TriangleMesh): TriangleMesh {
  const [s1, c1, s2, c2] = [Math.sin(0.37), Math.cos(0.37), Math.sin(0.59), Math.cos(0.59)];
  const origin = localOrigin({ positions: p, triangles });
  const turned = new Float64Array(p.length);
  for (let i = 0; i < p.length; i += 3) {
    const x = p[i]! - origin[0],
      y = p[i + 1]! - origin[1],
      z = p[i + 2]! - origin[2];
    const x1 = c1 * x - s1 * y,
      y1 = s1 * x + c1 * y;
    turned[i] = c2 * x1 + s2 * z;
    turned[i + 1] = y1;
    turned[i + 2] = c2 * z - s2 * x1;
  }
  return { positions: turned, triangles };
}
