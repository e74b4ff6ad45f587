import { describe, expect, it } from 'vitest';
import { planOpening, type Demold, type OpeningAsk, type OpeningPlan } from '../../src/plan';
import { finding } from '../../src/problem';
import { openingBecause } from '../../src/words/openingBecause';
import { keptWords, outWords, placedWords } from '../../src/words/openingPlan';
import { ventWords } from '../../src/words/openingVents';
import { benchOf } from '../support/moldBench';
import { ballOn } from '../support/moldShapes';
import { valueOf } from '../support/outcome';

const bench = benchOf(ballOn(50), { accuracy: 'fast' });
const POURED: OpeningAsk = {
  base: 'closed',
  opening: { atMm: [0, 0, 100], diameterMm: 15 },
  pour: { freeRiseKgM3: 96, packFactor: 1.3, liquidKgM3: 1080, riseS: 60 },
};
const plan = valueOf(planOpening(bench, POURED));

describe('how far the rubber has to stretch', () => {
  const at = [0, 0, 0] as const;
  const squeeze = (stretch: number): Demold['worst'] => ({
    ...{ neckAtMm: at, neckMm: 100, bulbAtMm: at, bulbMm: 200 },
    stretch,
  });
  const out = (stretch: number, allowed: Partial<Demold['allowedStretch']>, broken?: number): string =>
    outWords(
      {
        way: [0, 0, 1],
        worst: squeeze(stretch),
        mouth: squeeze(stretch),
        allowedStretch: { value: 1, low: 0.47, high: 2.27, from: 'assumed', ...allowed },
        undercutShare: 0,
        locked: [],
        caught: [],
        findings: [],
      },
      broken,
      'metric',
    ).join(' ');

  it('rubber that nobody named: usual, stiff and soft, each with its limit', () => {
    expect(out(0.3, {})).toMatch(/30 % .* within what even a stiff rubber is let \(47 %\)$/);
    expect(out(0.55, {})).toMatch(/within for usual rubber \(100 %\), over for a stiff one \(47 %\)/);
    expect(out(1.4, {})).toMatch(/over for usual rubber \(100 %\), within for a soft one \(230 %\)/);
    expect(out(3, {})).toMatch(/over what even a soft rubber is let \(230 %\)/);
  });

  it('rubber of a data sheet: within, over, or over its break', () => {
    const sheet = { value: 1, low: 1, high: 1, from: 'data-sheet' as const };
    expect(out(0.55, sheet, 3)).toMatch(/within the 100 % it is let \(a third of its break\)/);
    expect(out(1.4, sheet, 3)).toMatch(/, over the 100 % it is let/);
    expect(out(3.4, sheet, 3)).toMatch(/over its break, and over the 100 % it is let/);
    expect(out(-0.1, sheet, 3)).toMatch(/without stretching/);
  });
});

describe('what an open mouth keeps', () => {
  const kept = (mouthKPa: number, more: Partial<OpeningPlan> = {}): string =>
    keptWords(
      {
        ...plan,
        ...more,
        opening: { ...plan.opening, idealKPa: 34, kept: { mouthKPa, gaugeKPa: Math.min(34, mouthKPa) } },
      },
      'metric',
    ).join();

  it('is wasted only where the plan finds so; else its share is told', () => {
    expect(kept(9.52)).toMatch(/, 28 % of it; the rest leaves through the opening$/);
    expect(kept(9.52)).not.toMatch(/wasted/);
    const lost = finding('PACK_LOST_AT_MOUTH', 'look', { idealKPa: 34, mouthKPa: 2, wastedShare: 0.25 });
    expect(kept(2, { findings: [lost] })).toMatch(/pack is wasted/);
    expect(kept(80)).toMatch(/closed, vented mold$/);
  });
});

describe('where the opening is', () => {
  it('as it was said, or how far it was moved from there', () => {
    expect(placedWords(plan, 'metric')).toBe('where you said');
    const far = valueOf(planOpening(bench, { ...POURED, opening: { atMm: [0, 0, 5100], diameterMm: 15 } }));
    expect(placedWords(far, 'metric')).toMatch(/^moved 5.000 mm from where you said$/);
  });
});

describe('how the figures came about', () => {
  it('half and a twentieth are of the part that was measured, and so is what is thin', () => {
    const casting = { ...plan.casting!, notMeasuredShare: 0.76, shareThin: 0.012, p05Mm: 9, medianMm: 36.5 };
    const because = openingBecause({ ...plan, casting }, POURED, 'metric').join('\n');
    // 1.2 % of the whole is 5 % of the 24 % that were measured.
    expect(because).toMatch(
      /part of the surface that could be measured \(24 %\), half is under 36\.5 mm, .* and 5 % under the 6 mm/,
    );
  });

  it('foam through a vent: the length that is told is the length that was reckoned (Hagen and Poiseuille)', () => {
    const told = ventWords(plan, POURED).join('\n');
    const lengthMm = Number(/vents ([\d.]+) mm long/.exec(told)![1]);
    const { ventMm, ventG } = plan.ventFlow!.bleed!;
    const m3S =
      (Math.PI * (ventMm / 1000) ** 4 * plan.opening.idealKPa! * 1000) / (128 * 50 * (lengthMm / 1000));
    expect(ventG / (1000 * m3S * 60 * 1.3 * 96)).toBeCloseTo(1, 9);
  });

  it('where the viscosity was learned no range stands beside the grams', () => {
    const told = ventWords(plan, { pour: { ...POURED.pour, foamPaS: 60 } }).join('\n');
    expect(told).toMatch(/about [\d.]+ g through a vent.*foam of 60 Pa s, as your trimmed risers taught/);
  });
});
