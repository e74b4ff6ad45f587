import { expect, test } from 'vitest';
import type { TriangleMesh } from '../../../src/geometry';
import { findAirTraps, type AirTraps } from '../../../src/geometry/features/airTraps';
import { columnsAroundSculpt, openToSky } from '../../../src/geometry/features/pourColumns';
import { expectClose } from '../../support/close';
import { joined, moved } from '../../support/meshTools';
import { ballOn, turnedBody } from '../../support/moldShapes';
import { DEGREES, turnAbout, turnedBy } from '../../support/pours';
import { box, type Vec3 } from '../../support/shapes';

const siliconeOn = (body: TriangleMesh, boardMm: number, stepMm = 1, leastMm3 = 1000): AirTraps => {
  const around = columnsAroundSculpt(body, { boardMm, stepMm });
  return findAirTraps(around, openToSky(around), { leastMm3 });
};

const lowest = ({ positions }: TriangleMesh): number =>
  positions.reduce((low, z, i) => (i % 3 === 2 ? Math.min(low, z) : low), Infinity);

/** A cup mouth down, 5 mm thick: 20 wide to the side, 30 deep. */
const CUP = turnedBody([
  [0, 30],
  [20, 30],
  [20, 0],
  [25, 0],
  [25, 35],
  [0, 35],
]);

test('A cup mouth down over the board keeps 37.70 mL of air', () => {
  for (const over of [2, 10]) {
    const { traps, apart } = siliconeOn(moved(CUP, [3.3, 1.7, over]), 0);
    expect(apart).toEqual([]);
    expect(traps).toHaveLength(1);
    expectClose(traps[0]!.volumeMm3, Math.PI * 400 * 30, 0.006, `rim ${over} mm over the board`);
    expectClose(traps[0]!.riseMm, 30, 0.001, 'rise');
  }
});

/**
 * Tilted, a cup keeps what lies over the level plane through the highest point of its rim. Over the rim the plane rises from 0 on the high side to the width times
 * the tangent on the low side: half of that is cut off, pi r2 times r tan(tilt), while it stays below the bottom.
 */
test('Tilted by 17 degrees it keeps 30.02 mL', () => {
  const expected = Math.PI * 400 * (30 - 20 * Math.tan(17 * DEGREES));
  expect(expected / 1000).toBeCloseTo(30.02, 2);
  for (const about of [0, 33, 90]) {
    const lean: Vec3 = [Math.cos(about * DEGREES), Math.sin(about * DEGREES), 0];
    const body = turnedBy(CUP, turnAbout(lean, 17));
    const { traps } = siliconeOn(moved(body, [0, 0, 5 - lowest(body)]), 0);
    expect(traps).toHaveLength(1);
    expectClose(traps[0]!.volumeMm3, expected, 0.006, `about ${about}`);
  }
});

test('A chin that overhangs, and a ball on its post, keep nothing', () => {
  const chin = joined(box([60, 60, 60]), box([30, 40, 20], [55, 10, 40]));
  expect(siliconeOn(chin, 0).trappedMm3).toBeLessThan(20);
  const slanted = turnedBy(box([60, 40, 20]), turnAbout([0, 1, 0], -25));
  const nose = joined(box([40, 60, 80], [-40, -10, 0]), moved(slanted, [-5, 0, 40]));
  expect(siliconeOn(nose, 0).trappedMm3).toBeLessThan(20);
  const ball = joined(moved(ballOn(30), [0, 0, 20]), box([10, 10, 30], [-5, -5, 0]));
  expect(siliconeOn(ball, 0).trappedMm3).toBeLessThan(20);
});

test('A cave that slopes up into the sculpt keeps its upper end only over the lip of its mouth', () => {
  // A block with a cave from its side: 20 x 20 mouth, ceiling 10 mm higher inside than the mouth's upper edge.
  const block = joined(
    box([80, 60, 10]),
    box([80, 20, 60]),
    box([80, 20, 60], [0, 40, 0]),
    box([20, 60, 60]),
    box([80, 60, 15], [0, 0, 45]),
    box([30, 60, 25], [50, 0, 35]),
  );
  // Inside x 20..50 reaches up to 45, from 50 on to 35: 30 x 20 x 10 over the lip.
  const { traps } = siliconeOn(block, 0);
  expect(traps).toHaveLength(1);
  expectClose(traps[0]!.volumeMm3, 6000, 0.01, 'the end of the cave');
});
