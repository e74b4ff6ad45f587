import { finding, type Outcome, type Problem } from '../../problem';
import { reversedRatio, type FoamCard } from '../../yield';
import { SAMPLE_CARDS } from '../ticket/sampleCards';
import type { Ticket } from '../ticket/state';

/** A sample card's ratio typed the other way round. A card that goes by another name is another foam. */
export function reversedFrom({ foam }: Ticket, card: Outcome<FoamCard> | undefined): Problem | undefined {
  const sample = SAMPLE_CARDS.find(({ key, name }) => key === foam.sample && name === foam.name.trim());
  if (card?.ok !== true || sample === undefined) return undefined;
  const [a, b] = [Number(sample.texts.partsA?.text), Number(sample.texts.partsB?.text)];
  const { ratio } = card.value;
  if (!reversedRatio({ ...card.value, ratio: { a, b, by: sample.by } }, ratio)) return undefined;
  return finding('RATIO_REVERSED', 'look', { a: ratio.a, b: ratio.b, cardA: a, cardB: b });
}
