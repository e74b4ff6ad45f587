import { describe, expect, it } from 'vitest';
import type { ScanFile } from '../../src/geometry';
import { sizeScan, type Size, type SizeOptions } from '../../src/plan';
import { expectClose } from '../support/close';
import { lcg } from '../support/lcg';
import { jittered } from '../support/looseCorners';
import { joined, moved } from '../support/meshTools';
import { scanOf } from '../support/moldBench';
import { valueOf } from '../support/outcome';
import { box } from '../support/shapes';

const sized = (scan: ScanFile, options: SizeOptions): Size =>
  valueOf(sizeScan(scan, { fileUnit: 'mm', up: '+z', ...options }));

const codesOf = ({ findings }: Size): string[] => findings.map(({ code }) => code);

/** Corners moved by 0.01 mm rms change a box of these sides by less than this share (its area times the move, over its volume). */
const NEAR = 2e-3;

// By hand: 100 x 100 x 100 = 1000 cm3, and 60 x 50 x 40 = 120 cm3 beside it.
describe.each([1, 2, 3])('two boxes of which no facet shares a corner with the next, seed %d', (seed) => {
  const two = joined(box([100, 100, 100]), moved(box([60, 50, 40]), [200, 0, 0]));
  const loose = scanOf(jittered(two, 0.01, lcg(seed)));

  it('are merged, told, and hold both volumes', () => {
    const size = sized(loose, {});
    expect(codesOf(size)).toContain('WELDED');
    expectClose(size.volumeCm3.value, 1120, NEAR);
    expect(size.volumeCm3.low < 1120 && 1120 < size.volumeCm3.high).toBe(true);
  });

  it('cut level at 30 mm keep what is above: the face of the cut is closed flat, and is no hole', () => {
    const size = sized(loose, { cuts: [{ axis: 2, atMm: 30, keep: 'above' }] });
    // 100 x 100 x 70 and 60 x 50 x 10.
    expectClose(size.volumeCm3.value, 730, NEAR);
    expect(size.volumeCm3.low < 730 && 730 < size.volumeCm3.high).toBe(true);
    expect(codesOf(size)).toContain('CUT_AWAY');
    expect(size.holes).toBe(0);
  });

  it('one left out by a corner of the file: the other stays', () => {
    const { shells } = sized(loose, {});
    expect(shells.map(({ holdsCm3 }) => Math.round(holdsCm3))).toEqual([1000, 120]);
    const size = sized(loose, { pieces: { leaveOut: [shells[1]!.corner!] } });
    expectClose(size.volumeCm3.value, 1000, NEAR);
    expect(size.shells.map(({ isLeftOut }) => isLeftOut === true)).toEqual([false, true]);
  });

  it('a hollow left open below, of few facets: its rim is not taken for cracks, nor its floor merged with its roof', () => {
    const { positions, triangles } = box([60, 50, 10]);
    const isBelow = (v: number): boolean => positions[3 * v + 2] === 0;
    const open = triangles.filter((_, at) => {
      const first = at - (at % 3);
      return !triangles.subarray(first, first + 3).every(isBelow);
    });
    const size = sized(scanOf(jittered({ positions, triangles: open }, 0.01, lcg(seed))), {});
    expectClose(size.volumeCm3.value, 30, NEAR);
    expect(size.volumeCm3.low < 30 && 30 < size.volumeCm3.high).toBe(true);
  });

  it('both at once: the large one, cut', () => {
    const { shells } = sized(loose, {});
    const size = sized(loose, {
      cuts: [{ axis: 2, atMm: 30, keep: 'above' }],
      pieces: { leaveOut: [shells[1]!.corner!] },
    });
    expectClose(size.volumeCm3.value, 700, NEAR);
  });
});
