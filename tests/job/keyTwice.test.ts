import { describe, expect, it } from 'vitest';
import { keyTwice } from '../../src/job/keyTwice';
import { lcg } from '../support/lcg';

describe('a name that an object has twice', () => {
  it.each([
    ['{"a":1,"a":2}', 'a'],
    ['{"a":{"b":[{"c":1,"c" : 2}]}}', 'c'],
    ['{"a":1,"\\u0061":2}', 'a'],
    ['{"say \\"a\\":":1,"say \\"a\\":":2}', 'say "a":'],
    ['[{"a":1},{"a":{"a":"a"}}]', undefined],
    ['{"a":"{\\"b\\":1,\\"b\\":2}","b":"\\\\"}', undefined],
    ['"a"', undefined],
    ['{}', undefined],
  ])('%s: %s', (text, name) => {
    expect(() => JSON.parse(text) as unknown).not.toThrow();
    expect(keyTwice(text)).toBe(name);
  });

  it('is found wherever one is written in, and nowhere else (seed 5, 500 texts)', () => {
    const random = lcg(5);
    const signs = ['"', '\\', '{', '}', '[', ']', ':', ',', 'a', ' ', '\n', 'é'];
    const word = (): string =>
      Array.from({ length: Math.floor(6 * random()) }, () => signs[Math.floor(signs.length * random())]).join(
        '',
      );
    for (let round = 0; round < 500; round++) {
      const entries = Array.from({ length: 5 }, (_, k): [string, unknown] => [
        `${k}${word()}`,
        [word(), { [word()]: word() }],
      ]);
      const text = JSON.stringify(Object.fromEntries(entries), null, round % 3);
      expect(keyTwice(text), text).toBeUndefined();
      const [name] = entries[Math.floor(5 * random())]!;
      const more = `{${JSON.stringify(name)}:1,${text.slice(1)}`;
      expect(keyTwice(more), more).toBe(name);
    }
  });
});
