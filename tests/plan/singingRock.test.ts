import { describe, expect, it } from 'vitest';
import { sizeScan, type Cut, type Size } from '../../src/plan';
import type { Problem } from '../../src/problem';
import { expectClose } from '../support/close';
import { problemOf, valueOf } from '../support/outcome';
import { sampleScan, truthOf } from '../support/samples';

/**
 * The rock as scanned: inches nobody mentions, inside out, the board it stands on in one surface with it. Truth: the clean rock
 * without the board, measured by the generator (sample-meshes/README.md).
 */
const scan = sampleScan('singing-rock-scan.obj');
const truth = truthOf('singing-rock-scan.obj');
const board = truth.board!;
const truthCm3 = truth.clean_volume_mm3 / 1000;

const sized = (...cuts: Cut[]): Size => valueOf(sizeScan(scan, { fileUnit: 'in', cuts }));
const found = (size: Size, code: string): Problem | undefined => size.findings.find((f) => f.code === code);
const asItIs = sized();
const floorFound = found(asItIs, 'FLOOR_FOUND');
const topMm = Number(floorFound?.values.topMm);
const proposed: Cut = { axis: 2, keep: 'above', atUnits: Number(floorFound?.values.topUnits) };

function expectHolds({ volumeCm3 }: Size, cm3: number): void {
  expect(volumeCm3.low).toBeLessThanOrEqual(cm3);
  expect(volumeCm3.high).toBeGreaterThanOrEqual(cm3);
}

describe('with its board', () => {
  it('is named inside out, and the volume is what the generator sums with the opposite sign', () => {
    expect(found(asItIs, 'INSIDE_OUT')?.values).toMatchObject({ count: 1 });
    expectClose(1000 * asItIs.volumeCm3.value, -truth.file_volume_mm3!, 1e-9, 'volume with the board');
    expect(asItIs).toMatchObject({ closed: true, pieces: 1, method: 'exact', triangles: truth.triangles });
  });

  it('finds the board: its top to within its noise, and its area less what the rock stands on', () => {
    expect(Math.abs(topMm - board.top_mm)).toBeLessThanOrEqual(board.noise_mm);
    const topMm2 = board.size_mm[0] * board.size_mm[1] - truth.rim_area_mm2!;
    // The facets lean by up to 0.2 mm in 30: the area in plan falls short by less than 1e-4.
    expectClose(100 * Number(floorFound?.values.areaCm2), topMm2, 1e-4, 'area of the top');
  });

  it('without a unit there is no volume: SCALE_UNKNOWN with the height in file units', () => {
    const problem = problemOf(sizeScan(scan));
    expect(problem.code).toBe('SCALE_UNKNOWN');
    expectClose(Number(problem.values.tallUnits), truth.extents_mm[2] / 25.4, 1e-6, 'tall');
  });
});

describe('the board cut off at the height that is proposed', () => {
  const size = sized(proposed);

  it('the range holds the truth', () => {
    expectHolds(size, truthCm3);
    expect(found(size, 'CUT_AWAY')?.status).toBe('fine');
  });

  it('nothing of the board is left: one piece, as large as the generator made it', () => {
    expect(size).toMatchObject({ pieces: 1, holes: 0, closed: true });
    const [wide, deep, tall] = truth.clean_extents_mm!;
    expectClose(size.extentsMm[0], wide, 1e-6, 'wide, written to 1e-4 in');
    expectClose(size.extentsMm[1], deep, 1e-6, 'deep');
    expectClose(size.extentsMm[2], tall - topMm, 1e-6, 'tall');
  });

  it('the tape across the rock gives inches back, and the range holds the truth', () => {
    const taped = [{ along: 'wide', lengthMm: truth.clean_extents_mm![0] }] as const;
    const byTape = valueOf(sizeScan(scan, { taped, cuts: [proposed] }));
    expectClose(byTape.scale.mmPerUnit, 25.4, 1e-6, 'millimeters per unit');
    expectHolds(byTape, truthCm3);
  });
});

it('rock less core is the cavity, whatever the place of the core: its file says 30 mm in x', () => {
  const truthOfCore = truthOf('singing-rock-core.obj');
  const core = valueOf(sizeScan(sampleScan('singing-rock-core.obj'), { fileUnit: 'in' }));
  expectClose(1000 * core.volumeCm3.value, truthOfCore.clean_volume_mm3, 1e-9, 'core');
  const rock = sized(proposed);
  const cavityCm3 = truthOfCore.cavity_mm3! / 1000;
  expect(rock.volumeCm3.low - core.volumeCm3.high).toBeLessThanOrEqual(cavityCm3);
  expect(rock.volumeCm3.high - core.volumeCm3.low).toBeGreaterThanOrEqual(cavityCm3);
});
