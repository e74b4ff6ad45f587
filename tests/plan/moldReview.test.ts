import { describe, expect, it } from 'vitest';
import { expectClose } from '../support/close';
import { benchOf, moldOn } from '../support/moldBench';
import { problemOf } from '../support/outcome';
import { planMold } from '../../src/plan';
import { MUSHROOM } from '../support/moldSamples';
import { sampleScan } from '../support/samples';
import { openMoldBench } from '../../src/plan';
import { valueOf } from '../support/outcome';
import { box, icosphere } from '../support/shapes';

/** What a hard reading of the answers found. */
const CUBE = benchOf(box([100, 100, 100]));

describe('the cavity that is cast', () => {
  it('of a hollow ball of 50 mm is the full ball: the hollow is no part of the mold', () => {
    const scan = sampleScan('hollow-sphere-50-44.stl');
    const { bench } = valueOf(openMoldBench(scan, { fileUnit: 'mm' }));
    const { casting, sculpt } = valueOf(planMold(bench, { type: 'block' }));
    expectClose(sculpt.volumeMm3 / 1000, (4 / 3) * Math.PI * 125, 0.01, 'sculpt');
    expectClose(
      casting.cavityCm3.value / casting.volumeShare.value,
      sculpt.volumeMm3 / 1000,
      1e-9,
      'cavity before shrink',
    );
  });
});

describe('thick rubber', () => {
  it('is not told where a block fills hollows: an L takes rubber far thicker than its wall', () => {
    const thin = box([100, 10, 100]);
    const foot = box([100, 100, 10]);
    const both = {
      positions: Float64Array.from([...thin.positions, ...foot.positions]),
      triangles: Int32Array.from([
        ...thin.triangles,
        ...foot.triangles.map((v) => v + thin.positions.length / 3),
      ]),
    };
    const block = moldOn(benchOf(both), { type: 'block', silicone: { cure: 'condensation' } });
    expect(block.shape.hasThickerPlaces).toBe(true);
    expect(block.findings.find((f) => f.code === 'THICK_CONDENSATION')!.status).toBe('unknown');
    expect(moldOn(CUBE, { type: 'block' }).shape.thickestMm).toBe(12);
  });
});

it('a filled undercut makes the rubber thicker, not the skin that was asked for', () => {
  expect(moldOn(CUBE, { type: 'skin', settings: { skinMm: 7 } }).shape.wallMm).toBe(7);
  const mushroom = moldOn(benchOf(MUSHROOM), {
    type: 'skin',
    settings: { skinMm: 7, parts: '1', pull: '+z' },
  }).shape;
  expect(mushroom.wallMm).toBe(7);
  expect(mushroom.thickestMm).toBeGreaterThan(20);
});

describe('jackets laid in layers', () => {
  it('have the faces of their seam flanges too: two pieces, length times width', () => {
    const skin = (flangeMm: number) =>
      moldOn(CUBE, { type: 'skin', settings: { pull: '+x', flangeMm, keyRadiusMm: 0 } }).shape;
    const [bare, wide] = [skin(0), skin(20)];
    const seamMm2 = 2 * wide.jacket!.partingMm * 20;
    const boardMm2 = wide.flange!.areaMm2;
    expectClose(wide.jacket!.innerMm2 - bare.jacket!.innerMm2, seamMm2 + boardMm2, 2e-3, 'faces');
  });

  it('the seam does not jump when the pull leans by a hair', () => {
    const seam = (pull: string) => moldOn(CUBE, { type: 'skin', settings: { pull } }).shape.jacket!.partingMm;
    expectClose(seam('1,2,0.001'), seam('1,2,0'), 0.02, 'seam');
  });
});

it('thin coats on a large piece are those of Steiner, and said to be reckoned', () => {
  const skin = moldOn(benchOf(icosphere(300, 5)), { type: 'skin', settings: { base: 'closed' } }).shape;
  const shell = (mm: number) => (4 / 3) * Math.PI * ((300 + mm) ** 3 - 300 ** 3);
  expectClose(skin.coats![0]!.volumeMm3, shell(skin.coats![0]!.toMm), 3e-3, 'first coat');
  expect(skin.findings.map((f) => f.code)).toContain('COATS_BY_AREA');
});

describe('what does not fit is refused by name', () => {
  const refused = (settings: Record<string, number | string>, type: 'skin' | 'block') =>
    problemOf(planMold(CUBE, { type, settings })).values.key;
  it('a key larger than its flange is made to fit and told, a spout wider than the box is refused', () => {
    const skin = moldOn(CUBE, { type: 'skin', settings: { flangeMm: 6, keyRadiusMm: 30 } });
    expect(skin.shape.keys!.radiusMm).toBe(3);
    expect(skin.findings.map((f) => f.code)).toContain('KEYS_SMALLER');
    expect(refused({ parts: '2', wallMm: 3, spoutMm: 100 }, 'block')).toBe('spoutMm');
  });
});

it('a coarse scale that bends the ratio of the silicone is told', () => {
  const { findings } = moldOn(CUBE, { type: 'block', work: { scaleStepG: 50 } });
  expect(findings.map((f) => f.code)).toContain('SILICONE_RATIO_BENT');
});

it('a second half on a bare first one, and a block that is shut, are told', () => {
  const codes = (settings: Record<string, string>) =>
    moldOn(CUBE, { type: 'block', settings }).findings.map((f) => f.code);
  expect(codes({ parts: '2' })).toContain('HALVES_BOND');
  expect(codes({ base: 'closed', parts: '1' })).toContain('BLOCK_SHUT');
});
