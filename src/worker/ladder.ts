import { ladderBench, measureLadders, type KnownRungs, type LadderOfType, type MoldBench } from '../plan';
import type { Outcome } from '../problem';
import type { LadderAsk } from './protocol';
import type { Help } from './sizeWish';
import { watchedBench } from './watchedBench';

/** What was measured for the ladders of a bench: a ladder that stood aside goes on where it was, and goes with its bench. */
const MEMORY = new WeakMap<MoldBench, { own: MoldBench; known: KnownRungs }>();

/** Silicone against thickness, for every type with settings. Error: STOPPED. */
export function ladderWish(
  { bench }: { bench: MoldBench },
  { settings }: LadderAsk,
  help: Help,
): Outcome<LadderOfType[]> {
  const { own, known } = memoryOf(bench);
  // The pulls of the molds, which were asked for before.
  for (const [key, pull] of bench.pulls) own.pulls.set(key, pull);
  return measureLadders(watchedBench(own, help), settings, known);
}

function memoryOf(bench: MoldBench): { own: MoldBench; known: KnownRungs } {
  const memory = MEMORY.get(bench) ?? { own: ladderBench(bench), known: new Map() };
  MEMORY.set(bench, memory);
  return memory;
}
