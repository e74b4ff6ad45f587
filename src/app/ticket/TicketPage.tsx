import { lazy, Suspense, useEffect, type ComponentType, type Dispatch } from 'react';
import { ClockRuns } from '../bench/ClockRuns';
import { Busy } from '../parts/Busy';
import { FaultBoundary } from '../parts/FaultBoundary';
import { Head } from '../parts/Head';
import { Next } from '../parts/Next';
import { Rail } from '../parts/Rail';
import { useFileDrop } from '../parts/useFileDrop';
import { useFocusKept } from '../parts/useFocusKept';
import type { Step } from '../route';
import { PastPoursFold } from '../shelf/PastPours';
import { useShop } from '../shop/shopContext';
import { useUnitMemory } from '../shop/useUnitMemory';
import type { Nav } from '../useRoute';
import type { Piece } from '../../job/piece';
import type { Problem } from '../../problem';
import type { Saving, ShopStore } from '../../store';
import { KEPT_BY_PAGE } from '../../words/storeWords';
import { KeepTrouble } from './KeepTrouble';
import { SaidAloud } from './SaidAloud';
import { stepsOf, STEP_NAMES } from './steps';
import type { Action } from './reducer';
import type { Ticket } from './state';
import { useNamedByScan } from './useNamedByScan';
import { useEngine, type Bench } from './useEngine';
import { useScanKept } from './useScanKept';
import { useSeen } from './useSeen';
import { useTicket, type KeptTicket } from './useTicket';
import { useUndoKeys } from './useUndoKeys';
import { useUnkept } from './useUnkept';

interface ScreenProps {
  ticket: Ticket;
  dispatch: Dispatch<Action>;
  bench: Bench;
  piece: Piece;
  /** Changes what is not said on the ticket: what was done at the bench, the casting in hand. */
  change: KeptTicket['change'];
  nav: Nav;
}

/** Loaded when first shown, and fetched ahead while the page is idle. */
const LOAD: Readonly<Record<Step, () => Promise<{ default: ComponentType<ScreenProps> }>>> = {
  measure: () => import('../measure/Measure').then(({ Measure }) => ({ default: Measure })),
  mold: () => import('../mold/Mold').then(({ Mold }) => ({ default: Mold })),
  batch: () => import('../batch/Batch').then(({ Batch }) => ({ default: Batch })),
  bench: () => import('../bench/BenchScreen').then(({ BenchScreen }) => ({ default: BenchScreen })),
  book: () => import('../book/PieceBook').then(({ PieceBook }) => ({ default: PieceBook })),
};
const SCREENS = {
  measure: lazy(LOAD.measure),
  mold: lazy(LOAD.mold),
  batch: lazy(LOAD.batch),
  bench: lazy(LOAD.bench),
  book: lazy(LOAD.book),
};

/** One piece's ticket: the steps at the left, and one of them. */
export function TicketPage({ nav, piece: id, at }: { nav: Nav; piece: string; at: Step }) {
  const shop = useShop();
  const kept = useTicket(shop.store, id);
  const { piece, ticket } = kept;
  const dispatch = useUnitMemory(shop.store, kept.dispatch);
  const bench = useEngine(ticket, dispatch);
  const scan = useScanKept({ store: shop.store, ticket, dispatch, bench });
  const { askToPersist } = shop;
  const isWorthKeeping = ticket.scan !== undefined;
  useEffect(() => {
    if (isWorthKeeping) askToPersist();
  }, [isWorthKeeping, askToPersist]);
  useSeen(kept);
  useNamedByScan(kept);
  useFocusKept();
  useFileDrop(at === 'bench' ? leaveIt : bench.open);
  useUndoKeys(dispatch);
  const saving = together(kept.saving, scan);
  useUnkept(ticket, saving, id);
  useTitle(`${STEP_NAMES[at]}: ${piece?.name ?? 'a piece'}`);
  useLoadAhead();
  const Screen = SCREENS[at];
  const problems = [...kept.problems, ...(scan.problem === undefined ? [] : [scan.problem])];
  const keepNow = (): void => {
    kept.keepNow();
    scan.keepNow();
  };
  const screen = piece !== undefined && (
    <FaultBoundary key={at}>
      <Suspense fallback={<p className="then">Loading …</p>}>
        <Screen {...{ ticket, dispatch, bench, piece, nav }} change={kept.change} />
      </Suspense>
    </FaultBoundary>
  );
  if (at === 'bench')
    // Nothing else is on the page then: hands are full, and a press beside the button must do nothing.
    return (
      <>
        <main className="atbench" id="main" tabIndex={-1}>
          <KeepTrouble problems={problems} onAgain={canTryAgain(saving, problems) ? keepNow : undefined} />
          {screen}
        </main>
        <SaidAloud ticket={ticket} saving={saving} />
      </>
    );
  return (
    <>
      <div className="page">
        <Rail
          steps={stepsOf(ticket, piece, shop.view?.core)}
          at={at}
          nav={nav}
          piece={id}
          kept={keptWords(saving, shop.store)}
        />
        <main className="ticket" id="main" tabIndex={-1}>
          <Head {...{ ticket, dispatch, at, piece }} onRename={kept.change} />
          <KeepTrouble problems={problems} onAgain={canTryAgain(saving, problems) ? keepNow : undefined} />
          {piece !== undefined && (
            <>
              <ClockRuns piece={piece} change={kept.change} nav={nav} />
              <Busy ticket={ticket} bench={bench} at={at} />
              {at === 'batch' && <PastPoursFold piece={piece} onTake={kept.change} />}
              {screen}
              <Next at={at} nav={nav} piece={id} ticket={ticket} />
            </>
          )}
        </main>
      </div>
      <SaidAloud ticket={ticket} saving={saving} />
    </>
  );
}

const KEPT: Readonly<Record<Saving['state'], string>> = {
  kept: 'All is kept.',
  keeping: 'Being kept …',
  failed: 'The last change is not kept.',
};

/** Never that it is kept where it goes with the page. */
const keptWords = ({ state }: Saving, { keeps }: Pick<ShopStore, 'keeps'>): string =>
  keeps === 'page' && state !== 'failed' ? KEPT_BY_PAGE : KEPT[state];

/** At the bench nobody opens another scan: a file dropped by mistake changes nothing. */
const leaveIt = (): void => undefined;

/** All is kept once the words and the file of the scan are. */
function together(words: Saving, scan: ReturnType<typeof useScanKept>): Saving {
  if (words.state !== 'kept') return words;
  if (scan.problem !== undefined) return { state: 'failed', fault: scan.problem };
  return scan.keeping === 'keeping' ? { state: 'keeping' } : words;
}

const canTryAgain = ({ state }: Saving, problems: readonly Problem[]): boolean =>
  state === 'failed' || problems.some(({ code }) => code === 'PIECE_GONE');

function useTitle(title: string): void {
  useEffect(() => {
    document.title = `${title} · Risewright`;
  }, [title]);
}

/** The other screens, so that they are there when the network is not. */
function useLoadAhead(): void {
  useEffect(() => {
    const timer = setTimeout(() => {
      // Offline they come when they are asked for, or say that they cannot.
      for (const load of Object.values(LOAD)) load().catch(() => undefined);
    }, AHEAD_MS);
    return () => clearTimeout(timer);
  }, []);
}

const AHEAD_MS = 1500;
