import { describe, expect, it } from 'vitest';
import { preparePour, sizeScan, type PourAsk, type PreparedPour } from '../../src/plan';
import { expectClose } from '../support/close';
import { lcg } from '../support/lcg';
import { scanOf } from '../support/moldBench';
import { problemOf, valueOf } from '../support/outcome';
import { sphere } from '../support/shapes';

/** 4.5 L of a foam of 96 kg/m3, A:B 100:55. */
const POUR: PourAsk['pour'] = {
  cavity: { volumeCm3: { value: 4500, from: 'given' } },
  freeRiseKgM3: { value: 96, from: 'data-sheet' },
  ratio: { a: 100, b: 55, by: 'mass' },
};
const ready = (more: Partial<PourAsk> = {}): PreparedPour => valueOf(preparePour({ pour: POUR, ...more }));

describe('the air of the day', () => {
  it('at 1500 m a foam rises lighter: its gas has 84 % of the room to push back (ISO 2533: 84.556 kPa)', () => {
    const { air, batch } = ready({ air: { altitudeM: 1500 } });
    expectClose(air!.correction.stationKPa.value, 84.556, 1e-4, 'pressure');
    // 1/rho = 1/rho_s + (1/rho_ref - 1/rho_s) p_ref/p, with 1070 kg/m3 of liquid.
    const expected = 1 / (1 / 1070 + (1 / 96 - 1 / 1070) * (101.325 / 84.556));
    expectClose(batch.inputs.freeRiseKgM3, expected, 1e-4, 'free rise');
    expect(batch.mixedG).toBeLessThan(ready().batch.mixedG);
  });

  it('a cup test of the day holds the day already: nothing is corrected', () => {
    const pour = { ...POUR, freeRiseKgM3: { value: 96, from: 'cup-test' as const } };
    const { air, batch } = ready({ pour, air: { altitudeM: 1500 }, roomC: 15, foam: { timesAtC: 23 } });
    expect(air!.correction.applied).toEqual([]);
    expect(batch.inputs.freeRiseKgM3).toBe(96);
  });

  it('a barometer leaves less doubt than the day does', () => {
    const share = (p: PreparedPour) => p.batch.uncertainty.find((r) => r.input === 'station_pressure')!.share;
    expect(share(ready({ air: { stationKPa: 100 } }))).toBeLessThan(share(ready()));
  });
});

describe('cup by cup', () => {
  it('without a limit it is one cup, the batch itself', () => {
    const { cups, batch } = ready();
    expect(cups.cups).toHaveLength(1);
    expect([cups.partAG, cups.partBG]).toEqual([batch.partAG, batch.partBG]);
  });

  it('a cup of one liter takes a third of that: two cups, each keeps its own residue', () => {
    const { cups, batch } = ready({ cups: { cupCm3: 1000 } });
    expect(cups.cups.length).toBeGreaterThan(1);
    for (const cup of cups.cups) expect(cup.totalG).toBeLessThanOrEqual((1000 / 3) * 1.07);
    const residues = cups.cups.length * batch.inputs.residueG;
    expect(cups.totalG).toBeGreaterThanOrEqual(batch.inMoldG + residues - 1);
    expect(cups.partAG + cups.partBG).toBe(cups.totalG);
  });
});

describe('forces', () => {
  it('on 300 cm2 the push is pressure times area; the clamp twice that', () => {
    const { forces } = ready({ clamp: { projectedCm2: 300, plugCm2: 50 } });
    const { designKPa } = forces.pressureKPa;
    expectClose(forces.clamp!.pushN, designKPa * 30, 1e-9, 'push');
    expectClose(forces.clamp!.clampN, 2 * forces.clamp!.pushN, 1e-9, 'clamp');
    expectClose(forces.plugN!, designKPa * 5, 1e-9, 'plug');
    expect(forces.ratchets!.strapsNeeded).toBeLessThan(forces.straps!.strapsNeeded);
  });

  it('without an area no force is told', () => {
    expect(ready().forces).not.toHaveProperty('clamp');
  });

  it('the shadow of a ball of 50 mm along any axis is its disc', () => {
    const size = valueOf(sizeScan(scanOf(sphere(50, 90)), { fileUnit: 'mm', shadowAlong: 'y' }));
    expectClose(size.shadowCm2!, Math.PI * 25, 1e-3, 'shadow');
  });
});

it('a pack in the table is under the same air as the pour: its pressure is that of the plan', () => {
  const { packs, forces, batch } = ready({ air: { altitudeM: 1500 }, packs: { list: [1.3] } });
  const column = packs!.columns[0]!;
  expect(batch.packFactor).toBe(1.3);
  expect('pressureKPa' in column && column.pressureKPa.value).toBe(forces.pressureKPa.value);
});

it('a flat panel of 200 mm in 12 mm of plaster may crack (0.31 p (b/t)^2, from memory); one of 60 mm holds', () => {
  const panel = (panelSpanMm: number) =>
    ready({ clamp: { jacketMm: 12 }, facts: { panelSpanMm } }).checks.find(
      (c) => c.code === 'JACKET_PANELS',
    )!;
  expect(panel(60).status).toBe('fine');
  expect(['look', 'stop']).toContain(panel(200).status);
});

it('a refused plug is named as the plug', () => {
  expect(problemOf(preparePour({ pour: POUR, clamp: { plugCm2: -1 } })).values.input).toBe('lidCm2');
});

describe('what is not told', () => {
  it('is not known: core temperature without %NCO, times without a card', () => {
    const { times } = ready();
    expect(times.exotherm.known).toBe(false);
    expect(times).not.toHaveProperty('window');
    expect(times.openCommonMin).toMatchObject({ low: 20, high: 60 });
  });

  it('every check of the pour answers, and those without their facts say so', () => {
    const { checks } = ready();
    expect(checks.length).toBeGreaterThan(8);
    expect(checks.some(({ status }) => status === 'unknown')).toBe(true);
  });
});

it('laws, seed 7: more pack, more mass and pressure, less chance of a short fill; higher up, lighter', () => {
  const draw = lcg(7);
  for (let round = 0; round < 25; round++) {
    const pack = 1.1 + 0.4 * draw();
    const at = (packFactor: number, altitudeM: number): PreparedPour =>
      ready({ pour: { ...POUR, packFactor: { value: packFactor, from: 'chosen' } }, air: { altitudeM } });
    const height = 2500 * draw();
    const [low, high, up] = [at(pack, height), at(pack + 0.05, height), at(pack, height + 200)];
    expect(high.batch.mixedG).toBeGreaterThan(low.batch.mixedG);
    expect(high.forces.pressureKPa.value).toBeGreaterThan(low.forces.pressureKPa.value);
    expect(high.batch.shortFillChance).toBeLessThan(low.batch.shortFillChance);
    expect(up.batch.inputs.freeRiseKgM3).toBeLessThan(low.batch.inputs.freeRiseKgM3);
  }
});

it('bad values are answered in words, never with NaN', () => {
  const code = (more: Partial<PourAsk>) => problemOf(preparePour({ pour: POUR, ...more })).code;
  expect(code({ air: { altitudeM: Number.NaN } })).toBe('INPUT_NOT_A_NUMBER');
  expect(code({ air: { stationKPa: 10 } })).toBe('INPUT_OUT_OF_BOUNDS');
  expect(code({ cups: { cupCm3: 0 } })).toBe('INPUT_OUT_OF_BOUNDS');
  expect(code({ clamp: { projectedCm2: -1 } })).toBe('INPUT_OUT_OF_BOUNDS');
  expect(code({ foam: { creamS: 5 }, cups: { mixS: 30 } })).toBe('POUR_WINDOW_NONE');
});
