import { finding, type Outcome, type Problem } from '../../problem';
import { reversedRatio, type FoamCard } from '../../yield';
import { cardUsed } from '../ticket/foamState';
import type { Ticket } from '../ticket/state';

/** A card's ratio typed the other way round. A card that goes by another name is another foam. */
export function reversedFrom({ foam }: Ticket, card: Outcome<FoamCard> | undefined): Problem | undefined {
  const used = cardUsed(foam);
  if (card?.ok !== true || used === undefined) return undefined;
  const { a, b, by } = used;
  const { ratio } = card.value;
  if (!reversedRatio({ ...card.value, ratio: { a, b, by } }, ratio)) return undefined;
  return finding('RATIO_REVERSED', 'look', { a: ratio.a, b: ratio.b, cardA: a, cardB: b });
}
