import { describe, expect, it } from 'vitest';
import {
  cooledDepthMm,
  coolingH,
  exotherm,
  heatKJPerKg,
  openTimeMin,
  pourWindow,
  quickening,
  reactiveContent,
  shiftTime,
} from '../../../src/yield';
import { expectClose } from '../../support/close';
import { between, lcg } from '../../support/lcg';
import { problemOf, valueOf } from '../../support/outcome';
import { expectPrinted } from '../../support/printed';

describe('times at another temperature (activation energies of the Baser-kinetics example, MoDeNa project)', () => {
  it.each([
    [20, 30, 'gel', '1.60894'],
    [20, 30, 'blow', '1.44189'],
    [23, 31, 'gel', '1.45553'],
    [23, 31, 'blow', '1.33488'],
  ] as const)('T23: from %d to %d C a %s time is shorter by a factor %s', (atC, nowC, of, factor) => {
    expectPrinted(quickening({ atC, nowC, of }), factor);
    expectPrinted(100 / valueOf(shiftTime({ timeS: 100, atC, nowC, of })).value, factor);
  });

  it('T23: the folk rule "halves in 10 degrees" is too short on a warm day: 50 s for the 69 s of 27.04 kJ/mol', () => {
    const warm = valueOf(shiftTime({ timeS: 100, atC: 20, nowC: 30, of: 'blow' }));
    expectClose(warm.folk, 50, 1e-12);
    expectPrinted(warm.value, '69.4');
    expectClose(warm.folkDifferenceShare, 1.44189 / 2 - 1, 1e-5);
    // 1.4 to 2.0 times in 10 K.
    expectClose(warm.low, 100 / 2, 1e-12);
    expectClose(warm.high, 100 / 1.4, 1e-12);
  });

  it('at the temperature of the data sheet the time is that of the data sheet', () => {
    const same = valueOf(shiftTime({ timeS: 45, atC: 23, nowC: 23, of: 'gel' }));
    expect(same).toMatchObject({ value: 45, low: 45, high: 45, from: 'data-sheet', folkDifferenceShare: 0 });
  });

  it('there and back again is where it was, and the range holds the value (random, seed 23)', () => {
    const random = lcg(23);
    for (let round = 0; round < 200; round += 1) {
      const of = random() < 0.5 ? 'gel' : 'blow';
      const [atC, nowC] = [between(random, 0, 45), between(random, 0, 45)];
      const timeS = between(random, 5, 3000);
      const there = valueOf(shiftTime({ timeS, atC, nowC, of }));
      const back = valueOf(shiftTime({ timeS: there.value, atC: nowC, nowC: atC, of }));
      const message = `seed 23, round ${round}`;
      expectClose(back.value, timeS, 1e-12, message);
      expect(there.low, message).toBeLessThanOrEqual(there.value);
      expect(there.high, message).toBeGreaterThanOrEqual(there.value);
      expect(Math.sign(timeS - there.value), message).toBe(Math.sign(nowC - atC));
    }
  });
});

describe('the pour window', () => {
  it('creams at 45 s, 20 s of mixing, 5 s to carry, 5 s margin: 15 s to pour (arithmetic)', () => {
    const { pourWindowS, assumptions } = valueOf(pourWindow({ creamS: 45, mixS: 20, carryS: 5, marginS: 5 }));
    expect(pourWindowS.value).toBe(15);
    expect(assumptions).toEqual([]);
  });

  it('10 K warmer: 100 s of cream are 69.4 of 50 to 71.4, and 40 s of hands leave 29.4 of 10 to 31.4', () => {
    const hands = { creamS: 100, atC: 20, nowC: 30, mixS: 30, carryS: 6, marginS: 4 };
    const { pourWindowS } = valueOf(pourWindow(hands));
    expectPrinted(pourWindowS.value, '29.4');
    expectClose(pourWindowS.low, 10, 1e-12);
    expectClose(pourWindowS.high, 100 / 1.4 - 40, 1e-12);
    // With one temperature missing nothing is shifted.
    const { nowC: _now, ...unknown } = hands;
    expect(valueOf(pourWindow(unknown)).pourWindowS).toMatchObject({ low: 60, value: 60, high: 60 });
    const { atC: _at, ...other } = hands;
    expect(valueOf(pourWindow(other)).pourWindowS.value).toBe(60);
    expect(problemOf(pourWindow({ ...unknown, creamS: 40 })).code).toBe('POUR_WINDOW_NONE');
  });

  it('a warm day shortens it, and its low end is never below nothing', () => {
    const hands = { creamS: 45, mixS: 20, carryS: 5, atC: 23 };
    const warm = valueOf(pourWindow({ ...hands, nowC: 28 }));
    const cool = valueOf(pourWindow({ ...hands, nowC: 18 }));
    expect(warm.pourWindowS.value).toBeLessThan(15);
    expect(cool.pourWindowS.value).toBeGreaterThan(15);
    expect(warm.pourWindowS.low).toBeGreaterThanOrEqual(0);
    expect(warm.assumptions.map(({ name }) => name)).toEqual(['pour_margin']);
  });

  it('nothing left: the window is refused, with what takes the time', () => {
    expect(problemOf(pourWindow({ creamS: 25, mixS: 20, carryS: 5, marginS: 5 }))).toMatchObject({
      code: 'POUR_WINDOW_NONE',
      values: { creamS: 25, takenS: 30, mixS: 20 },
    });
  });

  it('the time to open goes with the gelling reaction; with one temperature missing it stays', () => {
    expectClose(valueOf(openTimeMin({ openMin: 30, atC: 20, nowC: 30 })).value, 30 / 1.60894, 1e-5);
    expect(valueOf(openTimeMin({ openMin: 30, nowC: 30 })).value).toBe(30);
    expect(valueOf(openTimeMin({ openMin: 30 })).value).toBe(30);
  });

  it.each([
    ['cream time 0', { creamS: 0 }, 'creamS'],
    ['cream time not a number', { creamS: Number.NaN }, 'creamS'],
    ['mixing backward', { creamS: 45, mixS: -1 }, 'mixS'],
    ['ingredients boiling', { creamS: 45, atC: 23, nowC: 100 }, 'nowC'],
    ['a data sheet in kelvin', { creamS: 45, atC: 296, nowC: 20 }, 'statedAtC'],
  ])('refused: %s', (_, inputs, input) => {
    expect(problemOf(pourWindow(inputs)).values.input).toBe(input);
  });

  it('refused: opening after no time', () => {
    expect(problemOf(openTimeMin({ openMin: 0 })).values.input).toBe('openMin');
  });
});

describe('heat of reaction', () => {
  it('T24: the rigid example of the MoDeNa project, 4455 NCO and 671 water in mol/m3 at 1100 kg/m3: 135.317 K', () => {
    const heat = heatKJPerKg({ ncoEqPerKg: 4455 / 1100, waterMolPerKg: 671 / 1100 });
    expectPrinted(heat.low / 1.8, '135.317');
  });

  const ratio = { a: 52, b: 100, by: 'mass' } as const;

  it('T25: A:B 52:100, A with 13 % NCO, 0.55 % water in B: 1.058474 eq/kg, 0.200853 mol/kg, 34.1 to 58.5 K', () => {
    const content = reactiveContent({ ratio, ncoShare: 0.13, waterShare: 0.0055 });
    expectPrinted(content.ncoEqPerKg, '1.058474');
    expectPrinted(content.waterMolPerKg, '0.200853');
    const heat = heatKJPerKg(content);
    expectPrinted(heat.low, '61.358');
    expectPrinted(heat.high, '105.245');
    const hot = valueOf(exotherm({ ratio, ncoShare: 0.13, waterShare: 0.0055, startC: 20 }));
    if (!hot.known) throw new Error('expected a known exotherm');
    expectPrinted(hot.riseK.low, '34.1');
    expectPrinted(hot.riseK.high, '58.5');
    expectPrinted(hot.coreC.high, '78.5');
    expect(hot.findings).toEqual([]);
  });

  it('T25: A with 25 % NCO, 0.4 % water in B: 131.326 to 203.114 kJ/kg, 73.0 to 112.8 K', () => {
    const heat = heatKJPerKg(reactiveContent({ ratio, ncoShare: 0.25, waterShare: 0.004 }));
    expectPrinted(heat.low, '131.326');
    expectPrinted(heat.high, '203.114');
    const hot = valueOf(exotherm({ ratio, ncoShare: 0.25, waterShare: 0.004, startC: 20 }));
    if (!hot.known) throw new Error('expected a known exotherm');
    expectPrinted(hot.riseK.low, '73.0');
    expectPrinted(hot.riseK.high, '112.8');
  });

  it.each([
    [20, undefined],
    [30, 'look'],
    [60, 'stop'],
  ])(
    'a core that starts at %d C and may rise by 112.8 K: %s (look over 140 C, stop over 160 C)',
    (startC, status) => {
      const hot = valueOf(exotherm({ ratio, ncoShare: 0.25, waterShare: 0.004, startC }));
      if (!hot.known) throw new Error('expected a known exotherm');
      expect(hot.findings[0]?.status).toBe(status);
      expect(hot.findings.every(({ code }) => code === 'CORE_HOT')).toBe(true);
    },
  );

  it('without the data of the parts it is "not known", and says what is missing', () => {
    expect(valueOf(exotherm({ ratio }))).toEqual({
      known: false,
      missing: ['ncoShare', 'waterShare', 'startC'],
    });
    expect(valueOf(exotherm({ ratio, ncoShare: 0.13, startC: 20 }))).toEqual({
      known: false,
      missing: ['waterShare'],
    });
  });

  it.each([
    ['NCO in percent', { ncoShare: 13 }, 'ncoShare'],
    ['water in percent', { waterShare: 0.55 }, 'waterShare'],
    ['start not a number', { startC: Number.NaN }, 'startC'],
  ])('refused: %s', (_, change, input) => {
    expect(problemOf(exotherm({ ratio, ...change })).values.input).toBe(input);
  });

  it('T26: 90 mm of half thickness take 10.8 h; in 30 min only 19.4 mm cool (heat conduction, L^2/alpha)', () => {
    expectPrinted(coolingH(90), '10.8');
    expectPrinted(valueOf(cooledDepthMm(30)), '19.4');
    expect(problemOf(cooledDepthMm(0)).values.input).toBe('coolingMin');
  });
});
