import type { MoldBench } from '../plan';
import type { Help } from './sizeWish';

/** The same bench with its memory, watched by this request. Its stages begin at nothing each; what is told never falls. */
export function watchedBench(
  bench: MoldBench,
  help: Help,
  shareOf = (share: number): number => share,
): MoldBench {
  let told = 0;
  const onProgress = (share: number): void => {
    if (share <= told) return;
    told = share;
    help.onProgress?.(shareOf(share));
  };
  return { ...bench, options: { ...bench.options, ...help, onProgress } };
}
