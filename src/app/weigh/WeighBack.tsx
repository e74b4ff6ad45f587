import { useCallback } from 'react';
import { isRecord } from '../../job/json';
import type { Piece } from '../../job/piece';
import type { Answers } from '../../job/weighState';
import type { ShopCore } from '../../store';
import { Complaint } from '../parts/Complaint';
import { MarkShape } from '../parts/StatusMark';
import { rememberUnit } from '../shop/rememberUnit';
import { useShop } from '../shop/shopContext';
import type { KeptTicket } from '../ticket/useTicket';
import type { Nav } from '../useRoute';
import { castingCode } from '../words/castingCode';
import { Balance } from './Balance';
import { rowOfCasting } from './bookOfCasting';
import { GoesIn } from './GoesIn';
import { LotQuestion } from './LotQuestion';
import { PhotoField } from './PhotoField';
import type { PlannedPour, WeighFacts } from './pourOfWeigh';
import { Questions } from './Questions';
import { useWeigh } from './useWeigh';
import { useWriting } from './useWriting';
import { unitKey, type AtBench } from './weighBoxes';
import { weighNow } from './weighNow';
import { WeighRows } from './WeighRows';

export interface WeighBackProps {
  piece: Piece;
  /** That was poured, by its id; else the one in hand. */
  casting?: string;
  change: KeptTicket['change'];
  nav: Nav;
  /** Of that casting as the ticket stands. */
  planned: PlannedPour | undefined;
  bench: AtBench;
  /** One step back, such as "Back to the clock". */
  back: { words: string; do: () => void };
}

/** What came of the pour: four weights, two temperatures and a few looks, each of which can be skipped; then into the Book. */
export function WeighBack(props: WeighBackProps) {
  const { view } = useShop();
  const { casting = props.piece.hand.casting } = props;
  if (view === undefined) return <p className="then">Loading …</p>;
  return <WeighSheet key={casting} {...props} casting={casting} core={view.core} />;
}

const NO_UNITS = {};

function WeighSheet({
  piece,
  casting,
  change,
  nav,
  planned,
  bench,
  back,
  core,
}: WeighBackProps & { casting: string; core: ShopCore }) {
  const { store } = useShop();
  const { no, mold } = piece.castings[casting]!;
  const named = { piece: piece.id, casting, no };
  const known = rowOfCasting(core.book, named);
  const { state, set, isKept, unread } = useWeigh(piece, casting, change, known);
  const units = core.settings?.units ?? NO_UNITS;
  const facts: WeighFacts = {
    ...named,
    mold,
    planned,
    bench,
    units,
    foam: foamOf(piece, casting),
    known,
    stepG: core.scale?.stepG,
  };
  const now = weighNow(state, facts, core);
  const onWritten = useCallback(() => nav.go({ at: 'book', piece: piece.id }), [nav, piece.id]);
  const { write, isBusy, problem } = useWriting(store, change, onWritten);
  const say = (more: Answers): void => set((before) => ({ ...before, ...more }));
  const rows = {
    state,
    now,
    bench,
    units,
    set,
    onUnit: (key: string, unit: string) => rememberUnit(store, key, unit),
  };
  return (
    <div className="weigh">
      <h1 tabIndex={-1}>Weigh-back</h1>
      <p className="quiet">About a minute. What you skip is left out, never guessed.</p>
      {unread.length > 0 && (
        <p className="err" role="status">
          <MarkShape mark="look" />
          <span>
            What was kept of {unread.join(', ')} cannot be read by this version. It stays as it is until you
            say something else.
          </span>
        </p>
      )}
      <WeighRows boxes={['mixed', 'residue', 'trim', 'casting']} {...rows} />
      <Balance balance={now.balance} stepG={now.stepG} />
      <WeighRows boxes={['room', 'mold']} {...rows} />
      <Questions
        state={state}
        bench={bench}
        units={units}
        cavityCm3={now.draft.cavityCm3}
        onSay={say}
        onUnit={(unit) => rememberUnit(store, unitKey('missing'), unit)}
      />
      <PhotoField
        photo={state.photo}
        code={castingCode(piece, casting)}
        onPhoto={(photo) => say({ photo })}
      />
      <LotQuestion
        stock={core.stock}
        foam={now.draft.foam}
        lot={now.draft.lot}
        parts={now.read.parts}
        stepG={now.stepG}
        state={state}
        onSay={say}
      />
      <GoesIn
        now={now}
        state={state}
        planned={planned}
        known={known}
        onSay={say}
        onAnswer={(answered) => set(() => answered)}
      />
      {problem !== undefined && (
        <div role="alert">
          <Complaint problem={problem} />
        </div>
      )}
      <div className="wbfoot">
        <button
          type="button"
          className="btn"
          disabled={isBusy}
          onClick={() => write({ ...now.draft, ...named }, now.take)}
        >
          Write it in the Book
        </button>
        <div className="sub">
          <button type="button" className="act" onClick={back.do}>
            {back.words}
          </button>
          <span className="quiet">{isKept ? 'Saved as you type' : 'Saving …'}</span>
        </div>
      </div>
    </div>
  );
}

function foamOf({ castings }: Piece, casting: string): string | undefined {
  const foam = castings[casting]?.choices.foam;
  const name = isRecord(foam) && typeof foam.name === 'string' ? foam.name.trim() : '';
  return name === '' ? undefined : name;
}
