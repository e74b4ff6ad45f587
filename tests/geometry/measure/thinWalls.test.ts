import { describe, expect, it } from 'vitest';
import { boundsOf, thinWalls, type ThinWalls, type TriangleMesh } from '../../../src/geometry';
import { expectClose } from '../../support/close';
import { between, lcg } from '../../support/lcg';
import { joined, reversed, turned } from '../../support/meshTools';
import { box, icosphere, torus } from '../../support/shapes';

const SEED = 21;

const wallsOf = (mesh: TriangleMesh): ThinWalls => thinWalls(mesh, boundsOf(mesh));

/** A turn about the axis (0 x, 1 y, 2 z). */
function tilted(mesh: TriangleMesh, axis: 0 | 1 | 2, degrees: number): TriangleMesh {
  const half = (degrees * Math.PI) / 360;
  const q: [number, number, number, number] = [Math.cos(half), 0, 0, 0];
  q[axis + 1] = Math.sin(half);
  return turned(mesh, q);
}

const PLATE = box([100, 80, 0.4]);

describe('a plate of 0.4 mm', () => {
  it.each([
    ['lying', PLATE],
    ['upright', box([0.4, 80, 100])],
    ['across', box([80, 0.4, 100])],
  ])('%s: its thickness, and the area of one side to a line in ninety-six', (_name, mesh) => {
    const walls = wallsOf(mesh);
    expectClose(walls.thinnestMm!, 0.4, 1e-9);
    const thin = walls.thinnerThan(1);
    expectClose(thin.thinnestMm, 0.4, 1e-9);
    expectClose(thin.areaMm2, 8000, 1 / 96);
  });

  it.each([10, 20, 30, 36])('tilted by %d degrees: its thickness across, not along the line', (degrees) => {
    for (const axis of [0, 1] as const) {
      const walls = wallsOf(tilted(PLATE, axis, degrees));
      expectClose(walls.thinnestMm!, 0.4, 1e-9);
      // The steepest direction alone sees the square of the cosine.
      const seen = Math.cos((degrees * Math.PI) / 180) ** 2 * 8000;
      expect(walls.thinnerThan(1).areaMm2).toBeGreaterThan(0.95 * seen);
      expect(walls.thinnerThan(1).areaMm2).toBeLessThan(1.05 * 8000);
    }
  });

  it('is not thinner than itself', () => {
    expect(wallsOf(PLATE).thinnerThan(0.39)).toEqual({ areaMm2: 0, thinnestMm: Infinity });
  });
});

describe('thin parts of thicker bodies', () => {
  it('the walls of a hollow box of 0.8 mm (six faces of it)', () => {
    const shell = joined(box([40, 40, 40]), reversed(box([38.4, 38.4, 38.4], [0.8, 0.8, 0.8])));
    const thin = wallsOf(shell).thinnerThan(1);
    expectClose(thin.thinnestMm, 0.8, 1e-9);
    expectClose(thin.areaMm2, 6 * 38.4 ** 2, 0.02);
  });

  it('a fin of 0.4 mm on a block', () => {
    const walls = wallsOf(joined(box([60, 60, 30]), box([60, 0.4, 40], [0, 30, 20])));
    expectClose(walls.thinnestMm!, 0.4, 1e-9);
    expectClose(walls.thinnerThan(1).areaMm2, 60 * 30, 0.03);
    expectClose(walls.thinnerThan(100).thinnestMm, 0.4, 1e-9);
  });

  it('a wedge: the thinner, the more of its edge is asked for (similar triangles)', () => {
    const wedge: TriangleMesh = {
      positions: Float64Array.from([0, 0, 0, 60, 0, 0, 60, 0, 6, 0, 40, 0, 60, 40, 0, 60, 40, 6]),
      triangles: Int32Array.from([0, 1, 2, 3, 5, 4, 0, 3, 4, 0, 4, 1, 1, 4, 5, 1, 5, 2, 0, 2, 5, 0, 5, 3]),
    };
    // It is x / 10 thick: below 1 mm a strip 10 mm wide, below 3 mm one of 30 mm.
    for (const mm of [1, 3]) expectClose(wallsOf(wedge).thinnerThan(mm).areaMm2, 400 * mm, 0.05, `${mm} mm`);
  });

  it('a nick below two of a thousand is none', () => {
    const block = joined(
      box([100, 100, 100]),
      box([1, 5, 5], [-0.5, 47, 47]),
      box([0.1, 4, 10], [50, 50, 98]),
    );
    expect(wallsOf(block).thinnerThan(0.5)).toEqual({ areaMm2: 0, thinnestMm: Infinity });
    expect(wallsOf(block).thinnestMm).toBeGreaterThan(90);
  });
});

describe(`thick bodies are clean, seed ${SEED}`, () => {
  it('a box: its shortest side', () => expectClose(wallsOf(box([40, 30, 50])).thinnestMm!, 30, 1e-9));

  it('a ball: nothing near its rim is taken for a wall (chords no flatter than a cosine of 0.8)', () => {
    // A chord at that angle, seen squarely: 2 r cos^2.
    expect(wallsOf(icosphere(30, 5)).thinnestMm).toBeGreaterThan(0.97 * 60 * 0.8 ** 2);
  });

  it('a torus: likewise by its tube', () => {
    expect(wallsOf(torus(30, 10, 90, 45)).thinnestMm).toBeGreaterThan(0.97 * 20 * 0.8 ** 2);
  });

  it.each([0.1, 0.3])('a ball of 0.9 mm facets with %d mm of noise raises no alarm', (mm) => {
    for (let seed = SEED; seed < SEED + 3; seed++) {
      const random = lcg(seed);
      const ball = icosphere(30, 5);
      const rough = { ...ball, positions: ball.positions.map((x) => x + between(random, -mm, mm)) };
      expect(wallsOf(rough).thinnerThan(2), `seed ${seed}`).toEqual({ areaMm2: 0, thinnestMm: Infinity });
      expect(wallsOf(rough).thinnestMm, `seed ${seed}`).toBeGreaterThan(20);
    }
  });
});
