import { describe, expect, it } from 'vitest';
import { figuresOf, preparePour, type OpenedFigure, type PourAsk } from '../../src/plan';
import { expectClose } from '../support/close';
import { BY_HAND, inputsOf } from '../support/figuresByHand';
import { FULL_POUR as ASK } from '../support/fullPour';
import { valueOf } from '../support/outcome';

const opened = (ask: PourAsk): Map<string, OpenedFigure> =>
  new Map(figuresOf(valueOf(preparePour(ask)), ask).map((figure) => [figure.key, figure]));

/** A sum of a series, a rounding rule and sums over as many rows as there are doubts: tested with their own formulas. */
const ELSEWHERE = [
  'sigma_share',
  'pack_sigma_share',
  'cup_g',
  'warm_heated_min',
  'warm_deep_min',
  'warm_surface_c',
  'pour_within_min',
];

describe('every number can be opened', () => {
  const figures = opened(ASK);

  it('to a formula, inputs with unit and origin, and a source, each once', () => {
    expect([...figures.keys()].sort()).toEqual([...Object.keys(BY_HAND), ...ELSEWHERE].sort());
    for (const { key, value, formula, inputs, source } of figures.values()) {
      expect(Number.isFinite(value), key).toBe(true);
      for (const count of [formula.length, source.length, inputs.length])
        expect(count, key).toBeGreaterThan(0);
      for (const one of inputs)
        expect(Number.isFinite(one.value) && one.from !== '', `${key}: ${one.title}`).toBe(true);
    }
    expect(figures.size).toBe(figuresOf(valueOf(preparePour(ASK)), ASK).length);
  });

  it.each(Object.keys(BY_HAND))('and the inputs shown give %s by hand', (key) => {
    const figure = figures.get(key)!;
    // The error function by hand is good to seven digits, and that of a far tail to fewer.
    expectClose(
      figure.value,
      BY_HAND[key]!(inputsOf(figure)),
      key === 'short_fill_chance' ? 1e-4 : 1e-6,
      key,
    );
  });

  it('doubts add up as squares over the mass, and stay at 5 % without a cup of today', () => {
    const { value, inputs } = figures.get('sigma_share')!;
    const grams = inputs.filter(({ unit }) => unit === 'g');
    const [rows, mass] = [grams.slice(0, -1), grams.at(-1)!.value];
    const share = Math.hypot(...rows.map((row) => row.value)) / mass;
    expectClose(value, Math.max(0.05, share), 1e-9, 'doubt');
    const tested = opened({ ...ASK, pour: { ...ASK.pour, freeRiseKgM3: { value: 96, from: 'cup-test' } } });
    expect(tested.get('sigma_share')!.value).toBeLessThan(0.05);
    expect(tested.get('sigma_share')!.inputs.map(({ title }) => title)).not.toContain('least doubt');
  });

  it('of several cups each has its own grams, and all of them their sum', () => {
    const several = opened({ ...ASK, cups: { cupCm3: 800 } });
    const value = (key: string): number => several.get(key)!.value;
    expect(value('cups')).toBeGreaterThan(1);
    expect(value('all_cups_g')).toBe(value('cups') * value('cup_g'));
    expect(value('cup_a_g') + value('cup_b_g')).toBe(value('cup_g'));
    expect(value('cup_a_g')).toBeLessThan(value('part_a_g'));
  });

  it('with what was assumed named as such, and what was given not', () => {
    const residue = (ask: PourAsk) =>
      opened(ask)
        .get('mixed_g')!
        .inputs.find(({ title }) => title === 'residue in the cup')!;
    expect(residue(ASK)).toMatchObject({ isAssumed: true });
    expect(residue(ASK).from).toContain('common practice, no source');
    const weighed = { ...ASK, pour: { ...ASK.pour, residueG: { value: 24, from: 'weighed' as const } } };
    expect(residue(weighed)).toEqual({ title: 'residue in the cup', value: 24, unit: 'g', from: 'weighed' });
  });
});

describe('what just fills', () => {
  const ready = valueOf(preparePour(ASK));

  it('is the mix of the least pack, between ends that are as far by ratio', () => {
    const { lowPack, valuePack, highPack, lowG, valueG, highG } = ready.justFills!;
    expect(valuePack).toBe(ready.batch.leastPack);
    expectClose(lowPack * highPack, valuePack ** 2, 1e-9, 'ends');
    expect(lowG < valueG && valueG < highG).toBe(true);
  });

  it('at its high end falls short once in twenty: a pour of that pack says so', () => {
    const { highPack, highG } = ready.justFills!;
    const there = valueOf(
      preparePour({ ...ASK, pour: { ...ASK.pour, packFactor: { value: highPack, from: 'chosen' } } }),
    );
    expectClose(there.batch.shortFillChance, 0.05, 1e-6, 'chance');
    expectClose(there.batch.mixedG, highG, 1e-9, 'mass');
  });

  it('is not told where no pack is that sure', () => {
    const cavity = { volumeCm3: { value: 4500, low: 500, high: 9000, from: 'scanned' as const } };
    const freeRiseKgM3 = { value: 96, from: 'data-sheet' as const, uShare: 0.5 };
    const wide = { ...ASK, pour: { ...ASK.pour, cavity, freeRiseKgM3 } };
    expect(valueOf(preparePour(wide))).not.toHaveProperty('justFills');
  });
});
