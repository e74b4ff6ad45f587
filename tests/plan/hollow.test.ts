import { describe, expect, it } from 'vitest';
import { hollowCavity, type HollowCavity, type HollowWish } from '../../src/plan';
import { expectClose } from '../support/close';
import { scanOf } from '../support/moldBench';
import { problemOf, valueOf } from '../support/outcome';
import { sampleScan, truthOf } from '../support/samples';
import { box, sphere } from '../support/shapes';

const rock = sampleScan('singing-rock-scan.obj');
const core = sampleScan('singing-rock-core.obj');
const truth = truthOf('singing-rock-core.obj');
const OFF_THE_BOARD = { fileUnit: 'in', cuts: [{ axis: 2, keep: 'above', atUnits: 0.0078 }] } as const;

const BALL = scanOf(sphere(50, 60));
const hollow = (wish: HollowWish, outer = BALL): HollowCavity =>
  valueOf(hollowCavity(outer, { fileUnit: 'mm' }, wish));
const shifted = (mesh: ReturnType<typeof sphere>, dx: number) => ({
  ...mesh,
  positions: mesh.positions.map((x, i) => (i % 3 === 0 ? x + dx : x)),
});

describe('a core as a scan of its own', () => {
  it('the sample rock less its core holds what the generator sums, within the range', () => {
    const { cavityCm3 } = valueOf(hollowCavity(rock, OFF_THE_BOARD, { core }));
    expect(cavityCm3.low).toBeLessThanOrEqual(truth.cavity_mm3! / 1000);
    expect(cavityCm3.high).toBeGreaterThanOrEqual(truth.cavity_mm3! / 1000);
  });

  it('its thinnest wall is where the core was moved to, as the generator measures it from the corners', () => {
    const { wall } = valueOf(hollowCavity(rock, OFF_THE_BOARD, { core }));
    const { mm, at_mm: at } = truth.side_wall!.shifted;
    expect(wall!.isInside).toBe(true);
    // Between corners of facets of some 12 mm the wall may be a little thinner than at them.
    expect(wall!.thinnestMm).toBeLessThanOrEqual(mm + 1e-3);
    expect(wall!.thinnestMm).toBeGreaterThan(mm - 0.3);
    expect(Math.hypot(...wall!.atMm.map((c, axis) => c - at[axis]!))).toBeLessThan(15);
  });

  it('a ball in a ball, off center: wall and volume in closed form', () => {
    const { wall, cavityCm3 } = hollow({ core: scanOf(shifted(sphere(30, 60), 8)) });
    expectClose(wall!.thinnestMm, 50 - 30 - 8, 0.01, 'wall');
    expectClose(cavityCm3.value, (4 / 3) * Math.PI * (125 - 27), 3e-3, 'cavity');
  });

  it('one that sticks out is said, and stops', () => {
    const { wall, findings } = hollow({ core: scanOf(shifted(sphere(30, 40), 25)) });
    expect(wall!.isInside).toBe(false);
    expect(findings).toMatchObject([{ code: 'CORE_OUTSIDE', status: 'stop' }]);
  });

  it('of the wall: thick is fine, under 10 mm a look, under 6 mm a stop', () => {
    const status = (radiusMm: number) =>
      hollow({ core: scanOf(sphere(radiusMm, 40)) }).findings.map((f) => f.status);
    expect([35, 42, 46].map(status)).toEqual([['fine'], ['look'], ['stop']]);
  });
});

describe('a core as far inside as was said', () => {
  it('of a ball is a ball, of a box a box', () => {
    expectClose(hollow({ coreOffsetMm: 12 }).coreCm3!.value, (4 / 3) * Math.PI * 3.8 ** 3, 3e-3, 'ball');
    const { coreCm3 } = hollow({ coreOffsetMm: 10 }, scanOf(box([80, 60, 50])));
    expectClose(coreCm3!.value, 6 * 4 * 3, 2e-3, 'box');
  });

  it('a core of no or of negative depth is refused, and two cores at once', () => {
    const refused = (wish: HollowWish) => problemOf(hollowCavity(BALL, { fileUnit: 'mm' }, wish)).code;
    expect(refused({ coreOffsetMm: 0 })).toBe('INPUT_OUT_OF_BOUNDS');
    expect(refused({ coreOffsetMm: Number.NaN })).toBe('INPUT_OUT_OF_BOUNDS');
    expect(refused({ coreOffsetMm: 5, core: BALL })).toBe('INPUT_CONFLICT');
    expect(refused({ core: BALL })).toBe('CORE_FILLS_MOLD');
  });
});

it('an armature takes its volume off', () => {
  const bare = hollow({}).cavityCm3.value;
  expectClose(bare - hollow({ armatureCm3: 6.4 }).cavityCm3.value, 6.4, 1e-9, 'armature');
});
