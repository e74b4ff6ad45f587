import { describe, expect, it } from 'vitest';
import { SAMPLE_BOOK } from '../../../src/job/sampleBook';
import { learnResidue, residueAt, residueUG } from '../../../src/yield/learn/residue';
import { expectClose } from '../../support/close';
import { problemOf, valueOf } from '../../support/outcome';
import { expectPrinted } from '../../support/printed';

describe('residue on mixed mass', () => {
  const line = valueOf(learnResidue(SAMPLE_BOOK));

  it('the twelve pours of the sample book: 13.7 g + 2.02 %, scatter 3.1 g (worked out beforehand)', () => {
    expect(line).toMatchObject({ way: 'line', pours: 12 });
    expectPrinted(line.fixedG!.value, '13.7');
    expectPrinted(100 * line.perMixed!.value, '2.02');
    expectPrinted(line.scatterG!, '3.1');
    expect(line.perMixed!.low).toBeGreaterThan(0);
    const at = residueAt(line, 588);
    expectClose(at.value, line.fixedG!.value + 588 * line.perMixed!.value, 1e-12);
    expect(at.from).toBe('learned');
    expect(at.high - at.low).toBeGreaterThan(2 * 1.645 * line.scatterG!);
  });

  it('three points by hand: residues 10, 20, 31 of 100, 200, 300 g', () => {
    // Means 200 and 61/3; slope sum((x - 200)(y - 61/3)) / sum((x - 200)^2) = 2100 / 20000.
    const three = valueOf(
      learnResidue([10, 20, 31].map((residueG, i) => ({ mixedG: 100 * (i + 1), residueG }))),
    );
    expectClose(three.perMixed!.value, 0.105, 1e-12);
    expectClose(three.fixedG!.value, 61 / 3 - 21, 1e-10);
    // Off the line by 1/6, -1/3, 1/6: squares 1/6 over one degree of freedom.
    expectClose(three.scatterG!, Math.sqrt(1 / 6), 1e-10);
    // With three pours of 3 g more: squares 1/6 + 27 over 4; Student's t of 4 at 95 % is 2.131847 (published tables).
    const scatterG = Math.sqrt((1 / 6 + 27) / 4);
    const slopeHalf = (2.131847 * scatterG) / Math.sqrt(20_000);
    expectClose(three.perMixed!.low, 0.105 - slopeHalf, 1e-5);
    expectClose(three.perMixed!.high, 0.105 + slopeHalf, 1e-5);
    const fixedHalf = 2.131847 * scatterG * Math.sqrt(1 / 3 + 200 ** 2 / 20_000);
    expectClose(three.fixedG!.low, 61 / 3 - 21 - fixedHalf, 1e-5);
    expectClose(three.fixedG!.high, 61 / 3 - 21 + fixedHalf, 1e-5);
  });

  it('three pours that happen to agree claim no certainty: 3 g of scatter count as three pours more', () => {
    const lucky = valueOf(
      learnResidue([
        { mixedG: 100, residueG: 10 },
        { mixedG: 200, residueG: 20 },
        { mixedG: 300, residueG: 30 },
      ]),
    );
    expect(residueUG(lucky, 200)).toBeGreaterThan(2);
    // 1 + 3 degrees of freedom; scale 3 sqrt(3/4 (1 + 1/3)) = 3; deviation sqrt(4/2) of that.
    expectClose(residueUG(lucky, 200), 3 * Math.SQRT2, 1e-9);
  });

  it('under three pours: the default hold-up of 30 g +- 10 g, and it says so', () => {
    const two = valueOf(learnResidue(SAMPLE_BOOK.slice(0, 2)));
    expect(two).toEqual({ way: 'default', pours: 2 });
    const at = residueAt(two, 500);
    expect(at).toMatchObject({ value: 30, from: 'assumed' });
    expectClose(at.low, 30 - 1.644853627 * 10, 1e-8);
    expectClose(at.high, 30 + 1.644853627 * 10, 1e-8);
    expect(residueUG(two, 500)).toBe(10);
  });

  it('pours of one mass give a mean that holds near that mass only', () => {
    const same = valueOf(learnResidue([20, 22, 24].map((residueG) => ({ mixedG: 500, residueG }))));
    expect(same.way).toBe('mean');
    expect(residueAt(same, 510)).toMatchObject({ value: 22, from: 'learned' });
    expect(residueAt(same, 900)).toMatchObject({ value: 30, from: 'assumed' });
    // A quarter of 500 g either way.
    expect([374, 376, 624, 626].map((mixedG) => residueAt(same, mixedG).from)).toEqual([
      'assumed',
      'learned',
      'learned',
      'assumed',
    ]);
    // Squares 8 + 27 over 5, and a third more for the next pour; Student's t of 5 at 95 % is 2.015048 (published tables).
    const half = 2.015048 * Math.sqrt(7 * (4 / 3));
    expectClose(residueAt(same, 500).low, 22 - half, 1e-5);
    expectClose(residueAt(same, 500).high, 22 + half, 1e-5);
    expectClose(same.fixedG!.high, 22 + 2.015048 * Math.sqrt(7 / 3), 1e-5);
    expect(same.meanMixedG).toBe(500);
  });

  it('is never below nothing', () => {
    const steep = valueOf(
      learnResidue([0, 30, 61].map((residueG, i) => ({ mixedG: 500 + 100 * i, residueG }))),
    );
    expect(residueAt(steep, 50)).toMatchObject({ value: 0, low: 0 });
  });

  it('refuses a residue that is no number', () => {
    expect(problemOf(learnResidue([{ mixedG: 500, residueG: Number.NaN }])).values.input).toBe('residueG');
  });
});
