import { describe, expect, it } from 'vitest';
import type { ScanFile, TriangleMesh } from '../../src/geometry';
import { SAME_SCALE_SHARE, sizeScan, TAPE_TOLERANCE_MM, type Size } from '../../src/plan';
import type { Problem } from '../../src/problem';
import { say } from '../../src/words/say';
import { expectClose } from '../support/close';
import { problemOf, valueOf } from '../support/outcome';
import { sampleScan, truthOf } from '../support/samples';
import { box } from '../support/shapes';

const scanOf = (mesh: TriangleMesh): ScanFile => ({
  mesh,
  format: 'stl',
  trianglesRead: mesh.triangles.length / 3,
  coordinateStep: 0,
  findings: [],
});

const suspectIn = ({ findings }: Size): Problem | undefined =>
  findings.find(({ code, values }) => code === 'UNITS_SUSPECT' && values.part === 'disagree');

// 3-4-12-13: the space diagonal of the box is 13 units (Pythagoras).
const brick = scanOf(box([30, 40, 120]));
const diagonal = { from: [0, 0, 0], to: [30, 40, 120] } as const;

describe('a second distance checks the first and sets nothing', () => {
  it('two points beside a taped height: the height is the scale, the points agree or not', () => {
    const at = (lengthMm: number): Size =>
      valueOf(
        sizeScan(brick, {
          taped: [{ along: 'tall', lengthMm: 240 }],
          span: { ...diagonal, lengthMm },
          scaleBy: 'tall',
        }),
      );
    const good = at(261);
    expectClose(good.scale.mmPerUnit, 2, 1e-12);
    expect(good.scale).toMatchObject({ by: 'tall', from: 'taped', unreached: [] });
    expectClose(good.scale.disagreements[0]!.share, 261 / 260 - 1, 1e-9);
    expect(suspectIn(good)).toBeUndefined();
    expectClose(good.scale.doubtShare, TAPE_TOLERANCE_MM / 240, 1e-12, 'of the tape that is the scale');
    const off = at(268);
    expectClose(off.scale.mmPerUnit, 2, 1e-12);
    expect(suspectIn(off)).toMatchObject({ status: 'look', values: { by: 'span', scaleBy: 'tall' } });
  });

  it('the same two without a word: the points go first, as on the command line', () => {
    const size = valueOf(
      sizeScan(brick, { taped: [{ along: 'tall', lengthMm: 240 }], span: { ...diagonal, lengthMm: 130 } }),
    );
    expectClose(size.scale.mmPerUnit, 1, 1e-12);
    expect(size.scale.by).toBe('span');
  });

  it('taken for the scale instead, it is one, and the first checks it', () => {
    const taped = [
      { along: 'tall', lengthMm: 240 },
      { along: 'wide', lengthMm: 63 },
    ] as const;
    const [first, second] = (['tall', 'wide'] as const).map((scaleBy) =>
      valueOf(sizeScan(brick, { taped, scaleBy })),
    ) as [Size, Size];
    expectClose(first.scale.mmPerUnit, 2, 1e-12);
    expectClose(second.scale.mmPerUnit, 2.1, 1e-12);
    // What the row of the first said would happen: 1.05 cubed.
    const values = suspectIn(first)!.values;
    expectClose(Number(values.share), 0.05, 1e-9);
    expectClose(Number(values.otherwiseCm3), second.volumeCm3.value - first.volumeCm3.value, 1e-9);
    expectClose(second.volumeCm3.value / first.volumeCm3.value, 1.05 ** 3, 1e-12);
  });

  it.each([
    [1.009, undefined],
    [1.011, 'look'],
    [0.989, 'look'],
    [1.11, 'stop'],
  ])('it reads %d of what it should: %s; 1 % is where it is told', (factor, status) => {
    expect(SAME_SCALE_SHARE).toBe(0.01);
    const size = valueOf(
      sizeScan(brick, {
        fileUnit: 'mm',
        span: { ...diagonal, lengthMm: 130 * factor },
        scaleBy: 'file unit',
      }),
    );
    expect(suspectIn(size)?.status).toBe(status);
    expectClose(size.scale.mmPerUnit, 1, 1e-12);
  });

  it('a second distance that fits no scale is not checked, and takes no volume away', () => {
    // Below a cut at 50 mm nothing is 60 mm tall.
    const cuts = [{ axis: 2, atMm: 50, keep: 'below' }] as const;
    const taped = [{ along: 'tall', lengthMm: 60 }] as const;
    const size = valueOf(sizeScan(brick, { fileUnit: 'mm', taped, cuts, scaleBy: 'file unit' }));
    expectClose(size.volumeCm3.value, 60, 1e-12);
    expect(size.findings.find(({ values }) => values.part === 'unreached')).toMatchObject({
      status: 'unknown',
      values: { by: 'tall' },
    });
    expect(problemOf(sizeScan(brick, { fileUnit: 'mm', taped, cuts })).code).toBe('SCALE_UNREACHED');
  });

  it('two points on the same spot check nothing', () => {
    const span = { from: [1, 1, 1], to: [1, 1, 1], lengthMm: 100 } as const;
    const size = valueOf(sizeScan(brick, { fileUnit: 'mm', span, scaleBy: 'file unit' }));
    expect(size.scale.unreached).toEqual(['span']);
  });

  it('a measure that was not given is no scale: SCALE_UNKNOWN', () => {
    expect(problemOf(sizeScan(brick, { fileUnit: 'mm', scaleBy: 'wide' })).code).toBe('SCALE_UNKNOWN');
  });
});

describe('Lamp Eel: the scan is 3 % small, and says mm', () => {
  const { scale, tape_wide_mm } = truthOf('lamp-eel-scan.stl');
  const eel = sampleScan('lamp-eel-scan.stl');
  const taped = [{ along: 'wide', lengthMm: tape_wide_mm! }] as const;
  const size = valueOf(sizeScan(eel, { fileUnit: 'mm', taped, scaleBy: 'file unit' }));

  it('the unit stays the scale, and the tape warns by the share the generator took', () => {
    expectClose(size.scale.mmPerUnit, 1, 1e-12);
    const suspect = suspectIn(size)!;
    expect(suspect).toMatchObject({ status: 'look', values: { by: 'wide', scaleBy: 'file unit' } });
    // 1 / 0.97 - 1 = 3.09 %; its bounds are in the grid's steps, 0.04 % of the tape.
    expectClose(Number(suspect.values.share), 1 / scale! - 1, 0.02);
  });

  it('in words: which, how far off, in length and in volume, and what to do', () => {
    const { text, hint } = say(suspectIn(size)!);
    expect(text).toBe(
      'By the taped width the piece would be 3.1 % larger than by the file unit, which is used: 9.7 % in volume.',
    );
    // The scan is 0.97 of what it should be, so 3 % too small: of itself it lacks 3.1 %.
    expect(hint).toContain('the scan is stretched or 3 % too small');
  });

  it('taken for the scale, the tape gives the volume of the clean eel', () => {
    const byTape = valueOf(sizeScan(eel, { fileUnit: 'mm', taped, scaleBy: 'wide' }));
    const truthCm3 = truthOf('lamp-eel-scan.stl').clean_volume_mm3 / 1000;
    expectClose(byTape.volumeCm3.value, truthCm3, 3 / tape_wide_mm!, 'three times what the tape is good for');
  });
});
