import { expect, test } from 'vitest';
import { planOpening, type MoldBench, type OpeningAsk, type OpeningPlan } from '../../../src/plan';
import { expectClose } from '../../support/close';
import { benchOf } from '../../support/moldBench';
import { cylinderOn, turnedBody } from '../../support/moldShapes';
import { valueOf } from '../../support/outcome';
import { box } from '../../support/shapes';

const planOn = (bench: MoldBench, ask: OpeningAsk): OpeningPlan => valueOf(planOpening(bench, ask));
const planOf = (body: Parameters<typeof benchOf>[0], ask: OpeningAsk): OpeningPlan =>
  planOn(benchOf(body), ask);

/** Everything known of a pour, so that both ends of the band are. */
const POUR = { freeRiseKgM3: 96, packFactor: 1.3, liquidKgM3: 1070, withinS: 10, mixPaS: 1 };

test('The advised width is never narrower than what pours in time', () => {
  const bench = benchOf(cylinderOn(35, 200));
  for (const withinS of [6, 8, 10, 14, 20]) {
    const { opening } = planOn(bench, { pour: { ...POUR, withinS } });
    const { leastMm, mostMm, isEmpty } = opening.band;
    if (isEmpty) expect(opening.verdict, `${withinS} s`).not.toBe('fits');
    else {
      expect(opening.diameterMm, `${withinS} s`).toBeGreaterThanOrEqual(leastMm! - 1e-9);
      expect(opening.diameterMm, `${withinS} s`).toBeLessThanOrEqual(mostMm + 1e-9);
      expect(opening.verdict, `${withinS} s`).toBe('fits');
    }
  }
});

test('Liquid, section and upper end of a cylinder are those of its circle', () => {
  const { opening } = planOf(cylinderOn(60, 200), { pour: POUR });
  const sectionCm2 = Math.PI * 36;
  expectClose(opening.largestSectionCm2, sectionCm2, 1e-3);
  expectClose(opening.liquidCm3!, (1.3 * 96 * sectionCm2 * 20) / 1070, 1e-3);
  // The smaller of 5 % of the section and 1 % of the surface that gets rubber: side and top.
  const shareMm = 10 * Math.sqrt((4 * 0.05 * sectionCm2) / Math.PI);
  const baldMm = 10 * Math.sqrt((4 * 0.01 * (sectionCm2 + 2 * Math.PI * 6 * 20)) / Math.PI);
  expectClose(opening.band.mostMm, Math.min(shareMm, baldMm), 2e-3);
});

test('A planned vent lets the mix run in faster: the lower end falls', () => {
  // A thin mix, which the air that comes up holds back more than the tube does.
  const pour = { ...POUR, mixPaS: 0.1 };
  const bench = benchOf(cylinderOn(60, 200));
  const shut = planOn(bench, { pour });
  const vented = planOn(bench, { pour, vents: [[40, 0, 0]] });
  expect(vented.opening.band.leastMm!).toBeLessThan(shut.opening.band.leastMm!);
});

test('An empty band is told with its ways out, the plug with its force', () => {
  const slim = planOf(cylinderOn(12, 600), { pour: { ...POUR, withinS: 2 } });
  expect(slim.opening.band.isEmpty).toBe(true);
  expect(slim.findings.map(({ code }) => code)).toContain('OPENING_BAND_EMPTY');
  const { plug } = slim.opening.offers!;
  // Statics: kPa times cm2 are tenths of a newton.
  expectClose(plug!.forceN, (plug!.gaugeKPa * plug!.mouthCm2) / 10, 1e-9);
});

test('Vents for the air: so many that their area lets it out, with the foam that one wide vent would lose', () => {
  const { ventFlow } = planOf(box([100, 100, 300]), { pour: { ...POUR, riseS: 60 } });
  const gasCm3 = 3000 - (1.3 * 96 * 3000) / 1070;
  // Peak three times the mean, 200 Pa, discharge 0.6, air of 1.2 kg/m3.
  const areaMm2 = (3 * gasCm3) / 60 / (0.6 * Math.sqrt((2 * 200) / 1.2));
  expectClose(ventFlow!.count.areaMm2, areaMm2, 1e-6);
  expect(ventFlow!.count.needed).toBe(Math.ceil(areaMm2 / Math.PI));
  // Hagen and Poiseuille: the fourth power of the width.
  const { ventMm, ventG, wideMm, wideG } = ventFlow!.bleed!;
  expectClose(wideG / ventG, (wideMm / ventMm) ** 4, 1e-9);
});

test('Another way up is told beside today\u2019s, never today\u2019s again', () => {
  const leaning = turnedBody([
    [0, 0],
    [30, 0],
    [45, 60],
    [20, 120],
    [0, 120],
  ]);
  const { best, filling } = planOf(leaning, { searchUp: true });
  expect(best!.length).toBeGreaterThan(0);
  for (const { up } of best!) {
    const cosine = up[0] * filling.up[0] + up[1] * filling.up[1] + up[2] * filling.up[2];
    expect(cosine).toBeLessThan(Math.cos(Math.PI / 180));
  }
});
