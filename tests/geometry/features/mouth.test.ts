import { expect, test } from 'vitest';
import { lipHeights, mouthOn } from '../../../src/geometry/features/mouth';
import { openRuns, runsInMouth } from '../../../src/geometry/features/openRuns';
import { pourColumns } from '../../../src/geometry/features/pourColumns';
import { dot } from '../../../src/geometry/vector';
import { direction } from '../../support/draws';
import { between, lcg } from '../../support/lcg';
import { joined, mapPoints, moved, reversed } from '../../support/meshTools';
import { ballOn } from '../../support/moldShapes';
import { trapsOf, turnAbout, turnedBy, UP } from '../../support/pours';
import { box, icosphere, type Vec3 } from '../../support/shapes';

const BALL = moved(ballOn(50), [0, 0, -50]);

test('The rim of a hole in a ball lies on the ball, as high as the circle it is', () => {
  for (let seed = 1; seed <= 20; seed++) {
    const random = lcg(seed);
    const normal = direction(random);
    const diameterMm = between(random, 8, 60);
    const awayMm = between(random, -3, 3);
    const atMm = normal.map((x) => (50 + awayMm) * x) as unknown as Vec3;
    const mouth = mouthOn(BALL, { atMm, diameterMm, normal });
    expect(mouth.lipMissed, `seed ${seed}`).toBe(0);
    expect(Math.abs(mouth.movedMm - Math.abs(awayMm)), `seed ${seed}`).toBeLessThan(0.02);
    for (const point of mouth.lip)
      expect(Math.abs(Math.hypot(...point) - 50), `seed ${seed}`).toBeLessThan(0.02);
    // A circle about the normal, `deep` along it: its highest point is up there by its radius times the sine.
    const up = turnAbout([1, 1, 0], 20)(direction(random));
    const deep = Math.sqrt(2500 - diameterMm ** 2 / 4);
    const sine = Math.sqrt(1 - dot(up, normal) ** 2);
    const { highMm, lowMm } = lipHeights(mouth, up);
    expect(Math.abs(highMm - deep * dot(up, normal) - (diameterMm / 2) * sine), `seed ${seed}`).toBeLessThan(
      0.05,
    );
    expect(Math.abs(lowMm - deep * dot(up, normal) + (diameterMm / 2) * sine), `seed ${seed}`).toBeLessThan(
      0.05,
    );
  }
});

test('Without a direction it faces as the surface does around it, also on a rough scan', () => {
  for (const noiseMm of [0, 0.3, 1])
    for (let seed = 1; seed <= 6; seed++) {
      const random = lcg(seed);
      const rough = mapPoints(
        icosphere(50, 5),
        (p) => p.map((x) => x + between(random, -noiseMm, noiseMm)) as unknown as Vec3,
      );
      const normal = direction(random);
      const mouth = mouthOn(rough, { atMm: normal.map((x) => 50 * x) as unknown as Vec3, diameterMm: 24 });
      const off = (Math.acos(Math.min(1, dot(mouth.normal, normal))) * 180) / Math.PI;
      expect(off, `noise ${noiseMm}, seed ${seed}`).toBeLessThan(noiseMm === 0 ? 1 : 6);
      expect(Math.hypot(...mouth.normal)).toBeCloseTo(1, 9);
    }
});

test('A hole at an edge, or wider than its face, says how much of its rim is in the air', () => {
  const block = box([100, 60, 40]);
  const middle = mouthOn(block, { atMm: [50, 30, 40], diameterMm: 40 });
  expect(middle.lipMissed).toBe(0);
  // Half of the rim is beyond the edge: its lines along the hole miss the block.
  const edge = mouthOn(block, { atMm: [100, 30, 40], diameterMm: 20, normal: UP });
  expect(Math.abs(edge.lipMissed / edge.lip.length - 0.5)).toBeLessThan(0.03);
  const wide = mouthOn(block, { atMm: [50, 30, 40], diameterMm: 70 });
  // A circle of 35 over a face of 60: beyond |y| > 30 lie 4 acos(30 / 35) of its 2 pi.
  expect(Math.abs(wide.lipMissed / wide.lip.length - (2 * Math.acos(30 / 35)) / Math.PI)).toBeLessThan(0.03);
  for (const { lip } of [edge, wide]) for (const p of lip) expect(p.every(Number.isFinite)).toBe(true);
});

test('A point far off is moved onto the surface, and how far is told', () => {
  const block = box([100, 60, 40]);
  const mouth = mouthOn(block, { atMm: [50, 30, 90], diameterMm: 10 });
  expect(mouth.atMm).toEqual([50, 30, 40]);
  expect(mouth.movedMm).toBeCloseTo(50, 4);
  expect(mouth.normal).toEqual([0, 0, 1]);
  const inside = mouthOn(block, { atMm: [50, 30, 5], diameterMm: 10 });
  expect(inside.normal).toEqual([0, 0, -1]);
});

test('A hole in the outer skin of a shell does not open the hollow behind its wall', () => {
  // Outside 50, hollow 44: the hole leads into the wall of 6 mm, not through it.
  for (const diameterMm of [10, 20, 30]) {
    const wall = joined(icosphere(50, 5), reversed(icosphere(44, 5)));
    const found = trapsOf(wall, { atMm: [0, 0, 50], diameterMm });
    // The wall over the crown of the hollow is one with the rest: nothing is shut in.
    expect(found.trappedMm3, `${diameterMm} mm`).toBeLessThan(20);
    expect(found.apart).toEqual([]);
  }
});

test('A hole leads into what lies under it, not into another part close by', () => {
  // Two plates 10 thick, one over the other, 4 mm of air between; the hole is in the lid of the lower one, at the air.
  const plates = joined(box([80, 80, 10]), box([80, 80, 10], [0, 0, 14]));
  const pour = pourColumns(plates, UP, 1);
  const mouth = mouthOn(plates, { atMm: [40, 40, 10], diameterMm: 20, normal: UP });
  const runs = runsInMouth(pour.columns, pour.body.axes, mouth);
  expect(runs.length).toBeGreaterThan(250);
  for (const run of runs) expect(pour.columns.highMm[run]).toBe(10);
  const open = openRuns(pour.columns, pour.body.axes, { mouth, vents: [] });
  expect(open.run.length).toBeGreaterThanOrEqual(runs.length);
});

test('A steep, narrow hole opens as much in 3 mm columns as in fine ones', () => {
  // A hole in an upright side, smaller than the columns are apart: still one way out, its level the top of its rim.
  const tower = turnedBy(box([60, 60, 120]), turnAbout([0, 0, 1], 25));
  const at = turnAbout([0, 0, 1], 25)([60, 30, 90]);
  for (const stepMm of [0.5, 1, 3, 5]) {
    const found = trapsOf(tower, { atMm: at, diameterMm: 4, stepMm });
    expect(found.apart, `${stepMm} mm`).toEqual([]);
    expect(Math.abs(found.trappedMm3 - 60 * 60 * 28) / (60 * 60 * 28), `${stepMm} mm`).toBeLessThan(0.03);
  }
});

test('A hole narrower than the columns are apart still opens the body it is in', () => {
  const block = box([60, 60, 60]);
  for (const [diameterMm, stepMm] of [
    [1, 1],
    [2, 2],
    [3, 3],
    [2, 3],
  ] as const)
    for (let i = 0; i < 20; i++) {
      const found = trapsOf(block, { atMm: [20 + 0.37 * i, 25 + 0.53 * i, 60], diameterMm, stepMm });
      expect(found.apart, `${diameterMm} mm, columns ${stepMm} mm, place ${i}`).toEqual([]);
      expect(found.trappedMm3).toBeLessThan(20);
    }
});
