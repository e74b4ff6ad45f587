import type { OpeningAsk, OpeningPlan } from '../plan';
import { POUR_RULES } from '../yield';
import { amount, counted } from './sentence';

const WHY =
  'Several small vents, one at each high spot, not a single large one: air passes, foam plugs a small hole (common practice, no source).';

/** Why several small vents and not a large one; how many the air asks for and what foam they lose, as far as the pour is known. */
export function ventWords({ ventFlow, ventMm }: OpeningPlan, { pour = {} }: OpeningAsk = {}): string[] {
  if (ventFlow === undefined) return [WHY];
  const { count, bleed } = ventFlow;
  const { needed, placed, isEnough, ventPressurePa } = count;
  const air =
    `With the opening closed the air asks for ${counted(needed, 'vent')} of ${amount(ventMm)} mm (at ${amount(ventPressurePa)} Pa, ${POUR_RULES.ventPressure.from}); ` +
    (isEnough
      ? `there ${placed === 1 ? 'is' : 'are'} ${amount(placed)}.`
      : `there ${placed === 1 ? 'is' : 'are'} ${amount(placed)}: make ${placed === 0 ? 'them' : 'the others'} along the highest edges, or leave the opening open until foam stands in it.`);
  if (bleed === undefined) return [WHY, air];
  const known = pour.foamPaS === undefined ? ', not known, assumed' : ', as your trimmed risers taught';
  return [
    WHY,
    air,
    `Foam that bleeds out before it plugs: ${amount(bleed.ventG, 2)} g through a vent of ${amount(bleed.ventMm)} mm, ${amount(bleed.wideG, 2)} g through one of ${amount(bleed.wideMm)} mm (foam of ${amount(pour.foamPaS ?? POUR_RULES.foamViscosity.value, 3)} Pa s${known}).`,
  ];
}
