import { describe, expect, it } from 'vitest';
import { readQuantity } from '../src/units';
import { sayWhy } from '../src/words/quantityWords';
import { boxAnswer, isWanted, type NumberCase } from './corpus/numbers';

/**
 * Numbers as people type them, each with the one thing that must come of it: a value where there is one meaning, a question where there are
 * several, a refusal where there is none. Units by NIST SP 811, appendix B: 1 oz = 28.349523125 g, 1 lb = 453.59237 g, 1 in = 25.4 mm,
 * 1 lb/ft3 = 16.018463 kg/m3.
 */
const CASES: Record<string, NumberCase[]> = {
  'one meaning': [
    ['37.5', 'mass_g', 37.5],
    ['37,5', 'mass_g', 37.5],
    ['\t37.5 ', 'mass_g', 37.5],
    ['0,25', 'mass_g', 0.25],
    ['.25', 'mass_g', 0.25],
    ['8.', 'mass_g', 8],
    ['2.345', 'mass_g', 2.345],
    ['12,345.5', 'mass_g', 12345.5],
    ['12.345,5', 'mass_g', 12345.5],
    ['12 345,5', 'mass_g', 12345.5],
    ['12\u00a0345,5', 'mass_g', 12345.5],
    ['12\u202f345,5', 'mass_g', 12345.5],
    ["12'345.5", 'mass_g', 12345.5],
    ['12\u2019345.5', 'mass_g', 12345.5],
    ['7 g', 'mass_g', 7],
    ['3 oz', 'mass_g', 85.048569375],
    ['2 lb', 'mass_g', 907.18474],
    ['1.25 kg', 'mass_g', 1250],
    ['3 1/4 in', 'length_mm', 82.55],
    ['6"', 'length_mm', 152.4],
    ['3.5 cm', 'length_mm', 35],
    ['25%', 'fraction', 0.25],
    ['0.25', 'fraction', 0.25],
    ['1.3', 'pack_factor', 1.3],
    ['8 lb/ft3', 'density_kg_m3', 128.147704],
    ['110 kg/m3', 'density_kg_m3', 110],
    ['0.11', 'density_g_cm3', 0.11],
    ['100:55', 'ratio', [100, 55]],
    ['2:1', 'ratio', [2, 1]],
    ['1:2,5', 'ratio', [1, 2.5]],
  ],
  'several meanings, so it is asked': [
    ['2,345', 'mass_g', 'ask'],
    ['2e3', 'mass_g', 'ask'],
    ['\uff13\uff14', 'mass_g', 'ask'],
    ['\u0663\u0664', 'mass_g', 'ask'],
    ['3/4', 'mass_g', 'ask'],
    ['777777777777', 'mass_g', 'ask'],
    ['100/55', 'ratio', 'ask'],
    ['25', 'fraction', 'ask'],
    ['130%', 'pack_factor', 'ask'],
    ['130', 'pack_factor', 'ask'],
    ['110', 'density_g_cm3', 'ask'],
  ],
  'no meaning, so it is refused': [
    ['3,4,5', 'mass_g', 'error'],
    ['3.4.5', 'mass_g', 'error'],
    ['3..4', 'mass_g', 'error'],
    ['--3', 'mass_g', 'error'],
    ['-3', 'mass_g', 'error'],
    ['\u22123', 'mass_g', 'error'],
    ['0', 'mass_g', 'error'],
    ['', 'mass_g', 'error'],
    ['some', 'mass_g', 'error'],
    ['34some', 'mass_g', 'error'],
    ['NaN', 'mass_g', 'error'],
    ['-Infinity', 'mass_g', 'error'],
    ['9e999', 'mass_g', 'error'],
    ['9e-999', 'mass_g', 'error'],
    ['0x22', 'mass_g', 'error'],
    ['34 fl oz', 'mass_g', 'error'],
    ['34 ml', 'mass_g', 'error'],
    ['l5', 'mass_g', 'error'],
    ['5O', 'mass_g', 'error'],
    ['100', 'ratio', 'error'],
    ['0:55', 'ratio', 'error'],
    ['100:-55', 'ratio', 'error'],
    ['100:55:3', 'ratio', 'error'],
    ['0', 'density', 'error'],
  ],
};

describe.each(Object.entries(CASES))('typed with %s', (_, cases) => {
  it.each(cases)('"%s" as %s: %j', (text, kind, wanted) => {
    const got = boxAnswer(text, kind);
    expect(isWanted(wanted, got), `got ${JSON.stringify(got)}`).toBe(true);
  });
});

describe('the scale by which such lists are judged', () => {
  it('a value holds to 1 part in 10 000; a word stands only for itself', () => {
    expect(isWanted(100, 100.009)).toBe(true);
    expect(isWanted(100, 100.011)).toBe(false);
    expect(isWanted('ask', 'error')).toBe(false);
    expect(isWanted('ask', 100)).toBe(false);
    expect(isWanted(100, 'ask')).toBe(false);
    expect(isWanted([100, 55], [100, 55.1])).toBe(false);
    expect(isWanted([100, 55], 100)).toBe(false);
  });
});

it.each([
  ['0.00001 mm', 'length', 'a length below 0.001 mm.'],
  ['0.00001 g', 'mass', 'a mass below 0.001 g.'],
  ['0.00001 cm3', 'volume', 'a volume below 0.001 cm³.'],
  ['0.00001 kPa', 'pressure', 'a pressure below 0.001 kPa.'],
] as const)('%s is told to be under a bound that is not 0', (text, kind, wanted) => {
  const read = readQuantity(text, kind);
  expect(read.kind === 'one' ? '' : sayWhy(read.why).text).toContain(wanted);
});
