import { readBench, type BenchRun } from '../../job/benchState';
import type { Piece } from '../../job/piece';
import { clockText } from '../../words/benchWords';
import { Link } from '../parts/Link';
import { MarkShape } from '../parts/StatusMark';
import { useShop } from '../shop/shopContext';
import type { KeptTicket } from '../ticket/useTicket';
import type { Nav } from '../useRoute';
import { castingCode } from '../words/castingCode';
import { isRunning } from './phase';
import { useBenchRun } from './useBenchRun';

interface ClockRunsProps {
  piece: Piece;
  change: KeptTicket['change'];
  nav: Nav;
}

/** On the other screens of a ticket: that the clock of its pour runs, and the way back to it. After a reload there too, no update comes meanwhile. */
export function ClockRuns(props: ClockRunsProps) {
  const id = props.piece.hand.casting;
  const { run } = readBench(props.piece, id).bench;
  return isRunning(run) ? <RunningClock key={id} {...props} id={id} kept={run} /> : null;
}

function RunningClock({ piece, change, nav, id, kept }: ClockRunsProps & { id: string; kept: BenchRun }) {
  const { store } = useShop();
  const { clock, run } = useBenchRun({ shop: store.name, piece, id, kept, change }).shown;
  if (clock === undefined || !isRunning(run)) return null;
  return (
    <div className="complaint">
      <MarkShape mark="look" />
      <p>
        The clock of {castingCode(piece, id)} runs: {clockText(clock.elapsedMs)}.{' '}
        <Link nav={nav} to={{ at: 'bench', piece: piece.id }} className="act">
          Back to the bench
        </Link>
      </p>
    </div>
  );
}
