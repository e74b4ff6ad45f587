import { describe, expect, it } from 'vitest';
import { finding } from '../../../src/problem';
import { say } from '../../../src/words/say';
import { DEMOLD_BOUNDS, DEMOLD_RULES, type Rule } from '../../../src/yield';

describe('the figures of taking a casting out', () => {
  it.each(Object.entries<Rule>(DEMOLD_RULES))(
    '%s says where it comes from and lies within its range',
    (_, rule) => {
      expect(rule.from).toMatch(/common practice, no source|from memory, not verified|chosen here/);
      expect(rule.low ?? rule.value).toBeLessThanOrEqual(rule.value);
      expect(rule.high ?? rule.value).toBeGreaterThanOrEqual(rule.value);
    },
  );

  it.each(Object.entries(DEMOLD_BOUNDS))('%s is named in words when it is refused', (input, bounds) => {
    expect(bounds.low).toBeLessThan(bounds.high);
    const { text } = say(finding('INPUT_OUT_OF_BOUNDS', 'stop', { input, value: -9, ...bounds }));
    expect(text).toMatch(/^[A-Z][A-Za-z ]+ is −9/);
    expect(text.startsWith(input)).toBe(false);
  });
});
