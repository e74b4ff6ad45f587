import { expect, it } from 'vitest';
import { sizeScan } from '../../src/plan';
import { say } from '../../src/words/say';
import { sizeBecause } from '../../src/words/sizeWords';
import { expectClose } from '../support/close';
import { valueOf } from '../support/outcome';
import { sampleScan, truthOf } from '../support/samples';

/**
 * A scan that looks closed: the thumb is a shell of its own that reaches into the palm, facets are doubled and turned over, two
 * fingers touch along one edge. Truth: the union of both shells, cut facet by facet by the generator (sample-meshes/README.md).
 */
const scan = sampleScan('lighthouse-hand-scan.stl');
const truth = truthOf('lighthouse-hand-scan.stl');
const truthCm3 = truth.clean_volume_mm3 / 1000;
const size = valueOf(sizeScan(scan, { fileUnit: 'mm' }));

/** What the project promises for overlaps: measured along lines, not by a sum. */
const BY_LINES = 1e-4;

it('the volume is that of the union, and its range holds the truth', () => {
  expect(size.method).toBe('field');
  expectClose(size.volumeCm3.value, truthCm3, BY_LINES, 'volume');
  expect(size.volumeCm3.low).toBeLessThanOrEqual(truthCm3);
  expect(size.volumeCm3.high).toBeGreaterThanOrEqual(truthCm3);
});

it('the range is narrow enough to tell the union from the plain sum of the shells', () => {
  expect(size.volumeCm3.high).toBeLessThan(truth.shells_volume_mm3! / 1000);
});

it('names the overlap, with what it would have added', () => {
  const overlap = size.findings.find((f) => f.code === 'SELF_INTERSECT');
  expect(overlap?.status).toBe('look');
  // 1e-4 of the whole is 4e-3 of the 23 cm3 that overlap.
  expectClose(-Number(overlap?.values.effectCm3), truth.overlap_volume_mm3! / 1000, 4e-3, 'overlap');
  expect(size.findings.find((f) => f.code === 'MULTI_SHELL')?.values).toMatchObject({
    part: 'bodies',
    count: 2,
  });
});

it('the area is that of all facets, more than that of the union, and the words say so', () => {
  expect(100 * size.areaCm2).toBeGreaterThan(truth.area_mm2);
  const overlap = size.findings.find((f) => f.code === 'SELF_INTERSECT')!;
  expect(say(overlap).hint).toContain('The area counts the walls inside as well.');
  expect(sizeBecause(size)).toContain('The area counts the walls inside as well.');
});

it('names as many doubled and turned facets as the generator made, and the one edge of four facets', () => {
  const valuesOf = (code: string): unknown => size.findings.find((f) => f.code === code)?.values;
  expect(valuesOf('DUPLICATE_FACES')).toMatchObject({ merged: truth.duplicates, cancelled: 0 });
  expect(valuesOf('NOT_ORIENTED')).toMatchObject({ part: 'turned', count: truth.flipped });
  expect(valuesOf('NON_MANIFOLD')).toMatchObject({ count: 1 });
});

it('is closed, of two pieces, and as large as the generator made it', () => {
  expect(size).toMatchObject({ closed: true, holes: 0, pieces: 2, triangles: truth.triangles });
  truth.extents_mm.forEach((mm, k) =>
    expectClose(size.extentsMm[k]!, mm, 1e-6, 'extent, written to 1e-4 mm'),
  );
});
