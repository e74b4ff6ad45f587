import { describe, expect, it } from 'vitest';
import type { ScanFile, TriangleMesh } from '../../src/geometry';
import { FILE_UNITS, sizeScan, TAPE_TOLERANCE_MM, type Along } from '../../src/plan';
import { expectClose } from '../support/close';
import { joined, moved, scaled } from '../support/meshTools';
import { problemOf, valueOf } from '../support/outcome';
import { box, sphere } from '../support/shapes';

const scanOf = (mesh: TriangleMesh): ScanFile => ({
  mesh,
  format: 'stl',
  trianglesRead: mesh.triangles.length / 3,
  coordinateStep: 0,
  findings: [],
});

describe('units of a file, exact by definition (NIST SP 811, appendix B: 1 in = 0.0254 m, 1 ft = 0.3048 m)', () => {
  it('in millimeters', () => {
    expect(FILE_UNITS).toEqual({ mm: 1, cm: 10, m: 1000, in: 0.0254 * 1000, ft: 304.8 });
    expectClose(
      FILE_UNITS.ft,
      12 * FILE_UNITS.in,
      1e-15,
      'a foot is twelve inches, to the rounding of one product',
    );
  });

  it.each(Object.entries(FILE_UNITS))(
    'a box of 264 x 230 x 291 mm written in %s has the same volume',
    (unit, factor) => {
      const size = valueOf(
        sizeScan(scanOf(scaled(box([264, 230, 291]), 1 / factor)), {
          fileUnit: unit as keyof typeof FILE_UNITS,
        }),
      );
      expectClose(size.volumeCm3.value, (264 * 230 * 291) / 1000, 1e-12);
      expect(size.scale).toMatchObject({ fileUnit: unit, from: 'given', doubtShare: 0 });
      expect(size.findings).toEqual([]);
    },
  );

  it('a scale that is no unit is told as its length', () => {
    const size = valueOf(sizeScan(scanOf(box([1, 1, 1])), { taped: [{ along: 'tall', lengthMm: 37.5 }] }));
    expect(size.scale.fileUnit).toBe('37.5 mm');
  });
});

describe('a taped length sets the scale', () => {
  it.each<[Along, number]>([
    ['wide', 40],
    ['deep', 30],
    ['tall', 20],
  ])('%s: the box is 40 wide, 30 deep, 20 tall', (along, units) => {
    const size = valueOf(sizeScan(scanOf(box([40, 30, 20])), { taped: [{ along, lengthMm: 3 * units }] }));
    expectClose(size.volumeCm3.value, (27 * 24_000) / 1000, 1e-12);
    expectClose(size.scale.doubtShare, TAPE_TOLERANCE_MM / (3 * units), 1e-12);
  });

  it('a span between two points of the file is taken before a taped extent, and a named unit last', () => {
    const size = valueOf(
      sizeScan(scanOf(box([3, 4, 12])), {
        span: { from: [0, 0, 0], to: [3, 4, 12], lengthMm: 130 },
        taped: [{ along: 'tall', lengthMm: 132 }],
        fileUnit: 'cm',
      }),
    );
    expectClose(size.scale.mmPerUnit, 10, 1e-12, '13 units are 130 mm (3-4-12-13, Pythagoras)');
    expect(size.scale.disagreements.map((d) => d.by)).toEqual(['tall', 'file unit']);
    expectClose(size.scale.disagreements[0]!.share, 0.1, 1e-9);
  });

  it.each([
    [1.009, false],
    [1.011, true],
    [0.991, false],
    [0.989, true],
  ])('a tape that reads %d of what the unit says: a finding is %s', (factor, said) => {
    const size = valueOf(
      sizeScan(scanOf(box([200, 200, 200])), {
        taped: [
          { along: 'tall', lengthMm: 200 },
          { along: 'wide', lengthMm: 200 * factor },
        ],
      }),
    );
    expect(size.findings.some((f) => f.code === 'UNITS_SUSPECT' && f.values.part === 'disagree')).toBe(said);
  });

  it('a speck above the head does not stretch it', () => {
    const mesh = joined(sphere(50, 36), moved(box([1, 1, 1]), [0, 0, 80]));
    const size = valueOf(sizeScan(scanOf(mesh), { taped: [{ along: 'tall', lengthMm: 100 }] }));
    expectClose(size.scale.mmPerUnit, 1, 1e-9);
  });

  it('a size no shop casts in one piece is asked about: 5 mm, and 4 m', () => {
    for (const edge of [5, 4000]) {
      const size = valueOf(sizeScan(scanOf(box([edge, edge, edge])), { fileUnit: 'mm' }));
      expect(
        size.findings.some((f) => f.code === 'UNITS_SUSPECT' && f.values.part === 'size'),
        `${edge} mm`,
      ).toBe(true);
    }
  });

  it('a span of no length: SCALE_UNREACHED', () => {
    expect(
      problemOf(sizeScan(scanOf(box([1, 1, 1])), { span: { from: [1, 1, 1], to: [1, 1, 1], lengthMm: 100 } }))
        .code,
    ).toBe('SCALE_UNREACHED');
  });
});

describe('a taped height of what a cut leaves: the piece that is measured is exactly that tall', () => {
  // The column is 100 units tall; what stays above a cut at z mm is taped: scale s = (tape + z) / 100 (derived by hand).
  const column = scanOf(box([20, 30, 100]));
  it.each([
    [10, 290],
    [100, 290],
    [190, 290],
    [200, 100],
    [580, 290],
  ])('cut at %d mm, %d mm left', (atMm, lengthMm) => {
    const size = valueOf(
      sizeScan(column, { taped: [{ along: 'tall', lengthMm }], cuts: [{ axis: 2, atMm, keep: 'above' }] }),
    );
    const s = (lengthMm + atMm) / 100;
    expectClose(size.extentsMm[2], lengthMm, 1e-8, 'height of the piece');
    expectClose(size.scale.mmPerUnit, s, 1e-8, 'scale');
    expectClose(size.volumeCm3.value, (20 * s * 30 * s * lengthMm) / 1000, 3e-8, 'volume');
  });

  it('what is kept below a cut at 50 mm can not be 60 mm tall: SCALE_UNREACHED', () => {
    expect(
      problemOf(
        sizeScan(column, {
          taped: [{ along: 'tall', lengthMm: 60 }],
          cuts: [{ axis: 2, atMm: 50, keep: 'below' }],
        }),
      ).code,
    ).toBe('SCALE_UNREACHED');
  });

  it('a cut across does not change the height: a column cut in width', () => {
    const size = valueOf(
      sizeScan(column, {
        taped: [{ along: 'tall', lengthMm: 200 }],
        cuts: [{ axis: 0, atMm: 30, keep: 'below' }],
      }),
    );
    expectClose(size.scale.mmPerUnit, 2, 1e-12);
    expectClose(size.volumeCm3.value, (30 * 60 * 200) / 1000, 1e-9);
  });

  it('a cut beyond the piece leaves nothing: CUT_EMPTY', () => {
    expect(
      problemOf(sizeScan(column, { fileUnit: 'mm', cuts: [{ axis: 2, atMm: 101, keep: 'above' }] })).code,
    ).toBe('CUT_EMPTY');
  });
});

it('progress runs from 0 to 1 and never back', () => {
  const shares: number[] = [];
  valueOf(sizeScan(scanOf(sphere(50, 24)), { fileUnit: 'mm', onProgress: (share) => shares.push(share) }));
  expect(shares.at(-1)).toBe(1);
  expect([...shares].sort((a, b) => a - b)).toEqual(shares);
});
