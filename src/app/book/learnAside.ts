import type { BookRow, LearnedBook, LearnWish } from '../../job/book';
import type { ShopCore } from '../../store';

/** What is asked of the thread that learns, and what it answers; `key` tells which question the answer is to. */
export interface LearnAsk {
  key: string;
  rows: readonly BookRow[];
  shop: Pick<ShopCore, 'foams'> & Partial<Pick<ShopCore, 'scale'>>;
  wish: LearnWish;
}

export interface LearnSaid {
  key: string;
  learned: LearnedBook;
}

export interface LearnBench {
  ask(ask: LearnAsk): void;
  close(): void;
}

/** A thread of its own: what fills a mold is learned from a thousand draws a foam, 0.13 s the first time on a desk machine. */
export function openLearnBench(onSaid: (said: LearnSaid) => void, onFault: () => void): LearnBench {
  const worker = new Worker(new URL('./learn.worker.ts', import.meta.url), { type: 'module' });
  worker.onmessage = ({ data }: MessageEvent<LearnSaid>) => onSaid(data);
  worker.onerror = onFault;
  return { ask: (ask) => worker.postMessage(ask), close: () => worker.terminate() };
}
