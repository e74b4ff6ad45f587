import { describe, expect, it } from 'vitest';
import { sizeScan, type Size } from '../../src/plan';
import { say } from '../../src/words/say';
import { sizeBecause } from '../../src/words/sizeWords';
import { expectClose } from '../support/close';
import { valueOf } from '../support/outcome';
import { withTriangles, trianglesOf } from '../support/meshTools';
import { sampleScan, truthOf } from '../support/samples';

/**
 * The eel as scanned: 3 % small, five T-junctions, its fin an open sheet without thickness. Truth: the clean body without the
 * fin, measured by the generator (sample-meshes/README.md).
 */
const scan = sampleScan('lamp-eel-scan.stl');
const truth = truthOf('lamp-eel-scan.stl');
const truthCm3 = truth.clean_volume_mm3 / 1000;
const taped = [{ along: 'wide', lengthMm: truth.tape_wide_mm! }] as const;

const whole = valueOf(sizeScan(scan, { taped }));
const finless = valueOf(sizeScan(withoutFin(), { taped }));

/** The sheet stands last in the file, with points of its own. */
function withoutFin(): typeof scan {
  const { mesh } = scan;
  const triples = trianglesOf(mesh).slice(0, truth.triangles - truth.fin_triangles!);
  return { ...scan, mesh: withTriangles(mesh, triples), trianglesRead: triples.length };
}

describe.each<[string, Size]>([
  ['as it is', whole],
  ['its fin taken out of the file', finless],
])('the eel, %s, taped 520 mm along x', (_, size) => {
  it('the tape makes up for the 3 %', () => {
    // The tape is good to 1 mm in 520, and it is laid along 519.81 mm of facets.
    expectClose(size.scale.mmPerUnit, 1 / truth.scale!, 1 / truth.tape_wide_mm!, 'millimeters per unit');
  });

  it('the range holds the truth of the body', () => {
    expect(size.volumeCm3.low).toBeLessThanOrEqual(truthCm3);
    expect(size.volumeCm3.high).toBeGreaterThanOrEqual(truthCm3);
  });

  it('names its five T-junctions as seams without a width, which hold no volume', () => {
    const seams = size.findings.find((f) => f.code === 'NOT_CLOSED' && f.values.part === 'seams');
    expect(seams).toMatchObject({
      status: 'fine',
      values: { count: truth.t_junctions!.length, effectCm3: 0 },
    });
  });
});

describe('the fin, a sheet without thickness', () => {
  const sheets = whole.findings.find((f) => f.code === 'NOT_CLOSED' && f.values.part === 'sheets');

  it('is left out and named, and what is left is the body to the last digit', () => {
    expect(sheets).toMatchObject({ status: 'look', values: { count: 1 } });
    expectClose(whole.volumeCm3.value, finless.volumeCm3.value, 1e-12, 'volume');
    expectClose(whole.areaCm2, finless.areaCm2, 1e-12, 'area');
    for (const k of [0, 1, 2]) expectClose(whole.extentsMm[k]!, finless.extentsMm[k]!, 1e-12, 'extent');
  });

  it('widens the range by nothing: the tape alone is in doubt, three times 1 mm in 520', () => {
    const { value, low, high } = whole.volumeCm3;
    expectClose(high - low, finless.volumeCm3.high - finless.volumeCm3.low, 1e-12, 'width of the range');
    expect((high - low) / 2 / value).toBeLessThan(3.1 / truth.tape_wide_mm!);
  });

  it('the words say what is left out, and that it is not in the volume', () => {
    expect(say(sheets!).text).toBe('1 loose sheet left out.');
    expect(sizeBecause(whole)).toContain('1 loose sheet is left out: the volume holds nothing of it.');
    expect(sizeBecause(finless).join(' ')).not.toContain('sheet');
  });
});

it('without its fin the body is within 0.6 % of the truth: three times what the tape is good for', () => {
  expectClose(finless.volumeCm3.value, truthCm3, 3 / truth.tape_wide_mm!, 'volume');
  expect(finless).toMatchObject({ pieces: 1, holes: 0, method: 'exact' });
  const [wide, deep, tall] = truth.clean_extents_mm!;
  for (const [k, mm] of [wide, deep, tall].entries())
    expectClose(finless.extentsMm[k]!, mm, 1 / truth.tape_wide_mm!, 'extent');
});

it('said to be in mm it is 9 % short, and a tape beside the unit says by how much they differ', () => {
  const asFile = valueOf(sizeScan(withoutFin(), { fileUnit: 'mm' }));
  expectClose(1000 * asFile.volumeCm3.value, truth.clean_volume_mm3 * truth.scale! ** 3, 1e-6, 'volume');
  const both = valueOf(sizeScan(scan, { taped, fileUnit: 'mm' }));
  const suspect = both.findings.find((f) => f.code === 'UNITS_SUSPECT');
  expect(suspect).toMatchObject({ status: 'look', values: { part: 'disagree', by: 'file unit' } });
  expectClose(Number(suspect?.values.share), truth.scale! - 1, 0.02, 'share, the tape good to 0.2 % of 3 %');
});
