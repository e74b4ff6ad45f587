import { describe, expect, it } from 'vitest';
import { SILICONE_BOUNDS, SILICONE_RULES } from '../../../src/yield';
import type { Rule } from '../../../src/yield';

describe('every default of the silicone', () => {
  it.each(Object.entries<Rule>(SILICONE_RULES))(
    '%s says where it comes from and lies within its range',
    (_, rule) => {
      expect(rule.from).toMatch(/common practice, no source|from memory, not verified|chosen here|assumed/);
      expect(rule.value).toBeGreaterThanOrEqual(rule.low ?? rule.value);
      expect(rule.value).toBeLessThanOrEqual(rule.high ?? rule.value);
    },
  );

  it('and every bound of what is typed has its low below its high', () => {
    for (const [name, { low, high }] of Object.entries(SILICONE_BOUNDS)) expect(low, name).toBeLessThan(high);
  });
});
