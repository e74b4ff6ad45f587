import { expect, test } from 'vitest';
import { findAirTraps } from '../../../src/geometry/features/airTraps';
import { openRuns } from '../../../src/geometry/features/openRuns';
import { pourColumns } from '../../../src/geometry/features/pourColumns';
import { planeFrame } from '../../../src/geometry/measure/planeFrame';
import { carvedBlock, cellSolid, randomBoxes, withoutEdgeContacts } from '../../support/boxSolids';
import { direction, upTo } from '../../support/draws';
import { lcg } from '../../support/lcg';
import { scaled } from '../../support/meshTools';
import { floodTilted } from '../../support/tiltedFlood';
import type { Vec3 } from '../../support/shapes';

/** Cells of 10 mm. */
const [SIZE, CELL] = [6, 10];
const CASES = 16;

test('Air shut in along any up agrees with a flood of upright voxels', () => {
  let all = 0;
  for (let seed = 1; seed <= CASES; seed++) {
    const random = lcg(seed);
    const count = upTo(random, 3, 10);
    const boxes = seed % 2 === 0 ? randomBoxes(random, SIZE, count) : carvedBlock(random, SIZE, count);
    const solid = withoutEdgeContacts(cellSolid(SIZE, boxes));
    const up = direction(random);
    // A vent in a random roof, and the level it opens at: the voxels within one of it.
    const cell = roofCell(solid.isFull, up, random);
    const atMm = cell.map((c) => CELL * c) as unknown as Vec3;
    const pour = pourColumns(scaled(solid.mesh, CELL), up, 1);
    const open = openRuns(pour.columns, pour.body.axes, { mouth: undefined, vents: [{ atMm }] });
    expect(open.run.length, `seed ${seed}`).toBeGreaterThan(0);
    const { trappedMm3, apart } = findAirTraps(pour, open, { leastMm3: 1000 });
    const told = trappedMm3 + apart.reduce((sum, { volumeMm3 }) => sum + volumeMm3, 0);
    const { u, v, n } = planeFrame(up);
    const half = (SIZE * CELL) / 2;
    const isInside = ([x, y, z]: Vec3): boolean =>
      solid.isFull(Math.floor(x / CELL), Math.floor(y / CELL), Math.floor(z / CELL));
    const voxelMm = 1.1;
    const frame = {
      axes: { u, v, up: n },
      centerMm: [half, half, half] as Vec3,
      halfMm: 0.9 * SIZE * CELL,
      voxelMm,
    };
    const level = atMm[0] * n[0] + atMm[1] * n[1] + atMm[2] * n[2];
    const flood = floodTilted(isInside, frame, (p) => {
      const aside = Math.hypot(p[0] - atMm[0], p[1] - atMm[1], p[2] - atMm[2]);
      return aside < 2 * voxelMm && p[0] * n[0] + p[1] * n[1] + p[2] * n[2] <= level;
    });
    // A level that is half a voxel off weighs so much over the whole section.
    const slackMm3 = 0.02 * flood.solidMm3;
    expect(Math.abs(told - flood.trappedMm3), `seed ${seed}: ${told} and ${flood.trappedMm3}`).toBeLessThan(
      slackMm3,
    );
    all += flood.trappedMm3 / flood.solidMm3;
  }
  expect(all / CASES).toBeGreaterThan(0.1);
});

/** The middle of a face that looks up, of a random full cell; in cells. */
function roofCell(
  isFull: (x: number, y: number, z: number) => boolean,
  up: Vec3,
  random: () => number,
): number[] {
  const axis = [0, 1, 2].reduce((best, k) => (Math.abs(up[k]!) > Math.abs(up[best]!) ? k : best));
  const step = Math.sign(up[axis]!);
  const roofs: number[][] = [];
  for (let x = 0; x < SIZE; x++)
    for (let y = 0; y < SIZE; y++)
      for (let z = 0; z < SIZE; z++) {
        const next = [x, y, z].map((c, k) => (k === axis ? c + step : c)) as [number, number, number];
        if (isFull(x, y, z) && !isFull(...next))
          roofs.push([x, y, z].map((c, k) => c + 0.5 + (k === axis ? step / 2 : 0)));
      }
  return roofs[upTo(random, 0, roofs.length - 1)]!;
}
