import { expect, test } from 'vitest';
import type { TriangleMesh } from '../../../src/geometry';
import { expectClose } from '../../support/close';
import { unionByManifold } from '../../support/manifoldOracle';
import { joined } from '../../support/meshTools';
import { ballOn, capMm3, cylinderOn, ring } from '../../support/moldShapes';
import {
  DEGREES,
  pourTurned,
  trapsOf,
  turnAbout,
  turnedBy,
  upperLipMm,
  ventsFor,
  type Pour,
} from '../../support/pours';
import { box, type Vec3 } from '../../support/shapes';

/** Chimneys reach 5 mm down into the box, so that their shells overlap it. */
const chimney = (x: number, y: number): TriangleMesh => box([20, 20, 35], [x, y, 35]);
const BLOCK = box([100, 60, 40]);
const ONE_OPEN = { shells: joined(BLOCK, chimney(10, 20), chimney(70, 20)), at: [20, 30, 70] as Vec3 };
const POUR: Pour = { atMm: ONE_OPEN.at, diameterMm: 12 };

const unionOf = (...parts: readonly TriangleMesh[]): TriangleMesh =>
  parts.reduce((all, part) => unionByManifold(all, part).mesh);

const TURNS: readonly [name: string, axis: Vec3, degrees: number][] = [
  ['as it is', [0, 0, 1], 0],
  ['turned about up', [0, 0, 1], 17],
  ['on its side', [1, 0, 0], 90],
  ['tilted', [1, 2, 0.5], 40],
  ['upside down', [0, 1, 0.2], 180],
];

for (const [name, axis, degrees] of TURNS) {
  const turn = turnAbout(axis, degrees);

  test(`A closed chimney beside the open one keeps its 12.000 mL of air, ${name}`, () => {
    for (const body of [ONE_OPEN.shells, unionOf(BLOCK, chimney(10, 20), chimney(70, 20))]) {
      const { traps, trappedMm3, apart } = trapsOf(turnedBy(body, turn), pourTurned(POUR, turn));
      expect(traps).toHaveLength(1);
      expectClose(traps[0]!.volumeMm3, 12_000, 0.01, 'the chimney');
      expect(Math.abs(traps[0]!.volumeMm3 - 12_000)).toBeLessThanOrEqual(traps[0]!.doubtMm3 + 1e-6);
      expectClose(trappedMm3, 12_000, 0.01, 'all of it');
      expect(traps[0]!.riseMm).toBeCloseTo(30, 6);
      expect(apart).toEqual([]);
    }
  });

  test(`A vent in its lid leaves nothing, ${name}`, () => {
    const body = turnedBy(ONE_OPEN.shells, turn);
    const { vents, leftMm3 } = ventsFor(body, pourTurned(POUR, turn));
    expect(vents).toHaveLength(1);
    expect(leftMm3).toBeLessThan(20);
    const cured = trapsOf(body, { ...pourTurned(POUR, turn), vents: vents.map(({ atMm }) => atMm) });
    expect(cured.trappedMm3).toBeLessThan(20);
  });
}

test('Two closed chimneys on one flat lid are two pockets of 12.000 mL, wherever they stand', () => {
  for (const [openX, one, two] of [
    [10, 40, 70],
    [40, 10, 70],
    [70, 10, 40],
  ] as const)
    for (const degrees of [0, 30, 90, 200]) {
      const turn = turnAbout([0, 0, 1], degrees);
      const body = joined(BLOCK, chimney(openX, 20), chimney(one, 20), chimney(two, 20));
      const pour = pourTurned({ atMm: [openX + 10, 30, 70], diameterMm: 12 }, turn);
      const { traps } = trapsOf(turnedBy(body, turn), pour);
      expect(
        traps.map(({ volumeMm3 }) => Math.round(volumeMm3 / 500)),
        `open at ${openX}, ${degrees}`,
      ).toEqual([24, 24]);
    }
});

/** The opening of a ball turned so far that its upper lip lies `lip` degrees off the vertical. */
function tippedBall(lip: number, diameterMm: number): { body: TriangleMesh; pour: Pour; capMm3: number } {
  const half = Math.asin(diameterMm / 2 / 50) / DEGREES;
  const at = turnAbout([0.6, 0.8, 0], lip + half)([0, 0, 50]);
  const highMm = 50 * (1 - Math.cos(lip * DEGREES));
  return {
    body: turnedBy(ballOn(50), ([x, y, z]) => [x, y, z - 50]),
    pour: { atMm: at, diameterMm },
    capMm3: capMm3(50, highMm),
  };
}

const POSES: readonly [axis: Vec3, degrees: number][] = [
  [[0, 0, 1], 0],
  [[1, 0, 0], 31],
  [[0.3, -1, 0.2], 77],
  [[1, 1, 1], 140],
];

for (const [lip, relative] of [
  [20, 0.03],
  [30, 0.005],
  [45, 0.005],
  [60, 0.005],
] as const)
  test(`A ball whose upper lip lies ${lip} degrees off the top keeps the cap over it, in every pose`, () => {
    for (const diameterMm of [16, 30])
      for (const [axis, degrees] of diameterMm === 16 ? POSES : POSES.slice(1, 2)) {
        const turn = turnAbout(axis, degrees);
        const { body, pour, capMm3: expected } = tippedBall(lip, diameterMm);
        const { traps, trappedMm3 } = trapsOf(
          turnedBy(body, turn),
          pourTurned({ ...pour, leastMm3: 100 }, turn),
        );
        expect(traps).toHaveLength(1);
        expectClose(traps[0]!.volumeMm3, expected, relative, `hole ${diameterMm}, pose ${degrees}`);
        expectClose(trappedMm3, expected, relative, 'all');
        const { leftMm3 } = ventsFor(turnedBy(body, turn), pourTurned({ ...pour, leastMm3: 100 }, turn));
        expect(leftMm3).toBeLessThan(20);
      }
  });

test('What is told beside the cap of a ball covers what it is off by', () => {
  for (const lip of [20, 30, 45, 60])
    for (const [axis, degrees] of POSES) {
      const turn = turnAbout(axis, degrees);
      const { body, pour, capMm3: expected } = tippedBall(lip, 30);
      const { traps } = trapsOf(turnedBy(body, turn), pourTurned({ ...pour, leastMm3: 100 }, turn));
      const { volumeMm3, doubtMm3 } = traps[0]!;
      // The facets themselves are good to 1e-5 of the ball.
      expect(Math.abs(volumeMm3 - expected), `lip ${lip}, pose ${degrees}`).toBeLessThanOrEqual(doubtMm3 + 6);
    }
});

test('A ball tipped by a little keeps a pinhole of 0.09 mL, told to 0.03 mL', () => {
  for (const [axis, degrees] of POSES) {
    const turn = turnAbout(axis, degrees);
    const { body, pour, capMm3: expected } = tippedBall(10, 20);
    const { traps, pinholes } = trapsOf(turnedBy(body, turn), pourTurned(pour, turn));
    expect(traps).toEqual([]);
    expect(pinholes.count).toBe(1);
    expect(Math.abs(pinholes.volumeMm3 - expected)).toBeLessThan(30);
  }
});

/** Part of a circle above a level, by elementary geometry. */
const segmentMm2 = (radius: number, level: number): number =>
  radius ** 2 * Math.acos(level / radius) - level * Math.sqrt(radius ** 2 - level ** 2);

test('A ring that lies flat keeps one ring of air over its opening, and one vent lets all of it out', () => {
  for (const [axis, degrees] of POSES) {
    const turn = turnAbout(axis, degrees);
    const body = turnedBy(ring(50, 12), turn);
    const pour: Pour = pourTurned({ atMm: [62, 0, 0], diameterMm: 10, normal: [1, 0, 0] }, turn);
    const lip = upperLipMm(body, pour);
    expect(lip).toBeCloseTo(5, 2);
    const { traps, apart } = trapsOf(body, pour);
    expect(traps).toHaveLength(1);
    expectClose(traps[0]!.volumeMm3, 2 * Math.PI * 50 * segmentMm2(12, 5), 0.005, `ring, ${degrees}`);
    expect(traps[0]!.riseMm).toBeCloseTo(7, 1);
    expect(apart).toEqual([]);
    const { vents, leftMm3 } = ventsFor(body, pour);
    expect(vents).toHaveLength(1);
    expect(leftMm3).toBeLessThan(20);
  }
});

/** Of an upright ring above a level: chords of the tube times the arc of each circle about the axis that is higher (Simpson's rule). */
function uprightRingAboveMm3(ringRadius: number, tubeRadius: number, level: number): number {
  const steps = 4000;
  let sum = 0;
  for (let i = 0; i <= steps; i++) {
    const angle = (Math.PI * i) / steps;
    const out = ringRadius - tubeRadius * Math.cos(angle);
    const chord = 2 * tubeRadius * Math.sin(angle);
    const arc = out > Math.abs(level) ? Math.PI - 2 * Math.asin(level / out) : level > 0 ? 0 : 2 * Math.PI;
    sum +=
      (i === 0 || i === steps ? 1 : i % 2 === 0 ? 2 : 4) * out * arc * chord * tubeRadius * Math.sin(angle);
  }
  return (sum * Math.PI) / steps / 3;
}

test('An upright ring keeps nothing when it is filled from the top, and all above the hole from the side', () => {
  const upright = turnAbout([1, 0, 0], 90);
  const body = turnedBy(ring(50, 12), upright);
  const top = trapsOf(body, { atMm: [0, 0, 62], diameterMm: 12 });
  expect(top.trappedMm3).toBeLessThan(20);
  const side: Pour = { atMm: [62, 0, 0], diameterMm: 10, normal: [1, 0, 0] };
  const { traps } = trapsOf(body, side);
  expect(traps).toHaveLength(1);
  expectClose(
    traps[0]!.volumeMm3,
    uprightRingAboveMm3(50, 12, upperLipMm(body, side)),
    0.005,
    'upright ring',
  );
  const { vents, leftMm3 } = ventsFor(body, side);
  expect(vents).toHaveLength(1);
  expect(leftMm3).toBeLessThan(20);
});

test('Pieces that nothing reaches are told as such, and no air of theirs is counted', () => {
  const body = joined(BLOCK, box([10, 10, 10], [200, 0, 0]));
  const { traps, apart } = trapsOf(body, { atMm: [50, 30, 40], diameterMm: 30 });
  expect(traps).toEqual([]);
  expect(apart).toHaveLength(1);
  expectClose(apart[0]!.volumeMm3, 1000, 0.1, 'the small box');
});

test('A hole in the underside keeps everything, and a cylinder open over its whole lid keeps nothing', () => {
  const can = cylinderOn(20, 80);
  const under = trapsOf(can, { atMm: [0, 0, 0], diameterMm: 20, normal: [0, 0, -1] });
  expectClose(under.trappedMm3, Math.PI * 400 * 80, 0.01, 'all of the cylinder');
  const open = trapsOf(can, { atMm: [0, 0, 80], diameterMm: 40, normal: [0, 0, 1] });
  expect(open.trappedMm3).toBeLessThan(20);
});
