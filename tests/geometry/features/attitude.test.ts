import { expect, test } from 'vitest';
import type { TriangleMesh } from '../../../src/geometry';
import {
  degreesBetween,
  MOST_TILT_DEGREES,
  searchAttitude,
  type Attitude,
} from '../../../src/geometry/features/attitude';
import { pocketsOf } from '../../../src/geometry/features/airTraps';
import type { Mouth } from '../../../src/geometry/features/mouth';
import { openRuns } from '../../../src/geometry/features/openRuns';
import { pourColumns } from '../../../src/geometry/features/pourColumns';
import { direction } from '../../support/draws';
import { lcg } from '../../support/lcg';
import { joined, moved } from '../../support/meshTools';
import { ballOn, cylinderOn } from '../../support/moldShapes';
import {
  DEGREES,
  mouthOf,
  pourTurned,
  trapsOf,
  turnAbout,
  turnedBy,
  type Pour,
  type Turn,
} from '../../support/pours';
import { box, icosphere, type Vec3 } from '../../support/shapes';

const found = (body: TriangleMesh, pour: Pour, most = 3): Attitude[] =>
  searchAttitude(body, { stepMm: 2, most }, { mouth: mouthOf(body, pour), leastMm3: 1000, directions: 500 });

const keptMm3 = (body: TriangleMesh, pour: Pour, up: Vec3): number =>
  trapsOf(body, { ...pour, up, stepMm: 1 }).trappedMm3;

/** As columns of 4 mm have it, nothing refined. */
function coarseMm3(body: TriangleMesh, mouth: Mouth, up: Vec3): number {
  const pour = pourColumns(body, up, 4);
  const { pockets } = pocketsOf(pour, openRuns(pour.columns, pour.body.axes, { mouth, vents: [] }));
  return pockets.reduce((sum, { volumeMm3 }) => sum + volumeMm3, 0);
}

/** Least air over a lattice of directions within 60 degrees of the opening, closely worked out: no search at all. */
function leastOf(body: TriangleMesh, pour: Pour, normal: Vec3, stepDegrees: number): number {
  let least = Infinity;
  const mouth = mouthOf(body, pour);
  const side: Vec3 = Math.abs(normal[2]) < 0.9 ? [0, 0, 1] : [1, 0, 0];
  const across: Vec3 = [
    normal[1] * side[2] - normal[2] * side[1],
    normal[2] * side[0] - normal[0] * side[2],
    normal[0] * side[1] - normal[1] * side[0],
  ];
  for (let tilt = 0; tilt <= MOST_TILT_DEGREES; tilt += stepDegrees)
    for (let about = 0; about < 360; about += tilt === 0 ? 360 : stepDegrees / Math.sin(tilt * DEGREES)) {
      const up = turnAbout(normal, about)(turnAbout(across, tilt)(normal));
      least = Math.min(least, coarseMm3(body, mouth, up));
    }
  return least;
}

const POSES: readonly Turn[] = [
  turnAbout([0, 0, 1], 0),
  turnAbout([1, 2, 3], 70),
  turnAbout([1, -0.3, 0.2], 155),
];

test('A ball with its opening anywhere is best poured with the opening up', () => {
  for (let seed = 1; seed <= 6; seed++) {
    const normal = direction(lcg(seed));
    const ball = moved(ballOn(50), [0, 0, -50]);
    const pour: Pour = { atMm: normal.map((x) => 50 * x) as unknown as Vec3, diameterMm: 20 };
    const best = found(ball, pour)[0]!;
    // Within the hole's own half width every lip is at or over the top.
    expect(degreesBetween(best.up, normal), `seed ${seed}`).toBeLessThan(Math.asin(10 / 50) / DEGREES + 1);
    expect(keptMm3(ball, pour, best.up), `seed ${seed}`).toBeLessThan(20);
  }
});

test('A ball with a rising horn is tilted until the horn drains, and no further than the lip of the hole', () => {
  // The horn rises by 10 degrees; the upper lip of the hole stays the highest point up to asin(12 / 50) = 13.9 degrees.
  const horn = turnedBy(cylinderOn(9, 90), turnAbout([0, 1, 0], 80));
  const body = joined(icosphere(50, 5), horn);
  for (const turn of POSES) {
    const pour = pourTurned({ atMm: [0, 0, 50], diameterMm: 24, normal: [0, 0, 1] }, turn);
    const turned = turnedBy(body, turn);
    const best = found(turned, pour)[0]!;
    const along = turn(turnAbout([0, 1, 0], 80)([0, 0, 1]));
    expect(degreesBetween(best.up, along)).toBeGreaterThan(90 - 2);
    expect(degreesBetween(best.up, turn([0, 0, 1]))).toBeLessThan(13.9 + 2);
    const upright = keptMm3(turned, pour, turn([0, 0, 1]));
    expect(keptMm3(turned, pour, best.up)).toBeLessThan(0.1 * upright);
  }
});

test('A boot is found its way up: no direction of a lattice keeps less', () => {
  const boot = joined(box([60, 60, 160]), box([180, 60, 50]), box([30, 60, 40], [150, 0, 40]));
  for (const turn of POSES.slice(0, 2)) {
    const pour = pourTurned({ atMm: [30, 30, 160], diameterMm: 40 }, turn);
    const turned = turnedBy(boot, turn);
    const best = found(turned, pour)[0]!;
    const kept = keptMm3(turned, pour, best.up);
    const least = leastOf(turned, pour, turn([0, 0, 1]), 12);
    expect(kept).toBeLessThan(1.05 * least + 500);
    // Standing upright it keeps toe and instep.
    expect(kept).toBeLessThan(0.5 * keptMm3(turned, pour, turn([0, 0, 1])));
  }
});

test('No way up is proposed that looks away from the opening by more than 60 degrees', () => {
  // A long arm that would drain only lying over: 75 degrees off.
  const arm = turnedBy(cylinderOn(12, 150), turnAbout([0, 1, 0], 165));
  const body = joined(icosphere(40, 5), arm);
  for (const turn of POSES) {
    const normal = turn([0, 0, 1]);
    const pour = pourTurned({ atMm: [0, 0, 40], diameterMm: 20, normal: [0, 0, 1] }, turn);
    const all = found(turnedBy(body, turn), pour, 6);
    expect(all.length).toBeGreaterThan(1);
    for (const { up } of all)
      expect(degreesBetween(up, normal)).toBeLessThanOrEqual(MOST_TILT_DEGREES + 1e-6);
  }
});

test('Asked twice it answers the same, and its answers lie apart', () => {
  const body = joined(icosphere(40, 4), moved(icosphere(30, 4), [50, 20, 0]));
  const pour: Pour = { atMm: [0, 0, 40], diameterMm: 16 };
  const [one, two] = [found(body, pour, 4), found(body, pour, 4)];
  expect(two).toEqual(one);
  one.forEach((a, i) => {
    expect(Math.hypot(...a.up)).toBeCloseTo(1, 9);
    one.slice(i + 1).forEach((b) => expect(degreesBetween(a.up, b.up)).toBeGreaterThanOrEqual(20 - 1e-6));
  });
});

test('Of two arms that mirror each other neither is better: upright is as good as the best', () => {
  const arm = (degrees: number): TriangleMesh => turnedBy(cylinderOn(10, 80), turnAbout([0, 1, 0], degrees));
  const body = joined(icosphere(40, 5), arm(70), arm(-70));
  const pour: Pour = { atMm: [0, 0, 40], diameterMm: 20 };
  const best = found(body, pour)[0]!;
  const upright = keptMm3(body, pour, [0, 0, 1]);
  const kept = keptMm3(body, pour, best.up);
  expect(kept).toBeLessThanOrEqual(upright + 20);
  const mirrored = keptMm3(body, pour, [-best.up[0], best.up[1], best.up[2]]);
  expect(Math.abs(mirrored - kept)).toBeLessThan(0.02 * upright + 50);
});
