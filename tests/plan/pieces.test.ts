import { describe, expect, it } from 'vitest';
import type { ScanFile, TriangleMesh, UpAxis, Vector } from '../../src/geometry';
import { sizeScan, type ScanPieceWish, type Size } from '../../src/plan';
import { expectClose } from '../support/close';
import { joined, moved, reversed } from '../support/meshTools';
import { problemOf, valueOf } from '../support/outcome';
import { sampleScan, truthOf } from '../support/samples';
import { box, sphere } from '../support/shapes';

/** Sums of float64 products. */
const EXACT = 1e-12;

const scanOf = (mesh: TriangleMesh): ScanFile => ({
  mesh,
  format: 'stl',
  trianglesRead: mesh.triangles.length / 3,
  coordinateStep: 0,
  findings: [],
});

const inMm = (scan: ScanFile, pieces?: ScanPieceWish, up: UpAxis = '+z'): Size =>
  valueOf(sizeScan(scan, { fileUnit: 'mm', up, ...(pieces === undefined ? {} : { pieces }) }));

/** The corner that names the piece that holds so many cm3. */
function cornerOf({ shells }: Size, holdsCm3: number): Vector {
  const shell = shells.find((one) => Math.abs(one.holdsCm3 / holdsCm3 - 1) < 1e-9);
  if (shell?.corner === undefined) throw new Error(`cornerOf: expected a piece of ${holdsCm3} cm3`);
  return shell.corner;
}

const effectsOf = ({ findings }: Size): number[] =>
  findings.flatMap(({ code, values }) =>
    code === 'PIECE_LEFT_OUT' || code === 'PIECES_TAKEN' ? [Number(values.effectCm3)] : [],
  );

// By hand: 100 x 100 x 100 = 1000 cm3, 60 x 50 x 40 = 120 cm3, 30 x 20 x 80 = 48 cm3, all apart.
const three = scanOf(
  joined(box([100, 100, 100]), moved(box([60, 50, 40]), [200, 0, 0]), moved(box([30, 20, 80]), [0, 200, 10])),
);

describe('a separate piece is left out', () => {
  it('every piece is told with what it holds, where it stands and what names it', () => {
    const { shells, volumeCm3 } = inMm(three);
    expectClose(volumeCm3.value, 1168, EXACT);
    expect(shells.map(({ holdsCm3 }) => Math.round(holdsCm3))).toEqual([1000, 120, 48]);
    expect(shells[1]).toMatchObject({ isLeftOut: false, extentsMm: [60, 50, 40], middleMm: [230, 25, 20] });
    for (const { corner } of shells) expect(corner).toHaveLength(3);
    expect(inMm(scanOf(box([100, 100, 100]))).shells).toEqual([]);
  });

  it.each([
    [120, 1048],
    [48, 1120],
    [1000, 168],
  ])('of %d cm3: %d cm3 are left, and the row says exactly its own', (holdsCm3, leftCm3) => {
    const size = inMm(three, { leaveOut: [cornerOf(inMm(three), holdsCm3)] });
    expectClose(size.volumeCm3.value, leftCm3, EXACT);
    expectClose(effectsOf(size)[0]!, -holdsCm3, EXACT);
    expect(size.shells.filter(({ isLeftOut }) => isLeftOut)).toHaveLength(1);
  });

  it('two of them: each row its own, together what is gone; the order does not matter', () => {
    const corners = [120, 48].map((cm3) => cornerOf(inMm(three), cm3));
    for (const leaveOut of [corners, [...corners].reverse()]) {
      const size = inMm(three, { leaveOut });
      expectClose(size.volumeCm3.value, 1000, EXACT);
      expect(effectsOf(size).map((cm3) => Math.round(cm3))).toEqual([-120, -48]);
      expect(size.extentsMm).toEqual([100, 100, 100]);
    }
  });

  it('is the same piece with another axis up', () => {
    const leaveOut = [cornerOf(inMm(three), 120)];
    for (const up of ['+x', '-x', '+y', '-y', '-z'] as const)
      expectClose(inMm(three, { leaveOut }, up).volumeCm3.value, 1048, EXACT, up);
  });

  it('a tape is of what is kept: 100 mm tall without the tall one beside it', () => {
    const tower = scanOf(joined(box([100, 100, 100]), moved(box([30, 20, 300]), [0, 200, 0])));
    const leaveOut = [cornerOf(inMm(tower), 180)];
    const taped = [{ along: 'tall', lengthMm: 200 }] as const;
    expectClose(valueOf(sizeScan(tower, { taped, pieces: { leaveOut } })).scale.mmPerUnit, 2, 1e-9);
    expectClose(valueOf(sizeScan(tower, { taped })).scale.mmPerUnit, 2 / 3, 1e-9);
  });

  it('what it overlapped keeps what both held: twin balls, the union less one is the other alone', () => {
    const { shells_volume_mm3, clean_volume_mm3, file } = truthOf('twin-spheres-r40-d50.stl');
    const twins = sampleScan(file);
    const both = inMm(twins);
    const one = shells_volume_mm3! / 2000;
    const size = inMm(twins, { leaveOut: [both.shells[1]!.corner!] });
    expectClose(size.volumeCm3.value, one, 1e-9, 'one ball, by the generator');
    // The union is known to the lines that measured it, 0.01 %.
    expectClose(effectsOf(size)[0]!, one - clean_volume_mm3 / 1000, 1e-3, 'less than the ball holds');
    expectClose(both.volumeCm3.value + effectsOf(size)[0]!, size.volumeCm3.value, EXACT, 'adds up');
  });

  it('pieces that touch in an edge are told apart', () => {
    // Two boxes on the same vertices along one edge, which four facets share.
    const a = box([100, 100, 100]);
    const b = moved(box([50, 50, 100]), [100, 100, 0]);
    const touching = scanOf(weldedByHand(joined(a, b)));
    const size = inMm(touching, { leaveOut: [cornerOf(inMm(touching), 250)] });
    expectClose(size.volumeCm3.value, 1000, EXACT);
  });

  it('all of them: no volume, and what to do', () => {
    const leaveOut = inMm(three).shells.map(({ corner }) => corner!);
    expect(problemOf(sizeScan(three, { fileUnit: 'mm', pieces: { leaveOut } }))).toMatchObject({
      code: 'NOTHING_LEFT',
      values: { count: 3 },
    });
  });

  it('a corner that no piece has leaves nothing out, and is told', () => {
    const size = inMm(three, { leaveOut: [[1, 2, 3]] });
    expectClose(size.volumeCm3.value, 1168, EXACT);
    expect(size.findings.find(({ code }) => code === 'PIECE_LOST')?.values.count).toBe(1);
  });
});

describe('pieces and a cut', () => {
  // A plate of 300 x 100 x 10 under two posts of 40 x 40: one surface, two pieces above z = 10.
  const posts = scanOf(
    joined(
      moved(box([300, 100, 10]), [0, 0, 0]),
      moved(box([40, 40, 90]), [10, 30, 5]),
      moved(box([40, 40, 50]), [200, 30, 5]),
    ),
  );
  const cuts = [{ axis: 2, keep: 'above', atMm: 10 }] as const;
  const cut = (pieces: ScanPieceWish): Size =>
    valueOf(sizeScan(posts, { fileUnit: 'mm', up: '+z', cuts, pieces }));

  it('what the cut parted can be left out, and what the cut took stays the same', () => {
    const both = cut({});
    // 40 x 40 x 85 = 136 cm3 and 40 x 40 x 45 = 72 cm3 above the plane.
    expectClose(both.volumeCm3.value, 208, EXACT);
    const one = cut({ leaveOut: [cornerOf(both, 72)] });
    expectClose(one.volumeCm3.value, 136, EXACT);
    const takenOf = ({ findings }: Size): number =>
      Number(findings.find(({ code }) => code === 'CUT_AWAY')!.values.effectCm3);
    expectClose(takenOf(one), takenOf(both), EXACT, 'the cut takes what it took');
  });

  it('a piece that the cut took away is told as not found', () => {
    const low = valueOf(sizeScan(three, { fileUnit: 'mm', up: '+z' }));
    const size = valueOf(
      sizeScan(three, {
        fileUnit: 'mm',
        up: '+z',
        cuts: [{ axis: 2, keep: 'above', atMm: 50 }],
        pieces: { leaveOut: [cornerOf(low, 120)] },
      }),
    );
    expect(size.findings.find(({ code }) => code === 'PIECE_LOST')?.values.count).toBe(1);
    // Above z = 50: half of the first, and 30 x 20 x 40.
    expectClose(size.volumeCm3.value, 524, EXACT);
  });
});

describe('specks, hollows and solids in solids, decided against the rule', () => {
  it('troll: six specks count, and the volume grows by exactly what they hold', () => {
    const { file, speck_volume_mm3 } = truthOf('quay-troll-scan.stl');
    const troll = sampleScan(file);
    const taped = [{ along: 'tall', lengthMm: 290.85 }] as const;
    const without = valueOf(sizeScan(troll, { up: '+y', taped }));
    // By the unit, so that the specks, which lie beside the head, cannot move the scale.
    const plain = valueOf(sizeScan(troll, { up: '+y', fileUnit: 'in' }));
    const size = valueOf(sizeScan(troll, { up: '+y', fileUnit: 'in', pieces: { countSpecks: true } }));
    const taken = size.findings.find(({ code }) => code === 'PIECES_TAKEN');
    expect(taken?.values).toMatchObject({ part: 'specks', count: 6 });
    expectClose(
      size.volumeCm3.value - plain.volumeCm3.value,
      speck_volume_mm3! / 1000,
      1e-4,
      'truth of the specks',
    );
    expectClose(Number(taken?.values.effectCm3), speck_volume_mm3! / 1000, 1e-4, 'as the row says');
    expect(size.findings.some(({ values }) => values.part === 'islands')).toBe(false);
    expect(size.findings.some(({ values }) => values.part === 'bodies')).toBe(false);
    expectClose(without.extentsMm[2], 290.85, 1e-9);
  });

  it('a hollow ball is filled: the outer ball, by the generator', () => {
    const { file } = truthOf('hollow-sphere-50-44.stl');
    const hollow = sampleScan(file);
    const size = inMm(hollow, { fillHollows: true });
    const outer = inMm(hollow).findings.find(({ code }) => code === 'NESTED_SHELL')!;
    expectClose(size.volumeCm3.value, Number(outer.values.envelopeCm3), EXACT, 'as was offered');
    expectClose(effectsOf(size)[0]!, -Number(outer.values.effectCm3), EXACT);
    // Less than 4/3 pi 50^3 by the facets.
    expectClose(size.volumeCm3.value, ((4 / 3) * Math.PI * 50 ** 3) / 1000, 0.004);
    expect(size.findings.some(({ code }) => code === 'NESTED_SHELL')).toBe(false);
  });

  it('a box with a box inside that faces the same way is taken for a hollow: 114 cm3 of 120', () => {
    const nested = scanOf(joined(box([60, 50, 40]), moved(box([30, 20, 10]), [10, 10, 10])));
    const plain = inMm(nested);
    expectClose(plain.volumeCm3.value, 120, EXACT);
    const offered = plain.findings.find(({ code }) => code === 'NESTED_SHELL')!;
    const size = inMm(nested, { hollowInner: true });
    expectClose(size.volumeCm3.value, 114, EXACT);
    expectClose(Number(offered.values.hollowCm3), 114, EXACT, 'as was offered');
    expectClose(effectsOf(size)[0]!, -6, EXACT);
    expect(size.findings.some(({ code }) => code === 'INSIDE_OUT')).toBe(false);
  });

  it('the same where all of the file is inside out', () => {
    const nested = scanOf(reversed(joined(box([60, 50, 40]), moved(box([30, 20, 10]), [10, 10, 10]))));
    expectClose(inMm(nested, { hollowInner: true }).volumeCm3.value, 114, EXACT);
  });

  it('a solid in a filled hollow adds nothing', () => {
    const onion = scanOf(
      joined(
        box([60, 60, 60]),
        reversed(moved(box([40, 40, 40]), [10, 10, 10])),
        moved(box([20, 20, 20]), [20, 20, 20]),
      ),
    );
    expectClose(inMm(onion).volumeCm3.value, 216 - 64 + 8, EXACT);
    expectClose(inMm(onion, { fillHollows: true }).volumeCm3.value, 216, EXACT);
  });

  it('decisions that find nothing change nothing and are no rows', () => {
    const ball = scanOf(sphere(50, 24));
    const size = inMm(ball, { countSpecks: true, fillHollows: true, hollowInner: true });
    expect(size.volumeCm3.value).toBe(inMm(ball).volumeCm3.value);
    expect(size.findings).toEqual([]);
  });
});

/** Vertices at the same place become one, as a reader does. */
function weldedByHand({ positions, triangles }: TriangleMesh): TriangleMesh {
  const known = new Map<string, number>();
  const points: number[] = [];
  const numbers = Array.from({ length: positions.length / 3 }, (_, v) => {
    const at = [...positions.subarray(3 * v, 3 * v + 3)];
    const key = at.join(' ');
    const found = known.get(key);
    if (found !== undefined) return found;
    known.set(key, points.length / 3);
    points.push(...at);
    return points.length / 3 - 1;
  });
  return { positions: Float64Array.from(points), triangles: triangles.map((v) => numbers[v]!) };
}
