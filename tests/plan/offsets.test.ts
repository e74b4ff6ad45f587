import { describe, expect, it } from 'vitest';
import type { ScanFile, TriangleMesh } from '../../src/geometry';
import { sizeScan, type Size, type SizeOptions } from '../../src/plan';
import { ACCURACIES, chooseVoxel, type Accuracy } from '../../src/plan/chooseVoxel';
import {
  ballMm3,
  boxTruth,
  ell,
  ellTruth,
  fullBall,
  fullTorus,
  steinerOf,
  torusMm3,
} from '../geometry/field/truths';
import { expectClose } from '../support/close';
import { between, lcg } from '../support/lcg';
import { joined, moved, reversed, scaled, turned, trianglesOf, withTriangles } from '../support/meshTools';
import { problemOf, valueOf } from '../support/outcome';
import { box, icosphere } from '../support/shapes';

const SEED = 3131;

const scanOf = (mesh: TriangleMesh): ScanFile => ({
  mesh,
  format: 'stl',
  trianglesRead: mesh.triangles.length / 3,
  coordinateStep: 0,
  findings: [],
});

const sized = (mesh: TriangleMesh, offsetsMm: readonly number[], options: SizeOptions = {}): Size =>
  valueOf(sizeScan(scanOf(mesh), { fileUnit: 'mm', voxelMm: 1, offsetsMm, ...options }));

const valuesOf = (size: Size): number[] => size.offsets!.volumes.map(({ volumeCm3 }) => volumeCm3.value);

/** Of the volume, at 1 mm voxels. */
const OFF = 5e-4;

const BOX = turned(box([50, 40, 36]), [1, 0.2, 0.3, 0.1]);
const BOX_TRUTH = boxTruth([50, 40, 36]);

describe('volumes of a size grown and shrunk', () => {
  it('are those of the body (Steiner, smaller box), in the order asked', () => {
    const size = sized(BOX, [10, -8, 3]);
    expect(size.offsets!.volumes.map(({ offsetMm }) => offsetMm)).toEqual([10, -8, 3]);
    [10, -8, 3].forEach((t, i) => expectClose(valuesOf(size)[i]!, BOX_TRUTH(t) / 1000, OFF, `${t} mm`));
    expectClose(size.volumeCm3.value, 72, 1e-9);
  });

  it('tell the area of the offset surface (derivative of Steiner)', () => {
    const [volume] = sized(BOX, [10]).offsets!.volumes;
    const area = (BOX_TRUTH(10.001) - BOX_TRUTH(9.999)) / 0.002;
    expectClose(volume!.areaCm2, area / 100, 0.002);
  });

  it('follow the scale, which makes them sure or doubtful: V(L) of a body k times as large', () => {
    const inches = sized(scaled(BOX, 1 / 25.4), [10], { fileUnit: 'in' });
    expectClose(valuesOf(inches)[0]!, BOX_TRUTH(10) / 1000, OFF);
    const height = 80;
    const upright = box([50, 40, height]);
    const taped = valueOf(
      sizeScan(scanOf(upright), {
        taped: [{ along: 'tall', lengthMm: height }],
        voxelMm: 1,
        offsetsMm: [10],
      }),
    ).offsets!.volumes[0]!.volumeCm3;
    // The tape is 1 mm doubtful: the range must reach both boxes that it could have been.
    for (const k of [(height - 1) / height, (height + 1) / height]) {
      const other = boxTruth([50 * k, 40 * k, height * k])(10) / 1000;
      expect(other).toBeGreaterThan(taped.low * 0.9995);
      expect(other).toBeLessThan(taped.high * 1.0005);
      expectClose(k < 1 ? taped.low : taped.high, other, 0.003);
    }
    expect(taped.from).toBe('taped');
  });

  it('are none where none are asked for', () => {
    const size = valueOf(sizeScan(scanOf(BOX), { fileUnit: 'mm' }));
    expect(size.offsets).toBeUndefined();
    expect(valueOf(sizeScan(scanOf(BOX), { fileUnit: 'mm', offsetsMm: [] })).offsets).toBeUndefined();
  });
});

describe('voids', () => {
  it('a hollow ball: the solid with its hollow that shrinks, and the envelope alone (closed forms)', () => {
    const shell = joined(fullBall(32, 80), reversed(fullBall(18, 60)));
    const [out, inward] = sized(shell, [6, -5]).offsets!.volumes;
    expectClose(out!.volumeCm3.value, (ballMm3(38) - ballMm3(12)) / 1000, OFF, 'solid out');
    expectClose(out!.envelopeCm3!.value, ballMm3(38) / 1000, OFF, 'envelope out');
    expectClose(inward!.volumeCm3.value, (ballMm3(27) - ballMm3(23)) / 1000, 2e-3, 'solid in');
    expectClose(inward!.envelopeCm3!.value, ballMm3(27) / 1000, OFF, 'envelope in');
  });

  it('without them there is no envelope of its own', () => {
    expect(sized(BOX, [6]).offsets!.volumes[0]).not.toHaveProperty('envelopeCm3');
  });
});

it(`specks around a box are left out: grown as the box alone, to the last digits, seed ${SEED}`, () => {
  const random = lcg(SEED);
  const specks = Array.from({ length: 12 }, () =>
    moved(icosphere(between(random, 0.2, 0.7), 1), [
      between(random, 70, 80),
      between(random, -20, 60),
      between(random, -20, 60),
    ]),
  );
  const size = sized(joined(BOX, ...specks), [10, -8]);
  expect(size.findings.map(({ values }) => values.part)).toContain('islands');
  valuesOf(sized(BOX, [10, -8])).forEach((alone, i) => expectClose(valuesOf(size)[i]!, alone, 1e-9));
});

describe('ranges', () => {
  it('hold the closed forms of bodies at coarse voxels', () => {
    const bodies: [TriangleMesh, (t: number) => number][] = [
      [BOX, BOX_TRUTH],
      [box([50, 41, 36]), boxTruth([50, 41, 36])],
      [fullBall(28, 80), (t) => ballMm3(28 + t)],
      [turned(fullTorus(30, 14, 160, 80), [1, 0.5, 0.2, 0]), (t) => torusMm3(30, 14 + t)],
      [turned(ell(70, 30, 40), [1, 0.1, 0.4, 0.2]), ellTruth(70, 30, 40)],
    ];
    bodies.forEach(([mesh, truth], n) => {
      for (const voxelMm of [1, 1.7]) {
        const { volumes } = sized(mesh, [9, 2, -6], { voxelMm }).offsets!;
        volumes.forEach(({ offsetMm, volumeCm3: { value, low, high } }) => {
          const what = `body ${n}, ${voxelMm} mm, level ${offsetMm}: ${low} to ${high}`;
          expect(truth(offsetMm) / 1000, what).toBeGreaterThanOrEqual(low);
          expect(truth(offsetMm) / 1000, what).toBeLessThanOrEqual(high);
          expect(high - low, what).toBeLessThan(0.02 * value);
        });
      }
    });
  });

  it('are wider where a hole was closed', () => {
    const ball = icosphere(30, 4);
    const open = withTriangles(ball, trianglesOf(ball).slice(60));
    const width = (size: Size): number => {
      const { low, high } = size.offsets!.volumes[0]!.volumeCm3;
      return high - low;
    };
    expect(width(sized(open, [6]))).toBeGreaterThan(2 * width(sized(ball, [6])));
    const { low, high } = sized(open, [6]).offsets!.volumes[0]!.volumeCm3;
    expect(steinerOf(ball)(6) / 1000).toBeGreaterThan(low);
    expect(steinerOf(ball)(6) / 1000).toBeLessThan(high);
  });
});

describe('thin walls', () => {
  it('a plate of 0.4 mm at 1 mm voxels: THIN, with its thickness and area', () => {
    const size = sized(box([100, 80, 0.4]), [3, -3]);
    const thin = size.findings.find(({ code }) => code === 'THIN')!;
    expect(thin.status).toBe('look');
    expectClose(thin.values.thinnestMm as number, 0.4, 1e-6);
    expectClose(thin.values.areaCm2 as number, 80, 0.02);
    expect(thin.values.voxelMm).toBe(1);
    expectClose(valuesOf(size)[0]!, boxTruth([100, 80, 0.4])(3) / 1000, 2e-3);
    expect(valuesOf(size)[1]).toBe(0);
  });

  it('thick bodies say nothing, and a plate as thick as two voxels neither', () => {
    for (const mesh of [BOX, icosphere(30, 4), box([60, 60, 2])])
      expect(sized(mesh, [3, -3]).findings.filter(({ code }) => code === 'THIN')).toEqual([]);
  });

  it('left to the program the voxel is half the wall', () => {
    const size = sized(box([40, 40, 3]), [20], { voxelMm: undefined } as unknown as SizeOptions);
    expect(size.offsets!.voxel.because).not.toBe('given');
    expect(size.offsets!.voxel.voxelMm).toBeLessThanOrEqual(1.5);
  });
});

describe('what the program says of its work', () => {
  it('the accuracy is assumed, and said, unless it or the voxel is given', () => {
    const names = (options: SizeOptions): string[] =>
      valueOf(
        sizeScan(scanOf(icosphere(12, 2)), { fileUnit: 'mm', up: '+z', offsetsMm: [6], ...options }),
      ).assumptions.map(({ name }) => name);
    expect(names({})).toEqual(['accuracy']);
    expect(names({ accuracy: 'fast' })).toEqual([]);
    expect(names({ voxelMm: 1 })).toEqual([]);
  });

  it('a stop is STOPPED, and the next call is not', () => {
    const stopped = sizeScan(scanOf(BOX), {
      fileUnit: 'mm',
      voxelMm: 1,
      offsetsMm: [6],
      shouldStop: () => true,
    });
    expect(problemOf(stopped).code).toBe('STOPPED');
    expectClose(valuesOf(sized(BOX, [6]))[0]!, BOX_TRUTH(6) / 1000, OFF);
  });

  it('progress stays within 0 and 1', () => {
    const told: number[] = [];
    sized(fullBall(30, 40), [6, -6], { voxelMm: 0.6, onProgress: (share) => told.push(share) });
    expect(told.length).toBeGreaterThan(3);
    expect(Math.min(...told)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...told)).toBeLessThanOrEqual(1);
  });
});

describe('chooseVoxel', () => {
  const cube = (mm: number): { min: [number, number, number]; max: [number, number, number] } => ({
    min: [0, 0, 0],
    max: [mm, mm, mm],
  });
  const choose = (
    mm: number,
    offsetsMm: readonly number[],
    { accuracy = 'normal', wall }: { accuracy?: Accuracy; wall?: number } = {},
  ): { voxelMm: number; because: string } =>
    valueOf(chooseVoxel({ bounds: cube(mm), offsetsMm, thinnestMm: wall, accuracy }));
  // The grid lies turned by 0.1 rad about z, then 0.07 about y, and has some twelve voxels more than the box along every side.
  const [c, s, d, t] = [Math.cos(0.1), Math.sin(0.1), Math.cos(0.07), Math.sin(0.07)];
  const sides = [d * c + d * s + t, s + c, t * c + t * s + d];
  const voxels = (mm: number, grownMm: number, voxelMm: number): number =>
    sides.reduce((product, side) => product * ((side * mm + 2 * grownMm) / voxelMm + 12), 1);

  it('by the size of the piece: so many voxels in the box of the grown body, to two digits', () => {
    const least = { fast: 2e6, normal: 1.4e7, fine: 1e8 };
    for (const accuracy of ACCURACIES) {
      const { voxelMm, because } = choose(200, [20, -16], { accuracy });
      expect(because).toBe('size');
      // Two digits: up to 5 % of the edge, 15 % of the count.
      expectClose(voxels(200, 20, voxelMm), least[accuracy], 0.16, accuracy);
      expect(voxelMm).toBe(Number(voxelMm.toPrecision(2)));
    }
  });

  it('inward offsets do not widen the box', () => {
    expect(choose(200, [-20])).toEqual(choose(200, [-30]));
    expect(choose(200, [20]).voxelMm).toBeGreaterThan(choose(200, [-20]).voxelMm);
  });

  it('a level close to the surface asks for a quarter of its distance, a wall for half of its thickness', () => {
    expect(choose(100, [2])).toEqual({ voxelMm: 0.5, because: 'size' });
    expect(choose(100, [1.6])).toEqual({ voxelMm: 0.4, because: 'offset' });
    expect(choose(100, [5, -1.6])).toEqual({ voxelMm: 0.4, because: 'offset' });
    expect(choose(100, [20], { wall: 0.9 })).toEqual({ voxelMm: 0.45, because: 'wall' });
    expect(choose(100, [1.6], { wall: 0.9 })).toEqual({ voxelMm: 0.4, because: 'offset' });
    expect(choose(100, [1.6], { wall: 0.7 })).toEqual({ voxelMm: 0.35, because: 'wall' });
    expect(choose(100, [0, 20]).because).toBe('size');
  });

  it('but spends no more than so many times the voxels on it', () => {
    const most = { fast: 2e6, normal: 4 * 1.4e7, fine: 1.3 * 1e8 };
    for (const accuracy of ACCURACIES) {
      for (const [offsets, wall] of [
        [[0.01], undefined],
        [[20], 0.01],
      ] as const) {
        const { voxelMm } = choose(2000, offsets, { accuracy, ...(wall === undefined ? {} : { wall }) });
        expectClose(voxels(2000, Math.max(...offsets), voxelMm), most[accuracy], 0.16, accuracy);
      }
    }
  });

  it('what is given is taken, unless it would be more voxels than memory is planned for, or too few', () => {
    const given = (voxelMm: number) =>
      chooseVoxel({ bounds: cube(200), offsetsMm: [2], thinnestMm: 0.4, accuracy: 'fine', voxelMm });
    expect(valueOf(given(3))).toEqual({ voxelMm: 3, because: 'given' });
    const refused = problemOf(given(0.01));
    expect(refused.code).toBe('VOXEL_TOO_SMALL');
    expectClose(refused.values.voxels as number, voxels(200, 2, 0.01), 1e-9);
    // What is named instead is taken.
    expect(valueOf(given(refused.values.smallestMm as number)).because).toBe('given');
    const coarse = problemOf(given(20));
    expect(coarse.code).toBe('VOXEL_TOO_LARGE');
    expect(valueOf(given(coarse.values.largestMm as number)).because).toBe('given');
  });
});
