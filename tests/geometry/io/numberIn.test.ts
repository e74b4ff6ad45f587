import { expect, it } from 'vitest';
import { numberIn } from '../../../src/geometry/io/text';
import { between, lcg } from '../../support/lcg';
import { textBytes } from '../../support/writeMesh';

const read = (text: string): number => numberIn(textBytes(text), 0, text.length);

const SEED = 4711;

/** A decimal string of up to 20 digits with a point anywhere, a sign or not, an exponent or not. */
function decimal(random: () => number): string {
  const count = 1 + Math.floor(between(random, 0, 20));
  let digits = '';
  for (let i = 0; i < count; i++) digits += Math.floor(between(random, 0, 10));
  const point = Math.floor(between(random, 0, count + 1));
  const mantissa = random() < 0.7 ? `${digits.slice(0, point)}.${digits.slice(point)}` : digits;
  const sign = ['', '-', '+'][Math.floor(between(random, 0, 3))];
  const exponent =
    random() < 0.5
      ? ''
      : `${random() < 0.5 ? 'e' : 'E'}${['', '-', '+'][Math.floor(between(random, 0, 3))]}${Math.floor(between(random, 0, 40))}`;
  return sign + mantissa + exponent;
}

it(`reads 200 000 random decimals bit for bit as the engine's own Number() does, seed ${SEED}`, () => {
  const random = lcg(SEED);
  const different: string[] = [];
  for (let i = 0; i < 200_000; i++) {
    const text = decimal(random);
    if (!Object.is(read(text), Number(text))) different.push(`${text}: ${read(text)} is not ${Number(text)}`);
  }
  expect(different).toEqual([]);
});

it('writes and reads back 20 000 random float32 and float64 values bit for bit', () => {
  const random = lcg(SEED + 1);
  for (let i = 0; i < 20_000; i++) {
    const x = between(random, -1, 1) * 10 ** Math.floor(between(random, -12, 12));
    for (const value of [x, Math.fround(x)]) expect(read(String(value))).toBe(value);
    for (const text of [x.toFixed(6), x.toExponential(8), x.toPrecision(9)])
      expect(Object.is(read(text), Number(text)), text).toBe(true);
  }
});

it.each([
  '0',
  '-0',
  '+0',
  '0.0',
  '.5',
  '5.',
  '-.5',
  '+5.e3',
  '1e0',
  '1E+22',
  '1e-22',
  '1e23',
  '123456789012345',
  '1234567890123456',
  '9007199254740993',
  '0.1',
  '1e308',
  '4.9e-324',
  '2e-324',
  '00001.5',
  `0.${'0'.repeat(400)}1e401`,
])('%s is what Number() says', (text) => {
  expect(Object.is(read(text), Number(text))).toBe(true);
});

it.each([
  '',
  '-',
  '+',
  '.',
  '-.',
  'e5',
  '1e',
  '1e+',
  '1e5.',
  '1.2.3',
  '10,0',
  '1_000',
  '0x1F',
  'nan',
  'NaN',
  'inf',
  'Infinity',
  '-Infinity',
  '1 2',
  '--1',
  '+-1',
  '1d5',
  '1e5e5',
  '１',
])('"%s" is no number', (text) => {
  const bytes = textBytes(text);
  expect(numberIn(bytes, 0, bytes.length)).toBeNaN();
});

it('an overflow is told from a bad number: 1e400 gives Infinity, as Number() does', () => {
  expect(read('1e400')).toBe(Infinity);
  expect(read('-1e400')).toBe(-Infinity);
});

it('reads only the bytes it is given', () => {
  expect(numberIn(textBytes('x12.5e3y'), 1, 5)).toBe(12.5);
  expect(numberIn(textBytes('1e-5'), 0, 2)).toBeNaN();
  expect(numberIn(textBytes('1e-5'), 0, 3)).toBeNaN();
});
