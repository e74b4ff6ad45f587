import { useCallback, useEffect, useLayoutEffect, useRef, useState } from 'react';
import type { PourRow } from '../../job/book';
import { isSame } from '../../job/json';
import type { Piece } from '../../job/piece';
import { readWeigh, withWeigh, type Answers, type WeighState } from '../../job/weighState';
import type { KeptTicket } from '../ticket/useTicket';
import { stateOfRow } from './stateOfRow';

type LooseState = Answers & Pick<WeighState, 'boxes'>;

export interface Weigh {
  state: WeighState;
  set: (how: (state: WeighState) => LooseState) => void;
  /** Everything that was said is on the disk. */
  isKept: boolean;
  /** What this version cannot read of it. */
  unread: readonly string[];
}

/** What could not be kept is tried again after this, until it is. Chosen here. */
const AGAIN_MS = 1500;

/** The weigh-back of one casting, kept in its piece as it is said. */
export function useWeigh(
  piece: Piece,
  casting: string,
  change: KeptTicket['change'],
  known: PourRow | undefined,
): Weigh {
  const { state: read, unread } = readWeigh(piece, casting);
  const isNew = (piece.castings[casting] as { weigh?: unknown } | undefined)?.weigh === undefined;
  const kept = isNew && known !== undefined ? stateOfRow(known) : read;
  const [own, setOwn] = useState<WeighState>();
  const isKept = own === undefined || isSame(own, saidOf(read));
  // What another tab has said since comes in once what was said here is kept.
  if (own !== undefined && isKept) setOwn(undefined);
  const state = own === undefined ? kept : { ...own, ...writingOf(read) };
  const now = useRef(state);
  const waiting = useRef<WeighState>(undefined);
  useLayoutEffect(() => {
    now.current = state;
    waiting.current = isKept ? undefined : own;
  });

  const flush = useCallback(() => {
    const mine = waiting.current;
    if (mine !== undefined)
      change((one) => withWeigh(one, casting, { ...mine, ...writingOf(readWeigh(one, casting).state) }));
  }, [casting, change]);

  useEffect(() => {
    if (isKept) return;
    const again = setInterval(flush, AGAIN_MS);
    return () => clearInterval(again);
  }, [isKept, flush]);
  useEffect(() => {
    addEventListener('pagehide', flush);
    return () => {
      removeEventListener('pagehide', flush);
      flush();
    };
  }, [flush]);

  const set: Weigh['set'] = (how) => {
    const next = tidy(how(now.current));
    now.current = next;
    waiting.current = saidOf(next);
    setOwn(saidOf(next));
    // At once, as everything on a ticket is kept: a battery can run out behind any key.
    flush();
  };
  return { state, set, isKept, unread };
}

/** What was written of it into the book is not said here, and never goes back to what it was when a key is pressed. */
const writingOf = ({ written, takenOff }: WeighState): Partial<WeighState> => ({
  ...(written === undefined ? {} : { written }),
  ...(takenOff === undefined ? {} : { takenOff }),
});

function saidOf({ written: _written, takenOff: _takenOff, ...said }: WeighState): WeighState {
  return said;
}

/** Without keys that nothing is said under: the kept one has none either. */
const tidy = (state: LooseState): WeighState => ({
  ...(Object.fromEntries(
    Object.entries(state).filter(([, value]) => value !== undefined),
  ) as unknown as WeighState),
  boxes: Object.fromEntries(Object.entries(state.boxes).filter(([, value]) => value !== undefined)),
});
