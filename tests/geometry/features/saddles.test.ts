import { expect, test } from 'vitest';
import { dot } from '../../../src/geometry/vector';
import { expectClose } from '../../support/close';
import { joined, moved } from '../../support/meshTools';
import { ballOn, capMm3 } from '../../support/moldShapes';
import { pourTurned, trapsOf, turnAbout, turnedBy, type Pour } from '../../support/pours';
import type { Vec3 } from '../../support/shapes';

/** Two balls that run into each other: the crease is a circle about the line of their middles. */
const [LARGE, SMALL, APART] = [40, 39.5, 50];
const CREASE_AT = (APART ** 2 + LARGE ** 2 - SMALL ** 2) / (2 * APART);
const CREASE = Math.sqrt(LARGE ** 2 - CREASE_AT ** 2);
const TRAP = capMm3(SMALL, SMALL - CREASE);

const PAIR = joined(moved(ballOn(LARGE), [0, 0, -LARGE]), moved(ballOn(SMALL), [APART, 0, -SMALL]));
const POUR: Pour = { atMm: [0, 0, LARGE], diameterMm: 16 };

const SHIFTS: readonly Vec3[] = [
  [0, 0, 0],
  [0.13, 0.41, 0.2],
  [0.29, 0.77, -0.35],
  [0.5, 0.5, 0.5],
  [0.68, 0.09, 0.9],
  [0.91, 0.62, 0.05],
];

for (const stepMm of [1, 1.5, 2, 3])
  test(`The ball behind the crease of two keeps the 8.507 mL over it, columns ${stepMm} mm apart`, () => {
    expect(TRAP).toBeCloseTo(8507, -1);
    for (const [axis, degrees] of [
      [[0, 0, 1], 0],
      [[0, 0, 1], 23],
      [[0, 0, 1], 45],
      [[1, 0, 0], 64],
      [[0.4, 1, 0.3], 100],
    ] as const)
      for (const shift of degrees === 0 ? SHIFTS : SHIFTS.slice(1, 3)) {
        const turn = turnAbout(axis, degrees);
        const pour = pourTurned({ ...POUR, stepMm }, turn);
        const { traps, pinholes } = trapsOf(moved(turnedBy(PAIR, turn), shift), {
          ...pour,
          atMm: pour.atMm.map((x, k) => x + shift[k]!) as unknown as Vec3,
        });
        expect(traps).toHaveLength(1);
        const [{ volumeMm3, doubtMm3, saddleMm, riseMm }] = traps as [(typeof traps)[0]];
        const what = `${axis.join(' ')} by ${degrees}, shift ${shift.join(' ')}`;
        expectClose(volumeMm3, TRAP, stepMm <= 2 ? 0.01 : 0.02, what);
        expect(Math.abs(volumeMm3 - TRAP), what).toBeLessThanOrEqual(doubtMm3);
        expect(pinholes.count, what).toBe(0);
        const up = pour.up!;
        expect(Math.abs(dot(saddleMm, up) - dot(shift, up) - CREASE), what).toBeLessThan(0.02 * stepMm);
        const crease = turn([CREASE_AT, 0, CREASE]);
        expect(Math.hypot(...saddleMm.map((x, k) => x - shift[k]! - crease[k]!)), what).toBeLessThan(
          2 * stepMm,
        );
        // The top is that of the highest column: a ball falls off by half the square of what that misses over its radius.
        expect(Math.abs(riseMm - (SMALL - CREASE)), what).toBeLessThan(
          0.02 * stepMm + stepMm ** 2 / 4 / SMALL,
        );
      }
  });
