import { expect, test } from 'vitest';
import type { TriangleMesh } from '../../../src/geometry';
import { expectClose } from '../../support/close';
import { direction, upTo, type Random } from '../../support/draws';
import { between, lcg } from '../../support/lcg';
import { measured } from '../../support/measured';
import {
  damaged,
  joined,
  mapPoints,
  moved,
  reversed,
  scaled,
  trianglesOf,
  withTriangles,
} from '../../support/meshTools';
import { CLEAN_TROLL } from '../../support/moldSamples';
import { DEGREES, pourTurned, trapsOf, turnAbout, turnedBy, UP, type Pour } from '../../support/pours';
import { box, icosphere, type Vec3 } from '../../support/shapes';

/** Three balls in a bent row, the hole in the first: each keeps a cap. */
const ROW = joined(
  icosphere(30, 5),
  moved(icosphere(26, 5), [40, 6, -2]),
  moved(icosphere(28, 5), [77, 34, 4]),
);
const ROW_POUR: Pour = { atMm: [-8, -5, 28], diameterMm: 14, normal: [-0.3, -0.15, 1] };

/** The head upside down, its neck open: horns, ears and brow keep air. */
const HEAD_POUR: Pour = {
  atMm: [0, 0, 0],
  diameterMm: 40,
  normal: [0, 0, -1],
  up: [0.1, 0.05, -1],
  stepMm: 2,
};

const BODIES: readonly (readonly [string, TriangleMesh, Pour])[] = [
  ['a row of balls', ROW, ROW_POUR],
  ['a head on its crown', CLEAN_TROLL, HEAD_POUR],
];

for (const [name, body, pour] of BODIES) {
  const plain = trapsOf(body, pour);

  test(`${name} keeps some air to be counted`, () => {
    expect(plain.trappedMm3).toBeGreaterThan(3000);
    expect(plain.traps.length).toBeGreaterThan(0);
  });

  test(`A larger copy of ${name} keeps air by the cube of its size`, () => {
    for (const k of [0.37, 2.5, 10]) {
      const large = trapsOf(scaled(body, k), {
        ...pour,
        atMm: pour.atMm.map((x) => k * x) as unknown as Vec3,
        diameterMm: k * pour.diameterMm,
        stepMm: k * (pour.stepMm ?? 1),
        leastMm3: 1000 * k ** 3,
      });
      expect(large.traps).toHaveLength(plain.traps.length);
      plain.traps.forEach((trap, i) => {
        expectClose(large.traps[i]!.volumeMm3, k ** 3 * trap.volumeMm3, 1e-6, `trap ${i} by ${k}`);
        expectClose(large.traps[i]!.riseMm, k * trap.riseMm, 1e-6, `rise ${i} by ${k}`);
      });
    }
  });

  test(`Turned as it is poured, ${name} keeps the same air`, () => {
    for (let seed = 1; seed <= 6; seed++) {
      const random = lcg(seed);
      const turn = turnAbout(direction(random), between(random, 0, 180));
      const other = trapsOf(turnedBy(body, turn), pourTurned(pour, turn));
      expectClose(other.trappedMm3, plain.trappedMm3, 0.01, `seed ${seed}`);
      expect(other.traps.length, `seed ${seed}`).toBe(plain.traps.length);
    }
  });

  test(`In the mirror ${name} keeps the same air`, () => {
    for (const axis of [0, 1] as const) {
      const mirror = (p: Vec3): Vec3 => p.map((x, k) => (k === axis ? -x : x)) as unknown as Vec3;
      const image = reversed(mapPoints(body, mirror));
      const other = trapsOf(image, pourTurned(pour, mirror));
      expectClose(other.trappedMm3, plain.trappedMm3, 0.01, `across ${axis}`);
      expect(other.traps.length).toBe(plain.traps.length);
      other.traps.forEach(({ volumeMm3, topMm }, i) => {
        expectClose(volumeMm3, plain.traps[i]!.volumeMm3, 0.02, `trap ${i}`);
        const there = mirror(topMm);
        expect(Math.hypot(...there.map((x, k) => x - plain.traps[i]!.topMm[k]!)), `top ${i}`).toBeLessThan(
          12,
        );
      });
    }
  });

  test(`How the triangles of ${name} are listed changes nothing`, () => {
    for (let seed = 11; seed <= 13; seed++) {
      const listed = trapsOf(shuffled(body, lcg(seed)), pour);
      expect(listed.traps.length, `seed ${seed}`).toBe(plain.traps.length);
      // Crossings are worked out from the lower-numbered vertex: the last digit may differ.
      expectClose(listed.trappedMm3, plain.trappedMm3, 1e-9, `seed ${seed}`);
    }
  });

  test(`Columns 1, 2 and 3 mm apart agree on ${name}`, () => {
    const fine = trapsOf(body, { ...pour, stepMm: 1 });
    for (const stepMm of [2, 3]) {
      const coarse = trapsOf(body, { ...pour, stepMm });
      expectClose(coarse.trappedMm3, fine.trappedMm3, 0.02, `${stepMm} mm`);
      expect(coarse.traps.length, `${stepMm} mm`).toBe(fine.traps.length);
    }
  });

  test(`Roughness of 0.1 and 0.3 mm adds no pocket of note to ${name}`, () => {
    for (const mm of [0.1, 0.3]) {
      const random = lcg(5);
      const rough = mapPoints(body, ([x, y, z]) => [
        x + between(random, -mm, mm),
        y + between(random, -mm, mm),
        z + between(random, -mm, mm),
      ]);
      const found = trapsOf(rough, { ...pour, leastMm3: 200 });
      const smooth = trapsOf(body, { ...pour, leastMm3: 200 });
      expectClose(found.trappedMm3, smooth.trappedMm3, 0.1, `${mm} mm`);
      expect(found.traps.length, `${mm} mm`).toBeLessThanOrEqual(smooth.traps.length);
    }
  });

  test(`A scan of ${name} with one facet in twenty wrong keeps the same air`, () => {
    for (const [how, seed] of [
      ['deleted', 21],
      ['flipped', 22],
      ['doubled', 23],
      ['all three', 24],
    ] as const) {
      const { chain } = measured(damaged(body, how, 0.05, lcg(seed)));
      expect(chain, how).toBeDefined();
      const found = trapsOf(chain, pour);
      expectClose(found.trappedMm3, plain.trappedMm3, 0.01, `${how}, seed ${seed}`);
      expect(found.traps.length, how).toBe(plain.traps.length);
    }
  });
}

/** Triangles in another order, each begun at another corner, vertices numbered anew. */
function shuffled(mesh: TriangleMesh, random: Random): TriangleMesh {
  const order = (count: number): number[] => {
    const all = Array.from({ length: count }, (_, i) => i);
    for (let i = count - 1; i > 0; i--) {
      const j = upTo(random, 0, i);
      [all[i], all[j]] = [all[j]!, all[i]!];
    }
    return all;
  };
  const number = order(mesh.positions.length / 3);
  const positions = new Float64Array(mesh.positions.length);
  number.forEach((to, from) => positions.set(mesh.positions.subarray(3 * from, 3 * from + 3), 3 * to));
  const triples = trianglesOf(mesh).map(([a, b, c]) => [number[a]!, number[b]!, number[c]!] as const);
  return withTriangles(
    { positions, triangles: mesh.triangles },
    order(triples.length).map((i) => {
      const [a, b, c] = triples[i]!;
      return random() < 0.5 ? [a, b, c] : [b, c, a];
    }),
  );
}

test('Two creases at nearly one height shut in the same air in every pose', () => {
  // Closed form of a crease: the highest points lie at 18.08 and 18.47 mm, the lower one next to the opening. So it is one pocket.
  const body = joined(
    icosphere(30, 5),
    moved(icosphere(26, 5), [40, 6, -2]),
    moved(icosphere(28, 5), [72, 30, 4]),
  );
  const fine = trapsOf(body, { ...ROW_POUR, stepMm: 0.5 });
  for (let seed = 1; seed <= 6; seed++) {
    const random = lcg(seed);
    const turn = turnAbout(direction(random), between(random, 0, 180));
    const { traps, trappedMm3 } = trapsOf(turnedBy(body, turn), pourTurned(ROW_POUR, turn));
    expectClose(trappedMm3, fine.trappedMm3, 0.01, `seed ${seed}`);
    expect(traps.length, `seed ${seed}`).toBe(1);
  }
});

test('A higher lip never shuts in more', () => {
  const ball = icosphere(50, 5);
  let before = Infinity;
  for (let tilt = 80; tilt >= 0; tilt -= 5) {
    const found = trapsOf(ball, {
      atMm: turnAbout([0.2, 1, 0], tilt)([0, 0, 50]),
      diameterMm: 16,
      leastMm3: 100,
    });
    expect(found.trappedMm3, `${tilt} degrees`).toBeLessThanOrEqual(before + 0.5);
    before = found.trappedMm3;
  }
  expect(before).toBe(0);
});

test('A wider opening of the same middle never shuts in more', () => {
  const ball = icosphere(50, 5);
  let before = Infinity;
  for (const diameterMm of [6, 10, 16, 24, 32, 40, 50]) {
    const at = turnAbout([1, 0.4, 0], 40)(UP.map((x) => 50 * x) as unknown as Vec3);
    const found = trapsOf(ball, { atMm: at, diameterMm, leastMm3: 100 });
    expect(found.trappedMm3, `${diameterMm} mm`).toBeLessThanOrEqual(before + 1);
    const lip = 40 * DEGREES - Math.asin(diameterMm / 100);
    const high = 50 * (1 - Math.cos(lip));
    expectClose(found.trappedMm3, (Math.PI * high ** 2 * (150 - high)) / 3, 0.02, `${diameterMm} mm`);
    before = found.trappedMm3;
  }
});

test('Blocks that touch face to face are one, in whatever order they are listed', () => {
  const [low, high] = [box([20, 20, 20]), box([20, 20, 20], [0, 0, 20])];
  const pour: Pour = { atMm: [10, 10, 40], diameterMm: 10 };
  for (const turn of [turnAbout([0, 0, 1], 0), turnAbout([1, 2, 3], 50), turnAbout([0, 1, 0], 90)])
    for (const body of [joined(low, high), joined(high, low)]) {
      const { apart, trappedMm3 } = trapsOf(turnedBy(body, turn), pourTurned(pour, turn));
      expect(apart).toEqual([]);
      expect(trappedMm3).toBeLessThan(20);
    }
});
