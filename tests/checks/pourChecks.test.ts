import { describe, expect, it } from 'vitest';
import { CHECK_FIGURES, CHECKS, runCheck, runChecks, type CheckFacts } from '../../src/checks';
import type { CheckCode, Problem, Status } from '../../src/problem';
import { readQuantity } from '../../src/units';
import {
  idealGasGaugeKPa,
  panelStress,
  planBatch,
  planStraps,
  pourWindow,
  reversedRatio,
  targetAG,
  unventedGaugeKPa,
  type FoamCard,
} from '../../src/yield';
import { say } from '../../src/words/say';
import { bare, given, t1 } from '../support/batchInputs';
import { expectClose } from '../support/close';
import { valueOf } from '../support/outcome';

const ask = (code: CheckCode, facts: CheckFacts): Problem =>
  runCheck(
    CHECKS.find((check) => check.code === code)!,
    facts,
  );
const statusOf = (code: CheckCode, facts: CheckFacts): Status => ask(code, facts).status;
const textOf = (problem: Problem): string => Object.values(say(problem)).join(' ');

/** Mold in degrees Fahrenheit, as it is read by the units. */
function fahrenheit(tempF: number): number {
  const read = readQuantity(`${tempF} F`, 'temperature');
  if (read.kind !== 'one') throw new Error(`${tempF} F was not read`);
  return read.value;
}

describe('facts of the trade (common practice, no source)', () => {
  it('a mold of 85 to 90 F (29.4 to 32.2 C) is in the fine band, one of 60 F is not', () => {
    for (const tempF of [85, 87.5, 90])
      expect(statusOf('MOLD_TEMPERATURE', { moldTempC: fahrenheit(tempF) })).toBe('fine');
    const cold = ask('MOLD_TEMPERATURE', { moldTempC: fahrenheit(60) });
    expect(cold).toMatchObject({ status: 'look', values: { because: 'cold' } });
    expect(textOf(cold)).toMatch(/15\.6 °C.*rises less and leaves uneven places/);
    expect(cold.values.source).toContain('common practice, no source');
  });

  it('30 min lies in the common band for opening a warm casting; a card without a time says "unknown" and shows that band', () => {
    const { low, high } = ask('OPENING_TIME', {}).values;
    expect(Number(low)).toBeLessThanOrEqual(30);
    expect(Number(high)).toBeGreaterThanOrEqual(30);
    expect(statusOf('OPENING_TIME', {})).toBe('unknown');
    expect(textOf(ask('OPENING_TIME', {}))).toMatch(
      /^Not checked: when this foam can be opened\. .*20 to 60 min/,
    );
    expect(statusOf('OPENING_TIME', { cardOpenMin: 30 })).toBe('fine');
  });

  const card: FoamCard = {
    name: 'Soft',
    freeRiseKgM3: 160,
    freeRiseFrom: 'data-sheet',
    ratio: { a: 40, b: 100, by: 'mass' },
  };

  it('A:B 40:100 by weight takes 360 g of A for 900 g of B, and 100:40 typed for that card is a stop that asks', () => {
    expectClose(targetAG({ a: 40, b: 100, by: 'mass' }, 900), 360, 1e-12);
    const typed = (a: number, b: number): boolean => reversedRatio(card, { a, b, by: 'mass' });
    expect(statusOf('RATIO_ORDER', { ratioReversed: typed(40, 100), ratioReadBack: true })).toBe('fine');
    for (const ratioReadBack of [undefined, false, true]) {
      const asked = ask('RATIO_ORDER', { ratioReversed: typed(100, 40), ratioReadBack });
      expect(asked.status).toBe('stop');
      expect(textOf(asked)).toMatch(/other order.*A is the isocyanate and comes first/);
    }
  });

  it('a drill gives a more even foam than mixing by hand alone', () => {
    expect(statusOf('MIXING_METHOD', { mixingMethod: 'drill' })).toBe('fine');
    expect(statusOf('MIXING_METHOD', { mixingMethod: 'hand then drill' })).toBe('fine');
    const hand = ask('MIXING_METHOD', { mixingMethod: 'hand' });
    expect(hand.status).toBe('look');
    expect(textOf(hand)).toMatch(/less even than with a drill/);
    expect(textOf(ask('MIXING_METHOD', { mixingMethod: 'drill' }))).toMatch(
      /[Cc]lamp.*guard and goggles.*stop/,
    );
  });

  it('silicone, oil or acrylic color in the mix stops the pour, with the reason', () => {
    const reasons = [
      ['silicone based', /breaks the cells/],
      ['oil color', /not made for polyurethane/],
      ['water based', /acrylic.*gas/],
    ] as const;
    for (const [pigmentKind, why] of reasons) {
      const answer = runChecks({ pigmentKind }, 'pour').find(({ code }) => code === 'PIGMENT')!;
      expect(answer.status).toBe('stop');
      expect(textOf(answer)).toMatch(why);
    }
  });
});

describe('the cup and the scale', () => {
  it('20 + 50 g on a scale of 1 g is unsure by 4.4 %: a look; on one of 0.1 g it is fine (JCGM 100, 5.1.6)', () => {
    const coarse = ask('SCALE_STEP', { partAG: 20, partBG: 50, scaleStepG: 1 });
    expect(coarse.status).toBe('look');
    expectClose(Number(coarse.values.twoUShare), 2 * 0.0219848, 1e-5);
    expect(statusOf('SCALE_STEP', { partAG: 20, partBG: 50, scaleStepG: 0.1 })).toBe('fine');
    expect(statusOf('SCALE_STEP', { partAG: 4, partBG: 10, scaleStepG: 1 })).toBe('stop');
  });

  it('the way out that it names is one: the finer scale, or the larger batch of the same ratio', () => {
    const { values } = ask('SCALE_STEP', { partAG: 20, partBG: 50, scaleStepG: 1 });
    expect(statusOf('SCALE_STEP', { partAG: 20, partBG: 50, scaleStepG: Number(values.neededStepG) })).toBe(
      'fine',
    );
    const totalG = Math.ceil(Number(values.smallestTotalG));
    const larger = { partAG: (totalG * 2) / 7, partBG: (totalG * 5) / 7, scaleStepG: 1 };
    expect(statusOf('SCALE_STEP', larger)).toBe('fine');
  });

  it('liquid up to a third of the cup is fine, up to half a look, over half a stop', () => {
    const cup = (share: number): Status => statusOf('CUP_ROOM', { liquidCm3: share * 1500, cupCm3: 1500 });
    expect([0.2, 1 / 3, 0.34, 0.5, 0.51, 1.5].map(cup)).toEqual([
      'fine',
      'fine',
      'look',
      'look',
      'stop',
      'stop',
    ]);
  });

  it('the larger cup that it names is fine', () => {
    const { values } = ask('CUP_ROOM', { liquidCm3: 700, cupCm3: 1000 });
    expect(statusOf('CUP_ROOM', { liquidCm3: 700, cupCm3: Number(values.thirdCupCm3) })).toBe('fine');
  });

  it('a foam opened half a year ago is a look, a year ago a stop that a cup of today turns into a look', () => {
    const opened = (foamOpenedOn: string, cupTestedToday?: boolean): Status =>
      statusOf('FOAM_AGE', { foamOpenedOn, today: '2026-01-15', cupTestedToday });
    expect(opened('2025-07-16')).toBe('fine');
    expect(opened('2025-07-15')).toBe('look');
    expect(opened('2025-01-15', false)).toBe('stop');
    expect(opened('2025-01-15', true)).toBe('look');
    expect(opened('2025-01-15')).toBe('unknown');
    expect(opened('not yet')).toBe('fine');
  });

  it('a cup of today settles the air pressure whatever else is known; a weather report never does', () => {
    for (const airPressureFrom of [undefined, 'weather report', 'height above the sea', 'barometer'] as const)
      expect(statusOf('AIR_PRESSURE', { cupTestedToday: true, airPressureFrom })).toBe('fine');
    const report = ask('AIR_PRESSURE', { cupTestedToday: false, airPressureFrom: 'weather report' });
    expect(report.status).toBe('look');
    expect(textOf(report)).toMatch(/sea level/);
  });
});

describe('the checks say of a batch what its plan says', () => {
  it.each([1, 1.05, 1.1, 1.3, 1.6, 1.61, 2, 2.01, 2.5])('pack factor %s', (pack) => {
    const batch = valueOf(planBatch({ ...t1, packFactor: given(pack) }));
    const planned = batch.findings.find(({ code }) => code === 'PACK_UNUSUAL')?.status ?? 'fine';
    expect(statusOf('PACK_RANGE', { packFactor: batch.packFactor })).toBe(planned);
    const short = batch.findings.find(({ code }) => code === 'SHORT_FILL_LIKELY')?.status ?? 'fine';
    expect(statusOf('SHORT_FILL_RISK', { shortFillChance: batch.shortFillChance })).toBe(short);
  });

  it('a batch planned for a short fill of just 1 in 100 is fine by the check too', () => {
    const batch = valueOf(planBatch({ ...bare, shortFillChance: given(0.01) }));
    expect(statusOf('SHORT_FILL_RISK', { shortFillChance: batch.shortFillChance })).toBe('fine');
  });

  it('a short fill is first answered with mold, vents and cup, and only then with more pack', () => {
    const text = textOf(ask('SHORT_FILL_RISK', { shortFillChance: 0.2 }));
    expect(text).toMatch(/warm.*vented.*cup test.*Only then pack more/);
  });

  it('a scale too coarse by the plan is not fine by the check, and the other way round', () => {
    for (const stepG of [0.1, 1, 2, 5, 10]) {
      const { partAG, partBG, findings } = valueOf(planBatch({ ...t1, scaleStepG: given(stepG) }));
      const isCoarse = findings.some(({ code }) => code === 'SCALE_COARSE');
      expect(statusOf('SCALE_STEP', { partAG, partBG, scaleStepG: stepG }) !== 'fine').toBe(isCoarse);
    }
  });
});

describe('the mold and the foam in it', () => {
  it('water in the mold is a stop until it is confirmed dry; without a word it is not fine either', () => {
    expect(statusOf('MOLD_DAMP', { moldWater: 'not confirmed dry' })).toBe('stop');
    expect(statusOf('MOLD_DAMP', { moldWater: 'confirmed dry' })).toBe('fine');
    expect(statusOf('MOLD_DAMP', { moldWater: 'none' })).toBe('fine');
    expect(statusOf('MOLD_DAMP', {})).toBe('unknown');
  });

  it('no vent and a closed opening is a stop; the six times of pressure are those of the gas laws at pack 1.2 (T11)', () => {
    const sealed = ask('MOLD_SEALED', { ventCount: 0, openingOpen: false });
    expect(sealed.status).toBe('stop');
    expect(textOf(sealed)).toMatch(/about 6 times.*Do not pour/);
    const foam = { freeRiseKgM3: 160.184634, liquidKgM3: 1070, packFactor: 1.2 };
    const vented = valueOf(idealGasGaugeKPa(foam));
    expectClose(vented, 24.703, 1e-4);
    expectClose(CHECK_FIGURES.sealedPressure.value, valueOf(unventedGaugeKPa(foam)) / vented, 0.02);
  });

  it('vents of 1.5 to 3 mm are fine, narrower ones or none beside an open mouth a look', () => {
    const vents = (ventMm: number): Status => statusOf('MOLD_SEALED', { ventCount: 3, ventMm });
    expect([1.4, 1.5, 3, 3.1].map(vents)).toEqual(['look', 'fine', 'fine', 'look']);
    expect(statusOf('MOLD_SEALED', { ventCount: 0, openingOpen: true })).toBe('look');
  });

  it('a flat panel of 200 mm, 12 mm thick, cracks at 25 kPa: a stop; a round jacket is fine', () => {
    const panel = valueOf(panelStress({ gaugeKPa: 25, panelSpanMm: 200, panelMm: 12 }));
    // 0.31 p (b/t)^2 = 2.15 MPa: above what wet gypsum bears, below what dry gypsum bears at best.
    expectClose(panel.stressMPa, 2.15, 2e-3);
    const facts: CheckFacts = {
      panelSpanMm: 200,
      panelLargestMm: panel.largestSpanMm,
      panelVerdict: panel.verdict,
    };
    expect(statusOf('JACKET_PANELS', facts)).toBe('look');
    const wide = valueOf(panelStress({ gaugeKPa: 25, panelSpanMm: 250, panelMm: 12 }));
    expect(
      statusOf('JACKET_PANELS', {
        panelSpanMm: 250,
        panelLargestMm: wide.largestSpanMm,
        panelVerdict: wide.verdict,
      }),
    ).toBe('stop');
    expect(statusOf('JACKET_PANELS', { panelSpanMm: 0 })).toBe('fine');
  });

  it('over 150 mm a panel is a look even where its strength would do', () => {
    const panel = valueOf(panelStress({ gaugeKPa: 5, panelSpanMm: 160, panelMm: 20 }));
    expect(panel.verdict).toBe('holds');
    const facts: CheckFacts = {
      panelSpanMm: 160,
      panelLargestMm: panel.largestSpanMm,
      panelVerdict: 'holds',
    };
    expect(ask('JACKET_PANELS', facts)).toMatchObject({
      status: 'look',
      values: { because: 'wide', overMm: 10 },
    });
  });

  it('two straps for 1125 N with half of it lost to creep need 562 N each: over a strap of 300 N a stop', () => {
    const settings = { straps: 2, strapWrapDegrees: 0, strapLossShare: 0.5, strapN: 300 };
    const { buckleN } = valueOf(planStraps(1125, settings));
    expectClose(buckleN, 562.5, 1e-9);
    expect(ask('STRAP_LOAD', { strapBuckleN: buckleN, strapWorkingN: 300 })).toMatchObject({
      status: 'stop',
      values: { overN: 262.5 },
    });
    expect(statusOf('STRAP_LOAD', { strapBuckleN: buckleN, strapWorkingN: 562.5 })).toBe('fine');
  });

  it('the core: fine to 140 C, a look to 160 C, a stop above, and unknown without data', () => {
    const core = (coreTempC: number): Status => statusOf('EXOTHERM', { coreTempC });
    expect([130, 140, 140.1, 160, 160.1].map(core)).toEqual(['fine', 'fine', 'look', 'look', 'stop']);
    expect(statusOf('EXOTHERM', {})).toBe('unknown');
  });

  it('a plug tells its newtons and whose weight that is, and is a stop while nothing holds it', () => {
    // 25 kPa on a lid of 300 cm2: 750 N, as 76 kg weigh (mold 5.3).
    const loose = ask('PLUG_FORCE', { plugN: 750, plugHeld: false });
    expect(loose.status).toBe('stop');
    expect(textOf(loose)).toMatch(/750 N, as 76 kg would weigh.*nobody stand over it/);
    expect(textOf(ask('PLUG_FORCE', { plugN: 750, plugHeld: true, plugVented: true }))).toMatch(
      /Nobody stands/,
    );
    expect(statusOf('PLUG_FORCE', { plugN: 0 })).toBe('fine');
  });

  it('a pour is fine within the shortest time left, a look within the likely one, a stop beyond it', () => {
    const { value, low } = valueOf(
      pourWindow({ creamS: 60, atC: 23, nowC: 28, mixS: 20, carryS: 5, marginS: 5 }),
    ).pourWindowS;
    expect(low).toBeLessThan(value);
    const pour = (pourTimeS: number): Status =>
      statusOf('POUR_WINDOW', { pourTimeS, pourWindowS: value, pourWindowLowS: low });
    expect([low, (low + value) / 2, value, value + 1].map(pour)).toEqual(['fine', 'look', 'look', 'stop']);
  });

  it('hot molds: a look over 50 C, a stop over 60 C', () => {
    const mold = (moldTempC: number): Status => statusOf('MOLD_TEMPERATURE', { moldTempC });
    expect([45, 50, 50.1, 60, 60.1].map(mold)).toEqual(['fine', 'look', 'look', 'look', 'stop']);
    expect(ask('MOLD_TEMPERATURE', { moldTempC: 50.1 }).values.because).toBe('hot');
  });

  it('a casting not tested for fire is a look that names smoke, venue and code; a report is fine', () => {
    const plain = ask('FIRE_RATING', { castingFireRated: false });
    expect(plain.status).toBe('look');
    expect(textOf(plain)).toMatch(/thick, toxic smoke.*venue.*fire code/);
    expect(statusOf('FIRE_RATING', { castingFireRated: true })).toBe('fine');
    expect(textOf(ask('FIRE_RATING', {}))).toMatch(/thick, toxic smoke/);
  });
});
