import { STEPS, type Step } from '../route';
import { readyNow } from '../ticket/ready';
import { pourNow, sizeNow, volumeNow } from '../ticket/now';
import type { Ticket } from '../ticket/state';
import { STEP_NAMES } from '../ticket/steps';
import type { Nav } from '../useRoute';
import { Link } from './Link';

/** The way on to the next step, once this one has what that needs: the one solid button of the screen. */
export function Next({ at, nav, piece, ticket }: { at: Step; nav: Nav; piece: string; ticket: Ticket }) {
  const next = nextOf(at, ticket);
  if (next === undefined) return null;
  return (
    <p className="next">
      <Link nav={nav} to={{ at: next, piece }} className={isReadyFor(next, ticket) ? 'btn' : 'btn line'}>
        {next === 'bench' ? 'Go to the bench' : `On to ${STEP_NAMES[next]}`}
      </Link>
    </p>
  );
}

/** Without a scan there is nothing to plan of a mold: a volume goes on to its grams. */
function nextOf(at: Step, ticket: Ticket): Step | undefined {
  const next = STEPS[STEPS.indexOf(at) + 1];
  if (at === 'bench' || at === 'batch' || ticket.scan !== undefined) return at === 'bench' ? undefined : next;
  return at === 'measure' && volumeNow(ticket).state !== 'answered' ? undefined : next && 'batch';
}

/** The bench waits for "ready to pour"; before it the solid button is another. */
const isReadyFor = (next: Step, ticket: Ticket): boolean =>
  next === 'bench'
    ? readyNow(ticket) === 'ready'
    : [sizeNow(ticket), volumeNow(ticket), pourNow(ticket)].some(({ state }) => state === 'answered');
