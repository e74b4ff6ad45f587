import { describe, expect, it } from 'vitest';
import { rimDoubtMm3 } from '../../src/geometry';
import { sizeScan } from '../../src/plan';
import { expectClose } from '../support/close';
import { between, lcg } from '../support/lcg';
import { measured } from '../support/measured';
import { mapPoints } from '../support/meshTools';
import { valueOf } from '../support/outcome';
import { flaredHead, revolve, revolvedVolume, type OutlinePoint } from '../support/shapes';

const SIDES = 96;

/** The head from a height of the neck upward; the closed form adds the flat cut there. */
function headFrom(height: number): { outline: readonly OutlinePoint[]; truth: number } {
  const outline = flaredHead.filter(([, z]) => z >= height);
  return { outline, truth: revolvedVolume(outline, SIDES) };
}

/** The neck cut ragged: every rim vertex up or down by as much as `ragMm`. */
function raggedHead(height: number, ragMm: number, seed: number): ReturnType<typeof revolve> {
  const random = lcg(seed);
  const head = revolve(headFrom(height).outline, SIDES);
  return mapPoints(head, ([x, y, z], v) => [x, y, v < SIDES ? z + between(random, -ragMm, ragMm) : z]);
}

describe('the lower a flaring neck is open, the less is known', () => {
  const HEIGHTS = [60, 40, 20, 5];
  const SEEDS = [11, 12, 13];

  it.each(SEEDS)(
    `heights ${HEIGHTS.join(', ')} mm, rim ragged by 1.5 mm, seed %i: the doubt grows and holds the flat cut (frusta of polygons)`,
    (seed) => {
      let last = 0;
      for (const height of HEIGHTS) {
        const solid = measured(raggedHead(height, 1.5, seed));
        const { truth } = headFrom(height);
        expect(solid.doubt.capsMm3, `doubt at ${height} mm`).toBeGreaterThan(last);
        expect(Math.abs(solid.volumeMm3 - truth), `truth at ${height} mm`).toBeLessThanOrEqual(
          solid.doubt.capsMm3,
        );
        last = solid.doubt.capsMm3;
      }
    },
  );

  it.each(SEEDS)('the same through sizeScan, in cm3 on the range itself, seed %i', (seed) => {
    let last = 0;
    for (const height of HEIGHTS) {
      const mesh = raggedHead(height, 1.5, seed);
      const { volumeCm3, doubts } = valueOf(
        sizeScan(
          { mesh, format: 'stl', trianglesRead: 1, coordinateStep: 0, findings: [] },
          { fileUnit: 'mm' },
        ),
      );
      expect(doubts.caps).toBeGreaterThan(last);
      expectClose(volumeCm3.high - volumeCm3.value, doubts.caps, 1e-12, 'nothing else is in doubt');
      const { truth } = headFrom(height);
      expect(volumeCm3.low <= truth / 1000 && truth / 1000 <= volumeCm3.high).toBe(true);
      last = doubts.caps;
    }
  });

  it('a more ragged rim is more in doubt', () => {
    const doubts = [0, 1, 2, 4].map((rag) => measured(raggedHead(20, rag, 21)).doubt.capsMm3);
    expect([...doubts].sort((a, b) => a - b)).toEqual(doubts);
  });
});

describe('a flat rim', () => {
  it('is closed exactly: frusta of polygons down to the flat cut, and measured as the polygon it is', () => {
    const { outline, truth } = headFrom(5);
    const solid = measured(revolve(outline, SIDES));
    expectClose(solid.volumeMm3, truth, 1e-11, 'volume');
    const [rim] = solid.rims;
    const r = outline[0]![0];
    expectClose(
      rim!.areaMm2,
      (SIDES / 2) * Math.sin((2 * Math.PI) / SIDES) * r * r,
      1e-12,
      'area of a regular polygon',
    );
    expectClose(rim!.lengthMm, 2 * SIDES * r * Math.sin(Math.PI / SIDES), 1e-12, 'its length');
    expect(rim!.flatnessMm).toBeLessThan(1e-12);
    expect(rim!.kind).toBe('hole');
    // A dome of a tenth of the radius, either way: pi a2 h / 2 with h = a / 10 (volume of a shallow paraboloid).
    const a = Math.sqrt(rim!.areaMm2 / Math.PI);
    expectClose(rimDoubtMm3(rim!), (Math.PI * a * a * (a / 10)) / 2, 1e-9, 'doubt');
  });

  it('tilted by a saw cut: still flat, still exact (frustum cut by a plane keeps its volume about the axis)', () => {
    // A tube of constant radius cut by a plane through its axis point: as much goes on one side as comes on the other.
    const tube: OutlinePoint[] = [
      [40, 0],
      [40, 120],
      [0, 120],
    ];
    const tilted = mapPoints(revolve(tube, SIDES), ([x, y, z], v) => [x, y, v < SIDES ? 0.3 * x : z]);
    const solid = measured(tilted);
    expectClose(solid.volumeMm3, revolvedVolume(tube, SIDES), 1e-11, 'volume');
    expect(solid.rims[0]!.flatnessMm).toBeLessThan(1e-12);
  });
});
