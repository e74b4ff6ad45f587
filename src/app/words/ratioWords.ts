import { formatRatio } from '../../units';
import type { FoamCard, SiliconeCard } from '../../yield';
import { amount } from '../../words/sentence';

/** The ratio read back, A first. Which is weighed first is said where the grams are. */
export function ratioWords({ ratio }: Pick<FoamCard, 'ratio'>): string {
  const by = ratio.by === 'mass' ? 'by weight' : 'by volume';
  return `A:B ${formatRatio(ratio)} ${by}: ${amount(ratio.a)} parts of A, the isocyanate, to ${amount(ratio.b)} parts of B, the polyol.`;
}

/** A silicone has base and catalyst: the letters belong to the foam. */
export const siliconeRatioWords = ({ ratio }: Pick<SiliconeCard, 'ratio'>): string =>
  `${amount(ratio.base)} parts of base to ${amount(ratio.catalyst)} ${ratio.catalyst === 1 ? 'part' : 'parts'} of catalyst, by weight.`;
