import { describe, expect, it } from 'vitest';
import type { MarkedFacts, MarkedPlace } from '../../src/plan';
import { DOT_OF_KIND, markedPlaceWords } from '../../src/words/openingPlaces';
import { leastWidth, mostWidth } from '../../src/words/roundedWidth';
import { smallVolume } from '../../src/words/smallVolume';

const at = (facts: MarkedFacts): MarkedPlace => ({ n: 1, atMm: [1, 2, 3], normal: [0, 0, 1], ...facts });

const EVERY: readonly (readonly [MarkedFacts, metric: string, us: string])[] = [
  [{ kind: 'opening', diameterMm: 25.4 }, 'Opening 25.4 mm', 'Opening 1.00 in'],
  [{ kind: 'vent planned', ventMm: 2 }, 'Vent 2 mm, planned', 'Vent 0.08 in, planned'],
  // 16.387064 cm3 are a cubic inch.
  [
    { kind: 'vent advised', ventMm: 2, curesCm3: 16.387064 },
    'Vent 2 mm, frees 16 cm³',
    'Vent 0.08 in, frees 1 cu in',
  ],
  [
    { kind: 'air under silicone', volumeCm3: 0.5944, riseMm: 4 },
    'Brush silicone in first: 0.59 cm³ of air',
    'Brush silicone in first: 0.036 cu in of air',
  ],
  [
    { kind: 'thin foam', thicknessMm: 6.14, slenderness: 2 },
    'Thin foam 6.1 mm: free it first',
    'Thin foam 0.24 in: free it first',
  ],
  [{ kind: 'thin rubber', thicknessMm: 1.28 }, 'Thin rubber 1.3 mm: tears', 'Thin rubber 0.05 in: tears'],
  [{ kind: 'thin rubber', thicknessMm: 4.1 }, 'Thin rubber 4.1 mm', 'Thin rubber 0.16 in'],
];

describe('a place that is marked on the sculpt', () => {
  it.each(EVERY)('%o', (facts, metric, us) => {
    expect(markedPlaceWords(at(facts), 'metric')).toBe(metric);
    expect(markedPlaceWords(at(facts), 'us')).toBe(us);
  });

  it('lengths stand in both systems unless one was chosen', () => {
    expect(markedPlaceWords(at({ kind: 'opening', diameterMm: 25.4 }))).toBe('Opening 25.4 mm (1.00 in)');
  });

  it('every kind has words and a dot', () => {
    const kinds = new Set(EVERY.map(([{ kind }]) => kind));
    expect(new Set(Object.keys(DOT_OF_KIND))).toEqual(kinds);
  });
});

describe('what is small or a limit', () => {
  it('a thimble of air is never told as nothing', () => {
    expect(smallVolume(0.21, 'us')).toBe('0.013 cu in');
    expect(smallVolume(0.21, 'both')).toBe('0.21 cm³ (0.013 cu in)');
    expect(smallVolume(0, 'both')).toBe('0 cm³ (0 cu in)');
  });

  it('a limit is rounded to the safe side in both systems', () => {
    // 20.01 mm are 0.7878 in.
    expect(leastWidth(20.01, 'both')).toBe('20.1 mm (0.79 in)');
    expect(mostWidth(20.09, 'both')).toBe('20 mm (0.79 in)');
    expect(mostWidth(20.01, 'us')).toBe('0.78 in');
    for (const width of [leastWidth, mostWidth]) expect(width(25.4, 'both')).toBe('25.4 mm (1 in)');
  });
});
