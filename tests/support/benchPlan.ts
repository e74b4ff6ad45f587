import type { BenchPlan } from '../../src/job/benchState';

/** A pour of one cup, A:B 100:55, without a time. */
export const BENCH_PLAN: BenchPlan = {
  partAG: 379,
  partBG: 209,
  totalG: 588,
  stepG: 1,
  packFactor: 1.25,
  cups: 1,
  cupAG: 379,
  scaleG: 588,
};
