import { describe, expect, it } from 'vitest';
import { bad } from '../../../src/problem';
import { say } from '../../../src/words/say';
import {
  LEARN_BOUNDS,
  LEARN_RULES,
  RUN_BOUNDS,
  RUN_RULES,
  VOLUME_BOUNDS,
  VOLUME_RULES,
} from '../../../src/yield';
import type { Rule } from '../../../src/yield';

describe('what is refused is named in words', () => {
  it.each(Object.entries({ ...LEARN_BOUNDS, ...VOLUME_BOUNDS, ...RUN_BOUNDS }))('%s', (input, bounds) => {
    const { problem } = bad('INPUT_OUT_OF_BOUNDS', { input, value: bounds.high + 1, ...bounds });
    const { text } = say(problem);
    expect(text.startsWith(input)).toBe(false);
    expect(text).toMatch(/is not within/);
  });

  it.each(['castings', 'molds', 'moldLife', 'moldUsed'])('%s that is not whole', (input) => {
    expect(say(bad('INPUT_NOT_WHOLE', { input, value: 2.5 }).problem).text.startsWith(input)).toBe(false);
  });
});

describe('every figure says where it comes from', () => {
  const rules: Record<string, Rule> = { ...LEARN_RULES, ...VOLUME_RULES, ...RUN_RULES };
  it.each(Object.entries(rules))('%s', (_name, { from, value, low = value, high = value }) => {
    expect(from.length).toBeGreaterThan(10);
    expect(from).toMatch(/Chosen here|common practice, no source|assum|mass balance/);
    expect(low <= value && value <= high).toBe(true);
  });
});
