import { describe, expect, it } from 'vitest';
import { call, document } from '../support/cliCall';
import { expectClose } from '../support/close';

const BOX = 'box-40x30x20-ascii.stl';

describe('offsets', () => {
  const size = (...args: string[]) => document(['size', BOX, '--file-unit', 'mm', ...args]);
  interface Offset {
    offset_mm: number;
    volume_cm3: number;
    range_cm3: [number, number];
    area_cm2: number;
  }

  it('of a box of 40 x 30 x 20: Steiner outward, the smaller box inward, the box itself at 0', () => {
    const { result, assumptions, because } = size('--offset', '10mm', '--offset=-5mm', '--offset', '0mm');
    const offsets = result.offsets as Offset[];
    expect(offsets.map((o) => o.offset_mm)).toEqual([10, -5, 0]);
    // V + A t + (sum of edges) pi t^2 / 4 + 4/3 pi t^3, in cm3.
    const grown = 24 + 52 + (4 * 9 * Math.PI) / 4 + (4 / 3) * Math.PI;
    [grown, 3 * 2 * 1, 24].forEach((volumeCm3, i) => {
      expectClose(offsets[i]!.volume_cm3, volumeCm3, 5e-4, `offset ${offsets[i]!.offset_mm}`);
      expect(offsets[i]!.range_cm3[0]).toBeLessThanOrEqual(volumeCm3);
      expect(offsets[i]!.range_cm3[1]).toBeGreaterThanOrEqual(volumeCm3);
    });
    expectClose(offsets[1]!.area_cm2, 22, 1e-3);
    expect(assumptions).toContainEqual({ name: 'accuracy', value: 'normal', unit: '', from: 'assumed' });
    expect(because.some((line) => line.includes('voxels of'))).toBe(true);
  });

  it('a bare number is mm, a comma-free inch is read, the voxel is the one given', () => {
    const { result } = size('--offset', '1/4 in', '--offset', '6.35', '--voxel', '0.5 mm');
    const [inch, bare] = result.offsets as Offset[];
    expect(inch).toEqual(bare);
    expect(result).toMatchObject({ voxel_mm: 0.5, voxel_from: 'given' });
    expect(result.accuracy).toBeUndefined();
  });

  it('finer accuracy means smaller voxels', () => {
    const edges = ['fast', 'normal', 'fine'].map(
      (accuracy) => size('--offset', '20mm', '--accuracy', accuracy).result.voxel_mm as number,
    );
    expect(edges[0]).toBeGreaterThan(edges[1]!);
    expect(edges[1]).toBeGreaterThan(edges[2]!);
  });

  it('without an offset nothing of the field is said', () => {
    expect(Object.keys(size('--accuracy', 'fine').result)).not.toContain('offsets');
  });

  it.each([
    [['--offset', 'far']],
    [['--offset', '10mm', '--voxel', '0']],
    [['--offset', '10mm', '--workers', '0']],
    [['--offset', '10mm', '--workers', 'two']],
    [Array.from({ length: 25 }, (_, i) => ['--offset', `${i + 1}mm`]).flat()],
    [['--surface', 'skin.stl']],
    [['--offset', '1mm', '--surface', 'skin.obj']],
    [['--offset', '1mm', '--offset', '2mm', '--surface', 'skin.stl']],
  ])('%j is a wrong call', (args) => {
    expect(call(['size', BOX, '--file-unit', 'mm', ...args]).exit).toBe(2);
  });
});
