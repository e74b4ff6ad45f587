import { expect, test } from 'vitest';
import type { TriangleMesh } from '../../../src/geometry';
import { liquidHeldMm3 } from '../../../src/geometry/features/liquidHeld';
import { pourColumns } from '../../../src/geometry/features/pourColumns';
import { expectClose } from '../../support/close';
import { expectPrinted } from '../../support/printed';
import { joined, moved } from '../../support/meshTools';
import { ballMm3, ballOn, capMm3, cylinderOn } from '../../support/moldShapes';
import { DEGREES, mouthOf, pourTurned, turnAbout, turnedBy, UP, type Pour } from '../../support/pours';
import { box, type Vec3 } from '../../support/shapes';

const heldIn = (body: TriangleMesh, pour: Pour): number =>
  liquidHeldMm3(pourColumns(body, pour.up ?? UP, pour.stepMm ?? 1), mouthOf(body, pour));

/**
 * What a tilted cylinder holds under the level plane through the lowest point of its hole: full, less what the plane leaves out under the lid. From the hole's
 * low edge (h from the axis) up the slope that is the tangent times the moment of the part of the circle beyond: h S + 2/3 (r2 - h2)^1.5, S its area.
 */
function heldByCylinderMm3(radius: number, tall: number, hole: number, tilt: number): number {
  const beyond =
    radius ** 2 * (Math.PI - Math.acos(hole / radius)) + hole * Math.sqrt(radius ** 2 - hole ** 2);
  const moment = hole * beyond + (2 / 3) * (radius ** 2 - hole ** 2) ** 1.5;
  return Math.PI * radius ** 2 * tall - Math.tan(tilt * DEGREES) * moment;
}

test('A tilted cylinder holds what lies under the lowest point of its hole', () => {
  const can = cylinderOn(20, 80);
  for (const [tilt, printedCm3] of [
    [0, '100.53'],
    [15, '96.89'],
    [30, '92.69'],
    [45, '86.96'],
  ] as const) {
    const expected = heldByCylinderMm3(20, 80, 10, tilt);
    expectPrinted(expected / 1000, printedCm3);
    for (const about of [0, 20, 45, 130]) {
      const lean: Vec3 = [Math.cos(about * DEGREES), Math.sin(about * DEGREES), 0];
      const up = turnAbout(lean, tilt)(UP);
      const held = heldIn(can, { atMm: [0, 0, 80], diameterMm: 20, up });
      expectClose(held, expected, 0.006, `${tilt} degrees about ${about}`);
    }
  }
});

test('Poses of body and up together change nothing, and steps agree', () => {
  const can = cylinderOn(20, 80);
  const pour: Pour = { atMm: [0, 0, 80], diameterMm: 20, up: turnAbout([1, 0, 0], 30)(UP) };
  for (const stepMm of [0.5, 1, 2])
    for (const turn of [turnAbout([1, 2, 0], 50), turnAbout([0, 1, 0], 180)])
      expectClose(
        heldIn(turnedBy(can, turn), { ...pourTurned(pour, turn), stepMm }),
        heldByCylinderMm3(20, 80, 10, 30),
        0.01,
        `${stepMm} mm`,
      );
});

/** Two basins 40 wide and 60 long side by side, 40 deep, joined over a ridge `ridge` high. */
const twoBasins = (ridge: number): TriangleMesh =>
  joined(box([40, 60, 50]), box([40, 60, 50], [50, 0, 0]), box([30, 60, 50 - ridge], [30, 0, ridge]));

test('Behind a ridge over the brim nothing is held, below it both basins are one', () => {
  // In the lid of the left one a chimney would be the opening; here it is a hole in its side, its lowest point at 25 mm.
  const pour: Pour = { atMm: [20, 0, 30], diameterMm: 10, normal: [0, -1, 0] };
  expectClose(heldIn(twoBasins(26), pour), 40 * 60 * 25, 0.02, 'left basin only');
  expectClose(heldIn(twoBasins(20), pour), 90 * 60 * 25 - 10 * 60 * 20, 0.02, 'both');
});

test('A hole that leads to nothing lower holds nothing', () => {
  const body = box([60, 60, 40]);
  expect(heldIn(body, { atMm: [30, 30, 0], diameterMm: 20, normal: [0, 0, -1] })).toBe(0);
});

test('A ball with its hole at the top holds all but the cap over the brim', () => {
  const ball = moved(ballOn(50), [0, 0, -50]);
  for (const diameterMm of [20, 40, 60]) {
    const brim = Math.sqrt(2500 - diameterMm ** 2 / 4);
    const held = heldIn(ball, { atMm: [0, 0, 50], diameterMm });
    expectClose(held, ballMm3(50) - capMm3(50, 50 - brim), 0.006, `${diameterMm} mm`);
  }
});

test('A side chamber whose ceiling lies below the brim keeps its air: it does not hold liquid', () => {
  // A shaft, and a chamber 40 x 40 x 40 beside it joined by a passage 10 high at its floor: a liquid level shuts it at 10 mm.
  const body = joined(box([40, 40, 80]), box([40, 40, 40], [50, 0, 0]), box([30, 40, 10], [30, 0, 0]));
  const held = heldIn(body, { atMm: [20, 20, 80], diameterMm: 20 });
  const shaft = 40 * 40 * 80;
  const passage = 50 * 40 * 10;
  expectClose(held, shaft + passage, 0.01, 'shaft and passage');
});
