import { learnBook } from '../../job/book';
import type { LearnAsk, LearnSaid } from './learnAside';

interface Scope {
  onmessage: ((event: MessageEvent<LearnAsk>) => void) | null;
  postMessage(message: LearnSaid): void;
}

const scope = globalThis as unknown as Scope;

scope.onmessage = ({ data: { key, rows, shop, wish } }) =>
  scope.postMessage({ key, learned: learnBook(rows, shop, wish) });
