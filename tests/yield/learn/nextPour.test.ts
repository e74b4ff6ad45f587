import { describe, expect, it } from 'vitest';
import { nextPour } from '../../../src/yield/learn/nextPour';
import type { NextPourInputs } from '../../../src/yield/learn/nextPour';
import { skinEffect } from '../../../src/yield/learn/skinEffect';
import type { TriedPour } from '../../../src/yield/learn/triedPour';
import { expectClose } from '../../support/close';
import { between, lcg } from '../../support/lcg';
import { samplePours } from './samplePours';

const light = samplePours.filter(({ foam }) => foam === 'Sample Foam Light');

describe('one change for the next pour', () => {
  const { asks, change } = nextPour({ pours: light, piece: '1-troll' });

  it('the sample troll: pack 1.25 again, the mold near 28 C, plugged as before: the emptier corner', () => {
    expect(asks).toEqual([]);
    expect(change).toMatchObject({ factor: 'moldC', from: 35, why: 'tell-apart', basePour: 2 });
    expect(change!.to).toBeGreaterThanOrEqual(27);
    expect(change!.to).toBeLessThanOrEqual(30);
    expect(change!.apartFrom).toContain('opening');
    expect(change!.fromPours).toEqual([1, 2, 3, 9, 10, 11]);
  });

  it('not next to what was poured already: no tried pour within a quarter of the spans', () => {
    expect(change!.nearest!.distance).toBeGreaterThan(0.25);
  });

  it('its effect takes in nothing at all: the plug may have done it', () => {
    expect(change!.effect!.low).toBeLessThanOrEqual(change!.effect!.value);
    expect(change!.effect!.low).toBeLessThanOrEqual(0);
    expect(change!.effect!.high).toBeGreaterThanOrEqual(0);
    expect(change!.effect!.value).toBeLessThan(0);
  });

  it('after the short first pour: vents and cup are asked about and the mold is warmed, no pack is added', () => {
    const after = nextPour({ pours: light.slice(0, 1) });
    expect(after.asks).toEqual(['vents', 'cup-test']);
    expect(after.change).toMatchObject({ factor: 'moldC', from: 20, to: 31, why: 'mold-cold', basePour: 1 });
  });

  const bare: TriedPour = { no: 1, packFactor: 1.2, moldC: 33, opening: 'plug', skin: 1 };

  it('warm, plugged and bare: more pack only once everything was answered', () => {
    expect(nextPour({ pours: [bare] })).toEqual({ asks: ['vents', 'cup-test'] });
    expect(nextPour({ pours: [bare], ventsChecked: true })).toEqual({ asks: ['cup-test'] });
    expect(nextPour({ pours: [bare], ventsChecked: true, cupTestedToday: true }).change).toMatchObject({
      factor: 'packFactor',
      from: 1.2,
      to: 1.25,
      why: 'still-poor',
    });
  });

  it('a mold nobody measured is asked about; an open mouth is closed first', () => {
    const { moldC: _mold, ...unmeasured } = bare;
    const told = { ventsChecked: true, cupTestedToday: true };
    expect(nextPour({ pours: [unmeasured], ...told })).toEqual({ asks: ['mold-warmth'] });
    expect(nextPour({ pours: [{ ...bare, opening: 'open' }], ...told }).change).toMatchObject({
      factor: 'opening',
      to: 1,
      why: 'opening-open',
    });
  });

  it('good, with nothing tangled: a lighter pack, and never below the usual ones', () => {
    const square: TriedPour[] = (
      [
        [1.2, 30, 'open'],
        [1.2, 35, 'plug'],
        [1.3, 30, 'plug'],
        [1.3, 35, 'open'],
      ] as const
    ).map(([packFactor, moldC, opening], i) => ({ no: i + 1, packFactor, moldC, opening, skin: 4 }));
    expect(nextPour({ pours: square }).change).toMatchObject({ from: 1.2, to: 1.15, why: 'try-lighter' });
    const lightest = square.map((pour) => ({ ...pour, packFactor: 1.1 }));
    expect(nextPour({ pours: lightest }).change).toBeUndefined();
  });

  it('an empty log proposes nothing', () => expect(nextPour({ pours: [] })).toEqual({ asks: [] }));

  it('500 made-up logs: more pack never comes before a warm mold, vents looked at and a cup of today', () => {
    const random = lcg(42);
    let packed = 0;
    for (let log = 0; log < 500; log += 1) {
      const pours = Array.from({ length: 1 + Math.floor(7 * random()) }, (_, i): TriedPour => ({
        no: i + 1,
        packFactor: Math.round(20 * between(random, 1.1, 1.5)) / 20,
        opening: random() < 0.5 ? 'open' : 'plug',
        skin: 1 + Math.floor(5 * random()),
        short: random() < 0.3,
        ...(random() < 0.8 ? { moldC: Math.round(between(random, 15, 42)) } : {}),
      }));
      const told = { ventsChecked: random() < 0.5, cupTestedToday: random() < 0.5 };
      const inputs: NextPourInputs = { pours, ...told };
      const { asks, change } = nextPour(inputs);
      if (change?.factor !== 'packFactor' || change.to <= change.from) continue;
      packed += 1;
      expect(asks).toEqual([]);
      expect(told).toEqual({ ventsChecked: true, cupTestedToday: true });
      expect(pours.at(-1)!.moldC).toBeGreaterThanOrEqual(27);
      expect(pours.at(-1)!.opening).toBe('plug');
    }
    expect(packed).toBeGreaterThan(5);
  });
});

describe('effect on the skin', () => {
  it('gives back the slope of skins made by rule: 0.1 a degree, 5 a unit of pack', () => {
    const made = [20, 25, 31, 35, 38, 22].map((moldC, i): TriedPour => {
      const packFactor = 1.2 + 0.05 * (i % 3);
      return { no: i, moldC, packFactor, skin: 0.1 * moldC + 5 * packFactor };
    });
    const effect = skinEffect(made, { factor: 'moldC', by: -7, isConfounded: false })!;
    expectClose(effect.value, -0.7, 1e-9);
    expectClose(effect.low, -0.7, 1e-6);
    const tangled = skinEffect(made, { factor: 'moldC', by: -7, isConfounded: true })!;
    expect(tangled.high).toBe(0);
  });

  it('skins 2, 3, 3, 4 of packs 1.1 to 1.4: 6 a unit of pack, and the range of least squares (by hand)', () => {
    // Sxx 0.05, Sxy 0.3; off by 0.1, 0.3, 0.3, 0.1: squares 0.2 over 2 degrees; Student's t of 2 at 95 % is 2.919986 (published tables).
    const made = [2, 3, 3, 4].map((skin, i): TriedPour => ({ no: i, packFactor: 1.1 + i / 10, skin }));
    const half = 0.05 * 2.919986 * Math.sqrt(0.1 / 0.05);
    const effect = (by: number, isConfounded = false) =>
      skinEffect(made, { factor: 'packFactor', by, isConfounded })!;
    expectClose(effect(0.05).value, 0.3, 1e-9);
    expectClose(effect(0.05).low, 0.3 - half, 1e-5);
    expectClose(effect(0.05).high, 0.3 + half, 1e-5);
    expectClose(effect(-0.05).low, -0.3 - half, 1e-5);
    expectClose(effect(-0.05).high, -0.3 + half, 1e-5);
    expect(effect(0.05, true).low).toBe(0);
    expect(skinEffect(made.slice(1), { factor: 'packFactor', by: 1, isConfounded: false })).toBeUndefined();
  });

  it('four pours carry no line through two settings', () => {
    expect(skinEffect(light.slice(0, 4), { factor: 'moldC', by: 5, isConfounded: false })).toBeUndefined();
  });
});
