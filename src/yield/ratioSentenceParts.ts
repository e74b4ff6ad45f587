import type { Batch } from './batch';

/** One weighing: which part, how much, into what, in which order. */
export interface Weighing {
  order: 1 | 2;
  part: 'A' | 'B';
  side: 'isocyanate' | 'polyol';
  massG: number;
  container: 'mixing cup';
}

export interface RatioSentenceParts {
  a: number;
  b: number;
  by: 'mass' | 'volume';
  /** Shown A first, as every label; `order` says which is weighed first. */
  weighings: [a: Weighing, b: Weighing];
  totalG: number;
  stepG: number;
}

/**
 * What the read-back of a ratio has to say. B goes into the mixing cup first and A last: the clock starts when A goes
 * in, and A can be fitted to the B that really lies in the cup.
 */
export function ratioSentenceParts({
  ratio,
  partAG,
  partBG,
  totalG,
  stepG,
}: Pick<Batch, 'ratio' | 'partAG' | 'partBG' | 'totalG' | 'stepG'>): RatioSentenceParts {
  return {
    a: ratio.a,
    b: ratio.b,
    by: ratio.by,
    totalG,
    stepG,
    weighings: [
      { order: 2, part: 'A', side: 'isocyanate', massG: partAG, container: 'mixing cup' },
      { order: 1, part: 'B', side: 'polyol', massG: partBG, container: 'mixing cup' },
    ],
  };
}
