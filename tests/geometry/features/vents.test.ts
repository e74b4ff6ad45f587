import { expect, test } from 'vitest';
import type { TriangleMesh } from '../../../src/geometry';
import { expectClose } from '../../support/close';
import { direction } from '../../support/draws';
import { between, lcg } from '../../support/lcg';
import { joined, moved } from '../../support/meshTools';
import { turnedBody } from '../../support/moldShapes';
import { pourTurned, trapsOf, turnAbout, turnedBy, ventsFor, type Pour } from '../../support/pours';
import { box, icosphere, type Vec3 } from '../../support/shapes';

const BLOCK = box([100, 60, 40]);
const LID: Pour = { atMm: [20, 30, 40], diameterMm: 20 };

/** A cone on the block, its foot 5 mm in it. */
const horn = (radius: number, tall: number): TriangleMesh =>
  joined(
    BLOCK,
    moved(
      turnedBody([
        [0, -5],
        [radius, -5],
        [radius, 0],
        [0, tall],
      ]),
      [75.3, 30.4, 40],
    ),
  );

test('A vent drilled at the tip of a horn lets its air out, however slender the horn', () => {
  for (const [radius, tall] of [
    [15, 60],
    [10, 60],
    [6, 60],
  ] as const)
    for (const stepMm of [1, 2]) {
      const body = horn(radius, tall);
      const bare = trapsOf(body, { ...LID, stepMm });
      expectClose(bare.trappedMm3, (Math.PI * radius ** 2 * tall) / 3, 0.02, `horn of ${radius}`);
      const vented = trapsOf(body, { ...LID, stepMm, vents: [[75.3, 30.4, 40 + tall]] });
      expect(vented.trappedMm3, `horn of ${radius}, columns ${stepMm} mm`).toBeLessThan(20);
    }
});

test('A vent below the summit keeps what is over it', () => {
  const tower = joined(BLOCK, box([20, 20, 65], [70, 20, 5]));
  for (const high of [50, 60, 69]) {
    const found = trapsOf(tower, { ...LID, vents: [[90, 30, high]] });
    expectClose(found.trappedMm3, 400 * (70 - high), 0.06, `vent at ${high}`);
  }
});

/** Area of a polygon above a level, by clipping and the shoelace formula. */
function aboveMm2(outline: readonly (readonly [number, number])[], level: number): number {
  const kept: [number, number][] = [];
  outline.forEach(([x, z], i) => {
    const [x2, z2] = outline[(i + 1) % outline.length]!;
    if (z >= level) kept.push([x, z]);
    if (z >= level !== z2 >= level) kept.push([x + ((level - z) / (z2 - z)) * (x2 - x), level]);
  });
  const twice = kept.reduce((sum, [x, z], i) => {
    const [x2, z2] = kept[(i + 1) % kept.length]!;
    return sum + x * z2 - x2 * z;
  }, 0);
  return Math.abs(twice) / 2;
}

test('A vent in a slope opens at its own height, not at that of the nearest column', () => {
  for (const tilt of [15, 30, 60])
    for (const stepMm of [1, 3]) {
      const turn = turnAbout([0, 1, 0], -tilt);
      const side = [
        [0, 0],
        [100, 0],
        [100, 40],
        [0, 40],
      ].map(([x, z]): [number, number] => {
        const p = turn([x!, 0, z!]);
        return [p[0], p[2]];
      });
      for (const [x, y] of [
        [50, 30],
        [40.3, 22.7],
        [61.8, 41.1],
      ] as const) {
        const vent = turn([x, y, 40]);
        const pour: Pour = {
          atMm: turn([5, 30, 0]),
          normal: turn([0, 0, -1]),
          diameterMm: 4,
          vents: [vent],
          stepMm,
        };
        const { trappedMm3 } = trapsOf(turnedBy(BLOCK, turn), pour);
        const what = `${tilt} degrees, columns ${stepMm} mm, at ${x}`;
        expectClose(trappedMm3, 60 * aboveMm2(side, vent[2]), 0.01, what);
      }
    }
});

test('Vents are advised at the summits, the largest first, and what each cures adds up', () => {
  const body = joined(
    BLOCK,
    moved(icosphere(14, 4), [45, 15, 40]),
    moved(icosphere(11, 4), [50, 45, 40]),
    moved(icosphere(17, 4), [80, 30, 40]),
  );
  for (let seed = 0; seed < 4; seed++) {
    const random = lcg(seed);
    const turn = turnAbout(direction(random), between(random, 0, 180));
    const pour = pourTurned(LID, turn);
    const shape = turnedBy(body, turn);
    const { vents, leftMm3 } = ventsFor(shape, pour);
    const before = trapsOf(shape, pour);
    expect(vents).toHaveLength(3);
    expectClose(before.trappedMm3, (2 / 3) * Math.PI * (17 ** 3 + 14 ** 3 + 11 ** 3), 0.01, `seed ${seed}`);
    const tops: Vec3[] = [
      [80, 30, 57],
      [45, 15, 54],
      [50, 45, 51],
    ];
    vents.forEach(({ atMm, curesMm3 }, i) => {
      const top = turn(tops[i]!);
      expect(Math.hypot(...atMm.map((x, k) => x - top[k]!)), `vent ${i}`).toBeLessThan(1.5);
      expectClose(curesMm3, (2 / 3) * Math.PI * [17, 14, 11][i]! ** 3, 0.03, `vent ${i}`);
    });
    const cured = vents.reduce((sum, { curesMm3 }) => sum + curesMm3, 0);
    expectClose(cured + leftMm3, before.trappedMm3, 0.02, 'all of it');
    expect(leftMm3).toBeLessThan(20);
  }
});

test('One more vent at a random place never shuts in more', () => {
  const body = joined(BLOCK, moved(icosphere(14, 4), [45, 15, 40]), moved(icosphere(17, 4), [80, 30, 40]));
  for (let seed = 1; seed <= 8; seed++) {
    const random = lcg(seed);
    const up = turnAbout([between(random, -1, 1), between(random, -1, 1), 0], 40)([0, 0, 1]);
    const vents: Vec3[] = [];
    let before = Infinity;
    for (let n = 0; n < 5; n++) {
      const { trappedMm3 } = trapsOf(body, { ...LID, up, vents: [...vents], stepMm: 2 });
      expect(trappedMm3, `seed ${seed}, ${n} vents`).toBeLessThanOrEqual(before * (1 + 1e-3) + 20);
      before = trappedMm3;
      const out = turnAbout([1, 0, 0], between(random, -60, 60))(direction(random));
      vents.push(
        n % 2 === 0
          ? [80 + 17 * out[0], 30 + 17 * out[1], 40 + 17 * Math.abs(out[2])]
          : [0, 60 * random(), 40 * random()],
      );
    }
  }
});

test('A vent that lies where air is let out already, or off the body, changes nothing', () => {
  const body = horn(15, 60);
  const bare = trapsOf(body, LID).trappedMm3;
  for (const at of [
    [20, 30, 40],
    [0, 10, 10],
    [300, 300, 300],
  ] as const)
    expectClose(trapsOf(body, { ...LID, vents: [at] }).trappedMm3, bare, 1e-9, at.join(' '));
});

test('A wall of one and a half steps and more keeps two chambers apart', () => {
  for (const [stepMm, wallMm] of [
    [1, 1.5],
    [1, 3],
    [2, 3],
    [3, 4.5],
  ] as const)
    for (const degrees of [0, 12, 45, 70]) {
      const turn = turnAbout([0, 0, 1], degrees);
      const body = joined(
        box([40, 40, 60]),
        box([40, 40, 60], [40 + wallMm, 0, 0]),
        box([40 + 2 * wallMm, 40, 10], [20, 0, 0]),
      );
      const pour = pourTurned({ atMm: [20, 20, 60], diameterMm: 20, stepMm }, turn);
      const { trappedMm3 } = trapsOf(turnedBy(body, turn), pour);
      expectClose(trappedMm3, 40 * 40 * 50, 0.01, `wall ${wallMm}, columns ${stepMm}, ${degrees} degrees`);
    }
});

test('A wall thinner than a step keeps two chambers apart too, down to the passage at their floor', () => {
  for (const wallMm of [0.3, 1, 1.2])
    for (const passageMm of [1, 10])
      for (const degrees of [0, 12, 45]) {
        const turn = turnAbout([0, 0, 1], degrees);
        const body = joined(
          box([40, 40, 60]),
          box([40, 40, 60], [40 + wallMm, 0, 0]),
          box([40 + 2 * wallMm, 40, passageMm], [20, 0, 0]),
        );
        const pour = pourTurned({ atMm: [20, 20, 60], diameterMm: 20 }, turn);
        const { trappedMm3 } = trapsOf(turnedBy(body, turn), pour);
        const what = `wall ${wallMm}, passage ${passageMm}, ${degrees} degrees`;
        expectClose(trappedMm3, 1600 * (60 - passageMm), 0.01, what);
      }
});
