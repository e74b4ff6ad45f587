import { describe, expect, it } from 'vitest';
import { figuresIn, SUM_PARTS } from '../../src/app/pour/sums';
import { pourNow } from '../../src/app/ticket/now';
import { formulaWords, fromWords, valueWords } from '../../src/app/words/figureWords';
import { poured, settle, step, type } from './pageEngine';

/** Something told in every question. */
const TOLD = [
  ...type('pourRoom', '18 C'),
  ...type('ingredients', '22 C'),
  ...type('moldTemp', '24 C'),
  ...type('sheetTemp', '23 C'),
  ...type('altitude', '500'),
  ...type('foamCup', '2 L'),
  ...type('cream', '60'),
  ...type('projected', '450'),
  ...type('plugArea', '20'),
  ...type('warmWall', '25 mm'),
  ...type('warmAir', '45 C'),
  ...type('warmJacket', '12 mm'),
  ...type('panelSpan', '90 mm'),
  ...type('nco', '13 %'),
  ...type('water', '0.5 %'),
  ...type('openTime', '25'),
  ...type('priceA', '9'),
  ...type('priceB', '7'),
  ...type('color.0.share', '2'),
  { do: 'past', text: '1.25 filled' } as const,
];

const { ticket, desk } = poured();
const { figures } = pourNow(settle(step(ticket, ...TOLD), desk)).answer!;

describe('the sums of Batch', () => {
  it('leave no figure of the engine out: each is opened under a question', () => {
    const shown = new Set(SUM_PARTS.flatMap((part) => figuresIn(figures, part).map(({ key }) => key)));
    expect(figures.map(({ key }) => key).filter((key) => !shown.has(key))).toEqual([]);
    expect(figures.length).toBeGreaterThan(45);
  });

  it.each(SUM_PARTS)('open something under %s', (part) => {
    expect(figuresIn(figures, part).length).toBeGreaterThan(0);
  });

  it('say who has given a figure and what was taken for want of one', () => {
    const mixed = figures.find(({ key }) => key === 'mixed_g')!;
    const of = (title: string) => mixed.inputs.find((input) => input.title === title)!;
    expect(of('residue in the cup')).toMatchObject({ isAssumed: true });
    expect(of('cavity').isAssumed).toBeUndefined();
    expect(of('cavity').from).toBe('taped');
  });
});

describe('a figure in words', () => {
  it('has its unit as printed, a share in percent, a chance as 1 in so many, grams to the last', () => {
    expect(valueWords({ value: 96.11, unit: 'kg/m3' })).toBe('96.11 kg/m³');
    expect(valueWords({ value: 31, unit: 'C' })).toBe('31 °C');
    expect(valueWords({ value: 0.0123, unit: '', shown: 'share' })).toBe('1.23 %');
    expect(valueWords({ value: 1 / 120, unit: '', shown: 'chance' })).toBe('about 1 in 120');
    expect(valueWords({ value: 12345.5, unit: 'g', shown: 'exact' })).toBe('12\u202f345.5 g');
  });

  it('comes from a tag of the page, or from where its rule says', () => {
    expect(fromWords('data-sheet')).toBe('data sheet');
    expect(fromWords('this plan')).toBe('worked out here');
    expect(fromWords('common practice, no source')).toBe('common practice, no source');
  });

  it('has the signs of print in its formula', () => {
    expect(formulaWords('(a x b - c) / (1 - d)')).toBe('(a × b − c) ÷ (1 − d)');
  });
});
