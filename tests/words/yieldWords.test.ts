import { describe, expect, it } from 'vitest';
import { finding, YIELD_CODES } from '../../src/problem';
import type { Problem, YieldCode } from '../../src/problem';
import { sayWhy } from '../../src/words/quantityWords';
import { isYieldCode, ratioSentence, sayYield, TERM_WORDS } from '../../src/words/yieldWords';
import { BATCH_TERMS, planBatch, ratioSentenceParts, readFoamCard } from '../../src/yield';
import type { BatchInputs } from '../../src/yield';
import { freeRiseFromCup, freeRiseFromCups } from '../../src/yield/cupTest';
import { readQuantity } from '../../src/units';
import { problemOf, valueOf } from '../support/outcome';

const given = (value: number): { value: number; from: 'given' } => ({ value, from: 'given' });
const base: BatchInputs = {
  cavityCm3: given(5200),
  freeRiseKgM3: { value: 96.1, from: 'data-sheet' },
  ratio: { a: 100, b: 55, by: 'mass' },
};
const bad = (change: Partial<BatchInputs>): Problem => problemOf(planBatch({ ...base, ...change }));
const found = (code: YieldCode, change: Partial<BatchInputs>): Problem => {
  const problem = valueOf(planBatch({ ...base, ...change })).findings.find((one) => one.code === code);
  if (problem === undefined) throw new Error(`no ${code}`);
  return problem;
};
const small: Partial<BatchInputs> = {
  cavityCm3: given(200),
  residueG: given(5),
  scaleStepG: given(5),
  ventsG: given(2),
};

/** Each problem comes out of the code that makes it, so that its values are the real ones. */
const PROBLEMS: Readonly<Record<YieldCode, () => Problem>> = {
  INPUT_NOT_A_NUMBER: () => bad({ cavityCm3: given(Number.NaN) }),
  INPUT_OUT_OF_BOUNDS: () => bad({ freeRiseKgM3: given(0.096) }),
  INPUT_CONFLICT: () => bad({ packFactor: given(1.3), shortFillChance: given(0.01) }),
  RATIO_NOT_POSITIVE: () => bad({ ratio: { a: 100, b: 0, by: 'mass' } }),
  RATIO_EXTREME: () => bad({ ratio: { a: 1000, b: 1, by: 'mass' } }),
  // Raised by whoever holds both a card and a typed ratio.
  RATIO_REVERSED: () => finding('RATIO_REVERSED', 'stop', { a: 55, b: 100, cardA: 100, cardB: 55 }),
  PART_DENSITIES_NEEDED: () => bad({ ratio: { a: 2, b: 1, by: 'volume' } }),
  MIN_FILL_NEEDED: () => bad({ overpackShare: given(1.1) }),
  MIN_FILL_BELOW_FREE_RISE: () => found('MIN_FILL_BELOW_FREE_RISE', { minFillKgM3: given(80) }),
  MIN_FILL_UNKNOWN: () => found('MIN_FILL_UNKNOWN', {}),
  NOT_A_FOAM: () => bad({ freeRiseKgM3: given(900) }),
  PACK_REFUSED: () => bad({ packFactor: given(3) }),
  PACK_UNUSUAL: () => found('PACK_UNUSUAL', { packFactor: given(2.2) }),
  SHORT_FILL_OUT_OF_REACH: () =>
    bad({ cavityCm3: { ...given(5200), uShare: 0.45 }, shortFillChance: given(0.001) }),
  SHORT_FILL_LIKELY: () => found('SHORT_FILL_LIKELY', { packFactor: given(1.1) }),
  NO_CUP_TEST: () => found('NO_CUP_TEST', {}),
  PART_BELOW_SCALE: () => bad({ ...small, cavityCm3: given(1), residueG: given(0), ventsG: given(0) }),
  SCALE_COARSE: () => found('SCALE_COARSE', small),
  SCALE_OVERLOADED: () => found('SCALE_OVERLOADED', { scaleMaxG: given(500) }),
  RATIO_ROUNDED: () => found('RATIO_ROUNDED', { ...small, ratio: { a: 40, b: 100, by: 'mass' } }),
  RESIDUE_LARGE: () => found('RESIDUE_LARGE', { ...small, residueG: given(30) }),
  CUP_WEIGHTS: () => problemOf(freeRiseFromCup({ fullG: 10, cupG: 12, waterG: 500, waterTempC: 20 })),
  CUP_TEST_SMALL: () => {
    const [problem] = valueOf(
      freeRiseFromCups([{ fullG: 65, cupG: 12, waterG: 500, waterTempC: 20 }]),
    ).findings;
    if (problem === undefined) throw new Error('no CUP_TEST_SMALL');
    return problem;
  },
  FOAM_CARD_FIELD: () => problemOf(readFoamCard({ name: '' })),
};

describe('every problem of the pour has its sentence', () => {
  it.each([...YIELD_CODES])('%s says what is wrong, by how much, and what to do now', (code) => {
    const problem = PROBLEMS[code]();
    expect(problem.code).toBe(code);
    const { text, hint } = sayYield(problem);
    expect(text).toMatch(/^[A-Z].*\.$/s);
    expect(hint).toMatch(/^[A-Z].*\.$/s);
    expect(`${text} ${hint}`).not.toMatch(/NaN is|undefined|null|Infinity|\d{6}|\.\.|\s\s|\s\./);
  });

  it('names both the batch and the scale that would do', () => {
    const { hint } = sayYield(found('SCALE_COARSE', small));
    expect(hint).toMatch(/^Use a scale with steps of 0\.\d+ g or finer, or mix at least [\d\u202f]+ g\.$/);
  });

  it('a likely short fill asks about mold, vents and cup before it speaks of more pack', () => {
    const { hint } = sayYield(PROBLEMS.SHORT_FILL_LIKELY());
    expect(hint.indexOf('warm')).toBeLessThan(hint.indexOf('pack more'));
    expect(hint).toContain('vented');
    expect(hint).toContain('cup test');
  });

  it('leaves the codes of others to others', () => {
    expect(isYieldCode('NOT_CLOSED')).toBe(false);
    expect(() => sayYield(finding('NOT_CLOSED', 'look'))).toThrow('sayYield: expected a code of the pour');
  });

  it('has words for every row of the budget', () => {
    for (const term of BATCH_TERMS) expect(TERM_WORDS[term], term).toMatch(/^[a-z]/);
  });
});

describe('ratio read back', () => {
  it('names part, grams and container; A first in the label, B first into the cup', () => {
    const batch = valueOf(planBatch(base));
    const sentence = ratioSentence(ratioSentenceParts(batch));
    expect(sentence).toBe(
      `A:B 100:55 by weight, ${batch.totalG} g in all: ${batch.partAG} g of A (isocyanate) and ${batch.partBG} g of B (polyol). ` +
        `Weigh the ${batch.partBG} g of B into the mixing cup first and set the scale to zero; ` +
        `the ${batch.partAG} g of A goes into the same mixing cup last, and the clock starts when it goes in.`,
    );
  });
});

describe('why a quantity was asked about or refused', () => {
  it.each([
    '1,250',
    '1e3',
    '１２',
    '1/2',
    '12',
    '99999999999 g',
    '',
    'x',
    '1..2',
    '1e999',
    '5 furlong',
    '12 mL',
    '0 g',
    '-1 g',
    '5 lb 20 oz',
    '1'.repeat(90),
  ])('mass "%s"', (text) => {
    const read = readQuantity(text, 'mass');
    if (read.kind === 'one') throw new Error(`expected a question or a refusal of "${text}"`);
    const { text: said, hint } = sayWhy(read.why);
    expect(said).toMatch(/\.$/);
    expect(hint).toMatch(/\.$/);
    expect(said + hint).not.toMatch(/undefined|""/);
  });
});
