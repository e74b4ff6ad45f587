import { describe, expect, it } from 'vitest';
import { readSiliconeCard } from '../../../src/yield';
import { say } from '../../../src/words/say';
import { problemOf, valueOf } from '../../support/outcome';

const OLD = {
  name: 'Invented',
  densityGCm3: 1.18,
  ratio: { base: 10, catalyst: 1, by: 'mass' },
  potLifeMin: 25,
  linearShrink: 0.002,
  kitsKg: [1.1, 5.5],
};
const NEW = {
  name: 'Invented',
  cure: 'condensation',
  densityKgM3: 1180,
  ratio: { base: 10, catalyst: 1, by: 'mass' },
  potLifeMin: 25,
  potLifeAtC: 23,
  mixedViscosityPaS: 22,
  shoreA: 25,
  linearShrinkShare: 0.002,
  shrinkFrom: 'data-sheet',
  kits: [{ kg: 1.1, price: 30 }, { kg: 5.5 }],
  openedOn: '2026-03-31',
  cureMin: 1440,
};
const refused = (json: unknown): string => {
  const problem = problemOf(readSiliconeCard(json));
  expect(problem.code).toBe('SILICONE_CARD_FIELD');
  expect(say(problem).text).not.toMatch(/undefined|NaN/);
  return String(problem.values.field);
};

describe('a silicone card', () => {
  it('of an older file opens: g/cm3 become kg/m3, bare kit sizes become kits without a price', () => {
    expect(valueOf(readSiliconeCard(OLD))).toEqual({
      name: 'Invented',
      densityKgM3: 1180,
      ratio: { base: 10, catalyst: 1, by: 'mass' },
      potLifeMin: 25,
      linearShrinkShare: 0.002,
      kits: [{ massKg: 1.1 }, { massKg: 5.5 }],
    });
  });

  it('says all that the data sheet says', () => {
    const kits = [{ massKg: 1.1, price: 30 }, { massKg: 5.5 }];
    expect(valueOf(readSiliconeCard(NEW))).toEqual({ ...NEW, kits });
  });

  it('can be written and read again, and what it does not know stays on it', () => {
    for (const json of [OLD, { ...NEW, color: 'blue', kits: [{ kg: 1, code: 'x' }] }]) {
      const card = valueOf(readSiliconeCard(json));
      expect(valueOf(readSiliconeCard(JSON.parse(JSON.stringify(card))))).toEqual(card);
    }
    const card = valueOf(readSiliconeCard({ ...NEW, color: 'blue', kits: [{ kg: 1, code: 'x' }] }));
    expect(card).toMatchObject({ color: 'blue', kits: [{ massKg: 1, code: 'x' }] });
  });

  it('turns a ratio by volume into one by weight with the densities of the parts: 10:1 of 1200 and 1000 is 12:1', () => {
    const ratio = { base: 10, catalyst: 1, by: 'volume' };
    const partDensities = { baseKgM3: 1200, catalystKgM3: 1000 };
    expect(valueOf(readSiliconeCard({ ...OLD, ratio, partDensities })).ratio).toEqual({
      base: 12,
      catalyst: 1,
      by: 'mass',
    });
    expect(refused({ ...OLD, ratio })).toBe('partDensities');
    expect(refused({ ...OLD, ratio, partDensities: { baseKgM3: 1200 } })).toBe('partDensities');
    expect(say(problemOf(readSiliconeCard({ ...OLD, ratio }))).text).toContain('a scale weighs no volume');
  });
});

describe('a silicone card that is wrong names the field', () => {
  it.each([
    ['potLifeMin', { potLifeMin: 0 }],
    ['potLifeMin', { potLifeMin: undefined }],
    ['potLifeMin', { potLifeMin: NaN }],
    ['potLifeMin', { potLifeMin: '25' }],
    ['densityGCm3', { densityGCm3: 1180 }],
    ['densityGCm3', { densityGCm3: NaN }],
    ['densityKgM3', { densityGCm3: undefined }],
    ['densityKgM3', { densityGCm3: undefined, densityKgM3: 1.18 }],
    ['densityKgM3', { densityKgM3: 1180 }],
    ['ratio', { ratio: { base: 10, catalyst: 0, by: 'mass' } }],
    ['ratio', { ratio: { base: -10, catalyst: 1, by: 'mass' } }],
    ['ratio', { ratio: { base: 10, catalyst: 1 } }],
    ['ratio', { ratio: '10:1' }],
    ['kitsKg', { kitsKg: [1.1, 0] }],
    ['kitsKg', { kitsKg: 1.1 }],
    ['kits', { kits: [{ kg: 1.1 }] }],
    ['kits', { kitsKg: undefined, kits: [{ kg: 1.1, price: -1 }] }],
    ['kits', { kitsKg: undefined, kits: [{ kg: 1.1, price: 'free' }] }],
    ['kits', { kitsKg: undefined, kits: [1.1] }],
    ['kits', { kitsKg: undefined, kits: Array.from({ length: 51 }, () => ({ kg: 1 })) }],
    ['linearShrink', { linearShrink: 2 }],
    ['linearShrinkShare', { linearShrinkShare: 0.002 }],
    ['shoreA', { shoreA: 250 }],
    ['mixedViscosityPaS', { mixedViscosityPaS: 25000 }],
    ['cureMin', { cureMin: 0 }],
    ['cure', { cure: 'tin' }],
    ['shrinkFrom', { shrinkFrom: 'hearsay' }],
    ['openedOn', { openedOn: '2026-02-30' }],
    ['openedOn', { openedOn: 'March' }],
    ['name', { name: ' ' }],
  ])('%s', (field, change) => {
    expect(refused({ ...OLD, ...change })).toBe(field);
  });

  it('that is no object', () => {
    for (const json of [null, 5, 'silicone', []]) expect(refused(json)).toBe('card');
  });
});
