import { describe, expect, it } from 'vitest';
import { readFoamCard, reversedRatio } from '../../src/yield/foamCard';
import { problemOf, valueOf } from '../support/outcome';

const card = {
  name: 'Light, made up',
  freeRiseKgM3: 96.1,
  freeRiseFrom: 'data-sheet',
  ratio: { a: 100, b: 55, by: 'mass' },
  partDensities: { aKgM3: 1100, bKgM3: 1200 },
  creamS: 40,
  riseS: 150,
  openMin: 25,
};

describe('foam card from a shop file', () => {
  it('reads a whole card and a bare one, and keeps fields it does not know', () => {
    expect(valueOf(readFoamCard({ ...card, kitG: 2000 }))).toEqual({ ...card, kitG: 2000 });
    const { name, freeRiseKgM3, freeRiseFrom, ratio } = card;
    expect(valueOf(readFoamCard({ name, freeRiseKgM3, freeRiseFrom, ratio }))).toEqual({
      name,
      freeRiseKgM3,
      freeRiseFrom,
      ratio,
    });
  });

  it.each<[string, unknown]>([
    ['card', null],
    ['card', [card]],
    ['name', { ...card, name: ' ' }],
    ['freeRiseKgM3', { ...card, freeRiseKgM3: '96' }],
    ['freeRiseFrom', { ...card, freeRiseFrom: 'hearsay' }],
    ['ratio', { ...card, ratio: 1.8 }],
    ['ratio', { ...card, ratio: { a: 100, b: 55 } }],
    ['partDensities', { ...card, partDensities: { aKgM3: 1100 } }],
    ['creamS', { ...card, creamS: -1 }],
    ['openMin', { ...card, openMin: '25' }],
  ])('names the field %s', (field, json) => {
    expect(problemOf(readFoamCard(json))).toMatchObject({ code: 'FOAM_CARD_FIELD', values: { field } });
  });

  it.each<[string, string, unknown]>([
    ['a free rise in g/cm3', 'INPUT_OUT_OF_BOUNDS', { ...card, freeRiseKgM3: 0.096 }],
    ['a free rise that is no number', 'INPUT_NOT_A_NUMBER', { ...card, freeRiseKgM3: Number.NaN }],
    ['a ratio with a zero', 'RATIO_NOT_POSITIVE', { ...card, ratio: { a: 0, b: 55, by: 'mass' } }],
    [
      'by volume without densities',
      'PART_DENSITIES_NEEDED',
      { ...card, ratio: { a: 2, b: 1, by: 'volume' }, partDensities: undefined },
    ],
    ['a liquid density that is no number', 'FOAM_CARD_FIELD', { ...card, liquidDensityKgM3: 'thick' }],
    ['a liquid density of 1.07', 'INPUT_OUT_OF_BOUNDS', { ...card, liquidDensityKgM3: 1.07 }],
  ])('refuses %s', (_name, code, json) => expect(problemOf(readFoamCard(json)).code).toBe(code));
});

describe('a ratio typed in the other order', () => {
  const known = valueOf(readFoamCard(card));

  it.each([
    [{ a: 55, b: 100, by: 'mass' as const }, true],
    [{ a: 0.55, b: 1, by: 'mass' as const }, true],
    [{ a: 100, b: 55, by: 'mass' as const }, false],
    [{ a: 52, b: 100, by: 'mass' as const }, false],
    [{ a: 55, b: 100, by: 'volume' as const }, false],
  ])('%o: %s', (typed, reversed) => expect(reversedRatio(known, typed)).toBe(reversed));

  it('1:1 is never reversed', () => {
    const even = valueOf(readFoamCard({ ...card, ratio: { a: 1, b: 1, by: 'mass' } }));
    expect(reversedRatio(even, { a: 2, b: 2, by: 'mass' })).toBe(false);
  });
});
