import { useEffect, useMemo, useRef, useState } from 'react';
import type { LearnedBook, LearnWish } from '../../job/book';
import { openLearnBench, type LearnBench, type LearnSaid } from './learnAside';
import type { OpenBook } from './useBook';

/** What the book teaches as it stands; nothing of before while it is worked out. */
export type LearnedNow =
  { state: 'working' } | { state: 'failed' } | { state: 'answered'; learned: LearnedBook };

export function useLearned(book: OpenBook, wish: LearnWish): LearnedNow {
  const { rows, core } = book;
  const { foams, scale } = core;
  const ask = useMemo(() => {
    const shop = { foams, ...(scale === undefined ? {} : { scale }) };
    return { key: JSON.stringify([rows, shop, wish]), rows, shop, wish };
  }, [rows, foams, scale, wish]);
  const [said, setSaid] = useState<LearnSaid>();
  const [hasFailed, setFailed] = useState(false);
  const bench = useRef<LearnBench | undefined>(undefined);
  useEffect(() => {
    const open = openLearnBench(setSaid, () => setFailed(true));
    bench.current = open;
    return () => open.close();
  }, []);
  const latest = useRef(ask);
  useEffect(() => {
    latest.current = ask;
  }, [ask]);
  const { key } = ask;
  // By its key: the store tells of every change of any piece, and most leave the book as it was.
  useEffect(() => bench.current?.ask(latest.current), [key]);
  if (hasFailed) return { state: 'failed' };
  return said?.key === key ? { state: 'answered', learned: said.learned } : { state: 'working' };
}
