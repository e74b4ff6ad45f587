import type { Place } from '../../problem';
import { Refusal } from './refusal';
import { plain } from './xmlStream';

/** m00 m01 m02 m10 m11 m12 m20 m21 m22 m30 m31 m32: a row vector times this matrix (3MF Core Specification 1.4.0, 3.3). */
export type Transform = readonly number[];

export const UNMOVED: Transform = [1, 0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0];

/** A decimal number as XML writes it, or NaN. */
export const decimalOf = (text: string | undefined): number =>
  text !== undefined && /^\s*[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?\s*$/.test(text) ? Number(text) : NaN;

/** Throws a Refusal: SYNTAX, BAD_NUMBER, BAD_TRANSFORM (one that flattens the piece). */
export function transformOf(text: string | undefined, at: Place): Transform {
  if (text === undefined) return UNMOVED;
  const words = text.trim().split(/\s+/, 13);
  if (words.length !== 12)
    throw new Refusal(
      'SYNTAX',
      { expected: '12 numbers of a transform', text: `${words.length} numbers` },
      at,
    );
  const numbers = words.map(decimalOf);
  const wrong = numbers.findIndex((x) => !Number.isFinite(x));
  if (wrong >= 0) throw new Refusal('BAD_NUMBER', { text: plain(words[wrong]!) }, at);
  if (!(Math.abs(volumeFactor(numbers)) > 0)) throw new Refusal('BAD_TRANSFORM', {}, at);
  return numbers;
}

/** The first transform and then the second. */
export function both(first: Transform, second: Transform): Transform {
  const out: number[] = [];
  for (let row = 0; row < 4; row++) {
    for (let k = 0; k < 3; k++) {
      let sum = row === 3 ? second[9 + k]! : 0;
      for (let i = 0; i < 3; i++) sum += first[3 * row + i]! * second[3 * i + k]!;
      out.push(sum);
    }
  }
  return out;
}

/** What a volume is multiplied by; below zero where the transform mirrors. */
export function volumeFactor(m: Transform): number {
  return (
    m[0]! * (m[4]! * m[8]! - m[5]! * m[7]!) -
    m[1]! * (m[3]! * m[8]! - m[5]! * m[6]!) +
    m[2]! * (m[3]! * m[7]! - m[4]! * m[6]!)
  );
}
