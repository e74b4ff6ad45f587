import { describe, expect, it } from 'vitest';
import {
  CM3_PER_FL_OZ,
  CM3_PER_GAL,
  G_PER_OZ,
  KG_M3_PER_LB_FT3,
  KPA_PER_PSI,
  readAllReadings,
  readQuantity,
} from '../src/units';
import type { ReadOptions, ScalarKind } from '../src/units';
import { expectClose } from './support/close';
import { lcg } from './support/lcg';

/** Conversions are exact by definition: only the arithmetic of doubles may differ. */
const EXACT = 1e-12;

function expectOne(
  text: string,
  kind: ScalarKind,
  value: number,
  options?: ReadOptions,
  relative = EXACT,
): void {
  const read = readQuantity(text, kind, options);
  if (read.kind !== 'one') throw new Error(`"${text}" as ${kind}: got ${JSON.stringify(read)}`);
  expectClose(read.value, value, relative, `"${text}" as ${kind}`);
}

describe('constants (NIST SP 811, appendix B)', () => {
  it.each([
    ['ounce, g', G_PER_OZ, 28.349523125, EXACT],
    ['US gallon, cm3', CM3_PER_GAL, 3785.411784, EXACT],
    ['US fluid ounce, cm3', CM3_PER_FL_OZ, 29.5735295625, EXACT],
    ['lb/ft3, kg/m3', KG_M3_PER_LB_FT3, 16.018463373960138, EXACT],
    ['psi, kPa', KPA_PER_PSI, 6.894757293168, 1e-12],
  ])('%s', (name, ours, published, relative) => expectClose(ours, published, relative, name));
});

describe('readQuantity reads what has one meaning', () => {
  it.each<[string, ScalarKind, number]>([
    ['264 mm', 'length', 264],
    ['10 1/4 in', 'length', 260.35],
    ['11 3/8"', 'length', 288.925],
    ['11⅜″', 'length', 288.925],
    ['½ in', 'length', 12.7],
    ['1/2 in', 'length', 12.7],
    ['5 ft 3 in', 'length', 1600.2],
    ['5\'3"', 'length', 1600.2],
    ['5\' 3 1/2"', 'length', 1612.9],
    ['2.5cm', 'length', 25],
    ['1 m 20 cm', 'length', 1200],
    ['1\u202f234,5 mm', 'length', 1234.5],
    ["1'234 mm", 'length', 1234],
    ['0,250 m', 'length', 250],
    ['5 lb 3 oz', 'mass', 5 * 453.59237 + 3 * 28.349523125],
    ['.5 kg', 'mass', 500],
    ['12 OZ', 'mass', 340.1942775],
    ['1.234.567,5 g', 'mass', 1234567.5],
    ['+5 g', 'mass', 5],
    ['300 mL', 'volume', 300],
    ['0.3 L', 'volume', 300],
    ['300 cm3', 'volume', 300],
    ['300 cm³', 'volume', 300],
    ['18 fl oz', 'volume', 532.323532125],
    ['1 gal', 'volume', 3785.411784],
    ['10 cu in', 'volume', 163.87064],
    ['6 pcf', 'density', 96.11078024376083],
    ['6 lb/ft3', 'density', 96.11078024376083],
    ['6 lbs / cu ft', 'density', 96.11078024376083],
    ['6 lb/ft^3', 'density', 96.11078024376083],
    ['96 kg/m3', 'density', 96],
    ['96 g/L', 'density', 96],
    ['0.096 g/cm3', 'density', 96],
    ['0,096 g/mL', 'density', 96],
    ['72 F', 'temperature', 22.22222222222222],
    ['72 °F', 'temperature', 22.22222222222222],
    ['-4 C', 'temperature', -4],
    ['−4 °C', 'temperature', -4],
    ['300 K', 'temperature', 26.85],
    ['9 F', 'temperatureDifference', 5],
    ['5 K', 'temperatureDifference', 5],
    ['1013.25 hPa', 'pressure', 101.325],
    ['29.92 inHg', 'pressure', 101.3207],
    // A poise is a tenth of a pascal second, by definition (NIST SP 811, appendix B).
    ['1 Pa s', 'viscosity', 1],
    ['1.2 Pa·s', 'viscosity', 1.2],
    ['850 mPa s', 'viscosity', 0.85],
    ['850 mPa.s', 'viscosity', 0.85],
    ['1200 cP', 'viscosity', 1.2],
    ['1 200 cps', 'viscosity', 1.2],
    ['12 poise', 'viscosity', 1.2],
    ['1 %', 'share', 0.01],
    ['0,5 %', 'share', 0.005],
    ['0.25', 'share', 0.25],
    ['1 in 100', 'share', 0.01],
    ['1 in 1 000', 'share', 0.001],
    ['3 in 200', 'share', 0.015],
    ['1,5', 'packFactor', 1.5],
    ['110%', 'overpack', 1.1],
    ['1,5', 'plain', 1.5],
    ['-3', 'plain', -3],
  ])('%s as %s', (text, kind, value) => expectOne(text, kind, value, {}, text.includes('Hg') ? 1e-5 : EXACT));

  it('takes a bare number in the unit the option states', () => {
    expectOne('12,5', 'mass', 12.5, { bareUnit: 'g' });
    expectOne('0.096', 'density', 96, { bareUnit: 'g/cm3' });
    expectOne('72', 'temperature', 22.22222222222222, { bareUnit: 'F' });
    expectOne('1 1/2', 'length', 38.1, { bareUnit: 'in' });
    expectOne('2', 'share', 0.02, { bareUnit: '%' });
  });

  it('allows zero and negative only where the option does', () => {
    expect(readQuantity('0 g', 'mass')).toMatchObject({ kind: 'error', why: { reason: 'not-positive' } });
    expect(readQuantity('0 g', 'mass', { allowZero: true })).toMatchObject({ kind: 'one', value: 0 });
    expect(readQuantity('-10 mm', 'length')).toMatchObject({ kind: 'error', why: { reason: 'negative' } });
    expect(readQuantity('-10 mm', 'length', { allowNegative: true })).toMatchObject({
      kind: 'one',
      value: -10,
    });
  });
});

describe('readQuantity asks about what has several meanings', () => {
  it.each<[string, ScalarKind, ReadOptions, string, number[]]>([
    ['1,250', 'mass', { bareUnit: 'g' }, 'comma-or-thousands', [1.25, 1250]],
    ['1,250 kg', 'mass', {}, 'comma-or-thousands', [1250, 1250000]],
    ['12,345 mm', 'length', {}, 'comma-or-thousands', [12.345, 12345]],
    ['2e3 g', 'mass', {}, 'exponent', [2000]],
    ['٢٥ g', 'mass', {}, 'other-digits', [25]],
    ['３ in', 'length', {}, 'other-digits', [76.2]],
    ['3/4', 'mass', { bareUnit: 'g' }, 'bare-fraction', [0.75]],
    ['12', 'length', {}, 'unit-missing', [12, 120, 304.8]],
    ['90', 'density', { bareUnit: 'g/cm3' }, 'implausible', [90000, 90, 90 * KG_M3_PER_LB_FT3]],
    ['0.1', 'density', { bareUnit: 'kg/m3' }, 'implausible', [0.1, 100, 0.1 * KG_M3_PER_LB_FT3]],
    ['888888888888', 'mass', { bareUnit: 'g' }, 'implausible', [888888888888]],
    ['25', 'share', {}, 'percent-or-number', [0.25]],
    ['1', 'share', {}, 'percent-or-number', [0.01, 1]],
    ['130 %', 'packFactor', {}, 'percent-or-number', [1.3]],
    ['10 %', 'overpack', {}, 'percent-or-number', [1.1, 0.1]],
    ['1.1', 'overpack', {}, 'percent-or-number', [1.1]],
    ['1.1', 'overpack', { bareUnit: '%' }, 'percent-or-number', [1.1, 1.011]],
    ['10', 'overpack', { bareUnit: '%' }, 'percent-or-number', [1.1, 0.1]],
    ['1 in 1,000', 'share', {}, 'comma-or-thousands', [1, 0.001]],
    ['1000 m3', 'volume', {}, 'implausible', [1e9]],
    ['1000', 'viscosity', {}, 'unit-missing', [1000, 1, 1]],
  ])('%s as %s', (text, kind, options, reason, values) => {
    const read = readQuantity(text, kind, options);
    if (read.kind !== 'ask') throw new Error(`got ${JSON.stringify(read)}`);
    expect(read.why.reason).toBe(reason);
    expect(read.readings.length).toBeGreaterThanOrEqual(values.length);
    values.forEach((value, index) =>
      expectClose(read.readings[index]?.value ?? Number.NaN, value, EXACT, text),
    );
  });

  it('gives both readings of 1,250 as texts', () => {
    const read = readQuantity('1,250', 'plain');
    expect(read.kind === 'ask' && read.readings.map(({ text }) => text)).toEqual(['1.25', '1250']);
  });
});

describe('readQuantity refuses what has none', () => {
  it.each<[string, ScalarKind, string]>([
    ['', 'mass', 'empty'],
    ['   ', 'mass', 'empty'],
    ['about ten', 'mass', 'not-a-number'],
    ['NaN', 'mass', 'not-a-number'],
    ['Infinity g', 'mass', 'not-a-number'],
    ['--5 g', 'mass', 'not-a-number'],
    ['5 g!', 'mass', 'not-a-number'],
    ['1..5 g', 'mass', 'bad-grouping'],
    ['1.2.3 g', 'mass', 'bad-grouping'],
    ['1,2,3 g', 'mass', 'bad-grouping'],
    ['12,3456,789 g', 'mass', 'bad-grouping'],
    ['5, g', 'mass', 'bad-grouping'],
    ['1e309 g', 'mass', 'out-of-reach'],
    ['1e-400 g', 'mass', 'out-of-reach'],
    ['0x1F', 'mass', 'unknown-unit'],
    ['5O g', 'mass', 'unknown-unit'],
    ['7 furlong', 'length', 'unknown-unit'],
    ['18 oz', 'volume', 'wrong-kind'],
    ['18 fl oz', 'mass', 'wrong-kind'],
    ['12 mL', 'mass', 'wrong-kind'],
    ['1 kPa', 'viscosity', 'wrong-kind'],
    ['1 Pa s', 'pressure', 'wrong-kind'],
    ['0 cP', 'viscosity', 'not-positive'],
    ['-4 g', 'mass', 'negative'],
    ['−4 g', 'mass', 'negative'],
    ['0 pcf', 'density', 'not-positive'],
    ['3 oz 5 lb', 'mass', 'bad-compound'],
    ['5 lb 20 oz', 'mass', 'bad-compound'],
    ['5.5 ft 3 in', 'length', 'bad-compound'],
    ['1 1/0 in', 'length', 'not-a-number'],
    ['150 %', 'share', 'share-out-of-range'],
    ['3 in 2', 'share', 'share-out-of-range'],
    ['1 in 0', 'share', 'not-positive'],
    ['1 in -5', 'share', 'negative'],
    ['1 in 100 in', 'share', 'bad-compound'],
    ['1 in 100', 'overpack', 'bad-compound'],
    ['-300 C', 'temperature', 'below-absolute-zero'],
    ['1'.repeat(81), 'mass', 'too-long'],
  ])('%s as %s', (text, kind, reason) => {
    const read = readQuantity(text, kind, kind === 'mass' ? { bareUnit: 'g' } : {});
    expect(read).toMatchObject({ kind: 'error', why: { reason } });
  });

  it('treats a wrong stated unit as our own mistake', () => {
    expect(() => readQuantity('5', 'mass', { bareUnit: 'mm' })).toThrow(
      'readQuantity: expected a unit of mass, got bareUnit mm',
    );
  });
});

describe('ratio, always A:B', () => {
  it.each<[string, { a: number; b: number }]>([
    ['52:100', { a: 52, b: 100 }],
    ['100 : 55', { a: 100, b: 55 }],
    ['1:1,5', { a: 1, b: 1.5 }],
    ['2∶1', { a: 2, b: 1 }],
  ])('%s', (text, value) => expect(readQuantity(text, 'ratio')).toMatchObject({ kind: 'one', value }));

  it('asks about a slash and about a comma before three digits', () => {
    expect(readQuantity('52/100', 'ratio')).toMatchObject({
      kind: 'ask',
      readings: [{ value: { a: 52, b: 100 } }],
    });
    expect(readQuantity('1:1,250', 'ratio')).toMatchObject({
      kind: 'ask',
      readings: [{ value: { a: 1, b: 1.25 } }, { value: { a: 1, b: 1250 } }],
    });
  });

  it.each(['100', '', '52:', ':100', '52:0', '52:-100', '52:100:5', '52 g:100 g', 'a:b'])(
    'refuses "%s"',
    (text) => {
      expect(readQuantity(text, 'ratio').kind).toBe('error');
    },
  );
});

describe('readAllReadings', () => {
  const kinds = (text: string): string[] => readAllReadings(text).map(({ kind }) => kind);

  it.each<[string, string[]]>([
    ['6 pcf', ['density']],
    ['5 F', ['temperature', 'temperatureDifference']],
    ['12 oz', ['mass']],
    ['1,250', ['plain', 'plain']],
    ['52:100', ['ratio']],
    ['nothing', []],
    ['7 furlong', []],
    ['110 %', ['packFactor', 'overpack']],
    ['-5 mm', ['length']],
  ])('%s', (text, wanted) => expect(kinds(text)).toEqual(wanted));

  it('carries value, unit and both systems', () => {
    expect(readAllReadings('10 in')).toEqual([
      { kind: 'length', value: 254, unit: 'mm', text: '254 mm (10.00 in)' },
    ]);
  });
});

describe('wild text (seed 20)', () => {
  it('never throws, never yields a value that is not finite', () => {
    const random = lcg(20);
    const alphabet = '0123456789.,.,  \'"-+/:%eEgkmlbozftin³½٣ﾟ∞x^';
    for (let round = 0; round < 5000; round += 1) {
      const length = Math.floor(80 * random());
      const text = Array.from({ length }, () => alphabet[Math.floor(alphabet.length * random())] ?? '').join(
        '',
      );
      for (const kind of ['length', 'mass', 'density', 'temperature', 'share', 'plain'] as const) {
        const read = readQuantity(text, kind, kind === 'mass' ? { bareUnit: 'g' } : {});
        const values =
          read.kind === 'one'
            ? [read.value]
            : read.kind === 'ask'
              ? read.readings.map(({ value }) => value)
              : [];
        expect(values.every(Number.isFinite), `seed 20, round ${round}: ${JSON.stringify(text)}`).toBe(true);
      }
    }
  });
});
