import { expect, it } from 'vitest';
import { planBatch, ratioSentenceParts } from '../../src/yield';
import { t1 } from '../support/batchInputs';
import { valueOf } from '../support/outcome';

it('A, the isocyanate side, is told first and weighed last, into the cup in which B lies', () => {
  const batch = valueOf(planBatch(t1));
  const { weighings, ...told } = ratioSentenceParts(batch);
  const [a, b] = weighings;
  expect(a).toEqual({
    order: 2,
    part: 'A',
    side: 'isocyanate',
    massG: batch.partAG,
    container: 'mixing cup',
  });
  expect(b).toEqual({ order: 1, part: 'B', side: 'polyol', massG: batch.partBG, container: 'mixing cup' });
  // T1: 52 + 100 of 965.6 g, in whole grams.
  expect([a.massG, b.massG, told.totalG]).toEqual([330, 636, 966]);
  expect(told).toMatchObject({ a: 52, b: 100, by: 'mass', stepG: 1 });
});
