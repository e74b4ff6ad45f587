import { expect, test } from 'vitest';
import type { TriangleMesh } from '../../../src/geometry';
import { flatCeilings, type FlatCeilings } from '../../../src/geometry/features/ceilings';
import { pourColumns } from '../../../src/geometry/features/pourColumns';
import { expectClose } from '../../support/close';
import { joined } from '../../support/meshTools';
import { ballOn } from '../../support/moldShapes';
import { DEGREES, mouthOf, pourTurned, turnAbout, turnedBy, UP, type Pour } from '../../support/pours';
import { box, type Vec3 } from '../../support/shapes';

const ceilingsOf = (body: TriangleMesh, pour: Pour): FlatCeilings =>
  flatCeilings(pourColumns(body, pour.up ?? UP, pour.stepMm ?? 1), mouthOf(body, pour));

const BLOCK = box([100, 60, 40]);
const LID: Pour = { atMm: [50, 30, 40], diameterMm: 30 };
const LID_MM2 = 100 * 60 - Math.PI * 225;

test('A lid within ten degrees of level is told, the opening left out; a steeper one is not', () => {
  for (const [axis, tilt] of [
    [[1, 0, 0], 0],
    [[1, 0, 0], 9],
    [[1, 2, 0], 9],
    [[0, 1, 0], 9.9],
  ] as const) {
    const { areaMm2, largest } = ceilingsOf(BLOCK, { ...LID, up: turnAbout(axis as Vec3, tilt)(UP) });
    // Seen from above; along the lid it is more by 1 / cos, 1.5 % at the most.
    expectClose(areaMm2, LID_MM2 * Math.cos(tilt * DEGREES), 0.02, `${tilt} degrees`);
    expect(largest!.areaMm2).toBe(areaMm2);
  }
  for (const tilt of [10.1, 11, 45])
    expect(ceilingsOf(BLOCK, { ...LID, up: turnAbout([1, 2, 0], tilt)(UP) })).toEqual({
      areaMm2: 0,
      largest: undefined,
    });
});

test('The floor and the sides are no ceilings, and neither is what looks down', () => {
  const onSide = ceilingsOf(BLOCK, { atMm: [100, 30, 20], diameterMm: 10, up: [1, 0, 0] });
  expectClose(onSide.areaMm2, 60 * 40 - Math.PI * 25, 0.02, 'the side that is up now');
});

test('Two flat lids at different heights are two, and the larger is named', () => {
  const body = joined(box([60, 60, 40]), box([50, 40, 20], [50, 0, 0]));
  const { areaMm2, largest } = ceilingsOf(body, { atMm: [30, 30, 40], diameterMm: 20 });
  expectClose(areaMm2, 60 * 60 - Math.PI * 100 + 40 * 40, 0.02, 'both');
  expectClose(largest!.areaMm2, 60 * 60 - Math.PI * 100, 0.02, 'the larger');
  expect(largest!.atMm[2]).toBeCloseTo(40, 9);
});

test('A patch smaller than 1 cm2 is a summit, not a ceiling', () => {
  const post = joined(BLOCK, box([9, 9, 30], [70, 20, 35]));
  const { areaMm2 } = ceilingsOf(post, LID);
  expectClose(areaMm2, LID_MM2 - 81, 0.02, 'the lid only');
});

test('The crown of a ball within ten degrees of level is told as what it is: a disc of radius R sin 10', () => {
  for (const radius of [50, 100]) {
    const ball = turnedBy(ballOn(radius), ([x, y, z]) => [x, y, z - radius]);
    const { areaMm2 } = ceilingsOf(ball, {
      atMm: [radius, 0, 0],
      diameterMm: 10,
      normal: [1, 0, 0],
      stepMm: radius / 100,
    });
    const disc = Math.PI * (radius * Math.sin(10 * DEGREES)) ** 2;
    // Facets are 1.4 degrees high: the rim of the disc is told by whole facets.
    expectClose(areaMm2, disc, 0.16, `ball of ${radius}`);
  }
});

test('Poses of body and up together, and steps, tell the same area', () => {
  for (const [axis, degrees] of [
    [[1, 1, 0], 30],
    [[0, 1, 0], 90],
    [[0.2, 0.1, 1], 160],
  ] as const)
    for (const stepMm of [1, 2]) {
      const turn = turnAbout(axis, degrees);
      const { areaMm2 } = ceilingsOf(turnedBy(BLOCK, turn), { ...pourTurned(LID, turn), stepMm });
      expectClose(areaMm2, LID_MM2, 0.03, `${degrees} degrees, ${stepMm} mm`);
    }
});
