import { POUR_RULES } from '../../yield';
import { formatLength, gramsText } from '../../units';
import { amount, counted } from '../../words/sentence';
import type { PourOnPage } from '../../worker/pour';
import { openingNow } from '../ticket/now';
import { valueIn } from '../ticket/readField';
import type { Ticket } from '../ticket/state';
import { openingOf } from './benchPlan';
import { cupAtBench } from './cupAtBench';

/** Something to be sure of before A goes in. `plan`: what the plan says of it, where it says anything. */
export interface BenchTick {
  id: 'gloves' | 'mold' | 'parts' | 'plug' | 'cup';
  words: string;
  plan: string;
  /** Of a figure in the words that nobody has said. */
  from?: string;
}

/** In the order of the work. Every figure in them is one of the plan. */
export function benchTicks(ticket: Ticket, pour: PourOnPage): BenchTick[] {
  return [
    { id: 'gloves', words: 'Gloves on, fan on', plan: '' },
    { id: 'mold', words: 'Mold dry, released, strapped', plan: strapWords(pour) },
    { id: 'parts', words: partsWords(pour), plan: bWords(ticket, pour) },
    { id: 'plug', words: plugWords(ticket), plan: openingWords(ticket) },
    cupTick(ticket, pour),
  ];
}

const strapWords = ({ forces: { straps } }: PourOnPage): string =>
  straps === undefined ? '' : counted(straps.straps, 'strap');

const partsWords = ({ color, refused }: PourOnPage): string =>
  `B weighed${color === undefined || refused.colors !== undefined ? '' : ', color in'}; A waits in its own jug`;

/** As it was read off the scale, else as planned. */
function bWords({ fields }: Ticket, pour: PourOnPage): string {
  const { partBG, isRead } = cupAtBench(pour, valueIn(fields, 'bInCup'));
  const { cups } = pour.cups;
  const grams = `B ${gramsText(partBG, pour.batch.stepG)} g`;
  return cups.length > 1 && !isRead ? `${grams}, ${amount(cups.length)} cups` : grams;
}

/** Plug and pins as far as the plan knows of them; what it does not know is left for the eye. */
function plugWords(ticket: Ticket): string {
  const plug = { plug: 'Plug', open: undefined, unknown: 'Plug, if there is one,' }[
    openingOf(ticket) ?? 'unknown'
  ];
  const pins = pinWords(ventsOf(ticket));
  const things = [plug, pins].filter((thing) => thing !== undefined).join(' and ');
  if (things === '') return 'Opening free, nothing in its way';
  return `${things.charAt(0).toUpperCase()}${things.slice(1)} in reach`;
}

function pinWords(vents: number | undefined): string | undefined {
  if (vents === undefined) return 'vent pins';
  if (vents === 0) return undefined;
  if (vents === 1) return 'the vent pin';
  return vents === 2 ? 'both vent pins' : `all ${amount(vents)} vent pins`;
}

/** As told for the checks of the pour, else as they are planned in Mold. */
function ventsOf(ticket: Ticket): number | undefined {
  const told = valueIn(ticket.fields, 'ventCount');
  const planned = openingNow(ticket).answer?.places.filter(({ kind }) => kind === 'vent planned').length;
  return told ?? (planned === 0 ? undefined : planned);
}

function openingWords({ fields }: Ticket): string {
  const wideMm = valueIn(fields, 'openWide');
  return wideMm === undefined ? '' : formatLength(wideMm, 'metric');
}

/** How many times the mix the cup has to hold, and what that comes to, up to a tenth of a liter. */
function cupTick({ fields }: Ticket, { cups: { cups }, batch }: PourOnPage): BenchTick {
  const said = valueIn(fields, 'cupFill');
  const share = said ?? POUR_RULES.cupFill.value;
  const leastCm3 = (1000 * cups[0]!.totalG) / batch.liquidKgM3 / share;
  return {
    id: 'cup',
    words: `${cups.length > 1 ? 'Each cup' : 'Cup'} holds ${amount(1 / share, 2)} times the mix`,
    plan: `${amount(Math.ceil(leastCm3 / 100) / 10)} L or more`,
    ...(said === undefined ? { from: POUR_RULES.cupFill.from } : {}),
  };
}
