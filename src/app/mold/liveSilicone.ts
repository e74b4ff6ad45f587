import { siliconeAt, thicknessOf, type LadderOfType, type SiliconeNeed } from '../../plan';
import type { MoldParameter, MoldType } from '../../geometry';
import type { Problem } from '../../problem';
import { moldField, type MadeField } from '../ticket/madeFields';
import { typeOf } from '../ticket/moldState';
import { moldsAskOf } from '../ticket/moldWishes';
import { valueIn } from '../ticket/readField';
import { ladderNow } from '../ticket/shownNow';
import type { Ticket } from '../ticket/state';

/** The thickness that the slider moves. */
export interface Thickness {
  type: MoldType;
  parameter: MoldParameter;
  field: MadeField;
  /** As it stands in its box; its default while the box is empty or has no single meaning. */
  mm: number;
}

export function thicknessIn({ fields, molding }: Ticket): Thickness | undefined {
  const type = typeOf(molding);
  const parameter = thicknessOf(type);
  if (parameter === undefined) return undefined;
  const field = moldField(type, parameter);
  return { type, parameter, field, mm: valueIn(fields, field) ?? Number(parameter.default) };
}

/**
 * Silicone for the ticket as it stands to the last move of the slider, from the measured rungs alone. Where there are none yet, or there is a problem,
 * it says so; it never tells a figure of before.
 */
export type LiveSilicone =
  | { state: 'none' }
  /** The rungs are being measured. */
  | { state: 'coming' }
  | { state: 'refused'; problem: Problem }
  | { state: 'told'; need: SiliconeNeed; mm: number; at: SiliconeThere };

/** Mixed at another thickness, g; undefined where there is none. */
export type SiliconeThere = (mm: number) => number | undefined;

/** Once for a ticket: several places of the page tell it. */
const TOLD = new WeakMap<Ticket, LiveSilicone>();

export function liveSilicone(ticket: Ticket): LiveSilicone {
  const told = TOLD.get(ticket) ?? workedOut(ticket);
  TOLD.set(ticket, told);
  return told;
}

function workedOut(ticket: Ticket): LiveSilicone {
  const thickness = thicknessIn(ticket);
  const ladder = ladderIn(ticket);
  const wish = siliconeWishOf(ticket);
  if (thickness === undefined || ladder === undefined || wish === undefined)
    return { state: ladderNow(ticket).state === 'working' ? 'coming' : 'none' };
  const need = siliconeAt(ladder, thickness.mm, wish);
  if (!need.ok) return { state: 'refused', problem: need.problem };
  const at: SiliconeThere = (mm) => {
    const there = siliconeAt(ladder, mm, wish);
    return there.ok ? there.value.totalG : undefined;
  };
  return { state: 'told', need: need.value, mm: thickness.mm, at };
}

/** The measured rungs of the chosen type, for the ticket as it stands. */
export const ladderIn = (ticket: Ticket): LadderOfType | undefined =>
  ladderNow(ticket).answer?.find(({ type }) => type === typeOf(ticket.molding).key);

/** The silicone, the stock and the kits as they stand; undefined while a box for them is unread. */
export function siliconeWishOf(ticket: Ticket): Parameters<typeof siliconeAt>[2] | undefined {
  const ask = moldsAskOf(ticket);
  return ask === undefined ? undefined : { silicone: ask.silicone ?? {}, work: ask.work ?? {} };
}
