import type { BenchPlan, BenchRun } from '../../job/benchState';
import { pressWords } from '../../words/benchWords';
import { localDay } from '../ticket/localDay';
import { given } from '../ticket/moldWishes';
import { pourNow } from '../ticket/now';
import { valueIn } from '../ticket/readField';
import { WeighBack } from '../weigh/WeighBack';
import type { BenchProps } from './benchProps';
import { cupAtBench } from './cupAtBench';
import { dayC } from './DayBoxes';
import type { BenchSaid } from './useBenchState';

interface WeighedBackProps extends BenchProps {
  /** Of the casting at the bench. */
  id: string;
  said: BenchSaid;
  run: BenchRun;
  /** Of the run, else of the ticket as it stands. */
  plan: BenchPlan | undefined;
  undo: () => void;
  /** Back to before the clock, where none ran. */
  back: () => void;
}

/** Back on the scale, with what the bench knows of this pour. */
export function WeighedBack({
  id,
  ticket,
  piece,
  change,
  nav,
  said,
  run,
  plan,
  undo,
  back,
}: WeighedBackProps) {
  const hasRun = run.presses.length > 0;
  const began = run.presses[0];
  const foam = ticket.foam.name.trim();
  return (
    <WeighBack
      piece={piece}
      casting={id}
      change={change}
      nav={nav}
      planned={plan === undefined ? undefined : { ...plan, ...(foam === '' ? {} : { foam }) }}
      bench={{
        ...given('roomC', dayC(ticket, said, 'room')),
        ...given('moldC', dayC(ticket, said, 'mold')),
        ...readGrams(ticket),
        ...given('opening', plan?.opening),
        day: began === undefined ? ticket.today : localDay(new Date(began.wallMs)),
      }}
      back={
        hasRun
          ? { words: `Undo “${pressWords('open', plan?.opening)}”`, do: undo }
          : { words: 'Back to the clock', do: back }
      }
    />
  );
}

/** B as it was read off the scale, and the A that it asked for; of one cup alone, as only one reading is kept. */
function readGrams(ticket: BenchProps['ticket']): { aG?: number; bG?: number } {
  const pour = pourNow(ticket).answer;
  const bG = valueIn(ticket.fields, 'bInCup');
  if (pour === undefined || bG === undefined || pour.cups.cups.length > 1) return {};
  const { partAG, partBG } = cupAtBench(pour, bG);
  return { aG: partAG, bG: partBG };
}
