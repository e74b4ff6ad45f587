import type { OpeningAsk, OpeningPlan } from '../plan';
import { POUR_RULES } from '../yield';
import { amount, counted } from './sentence';

const assumed = POUR_RULES.foamViscosity;

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
  const grams = (mass: number): string =>
    `about ${amount(mass, 2)} g${pour.foamPaS === undefined ? rangeWords(mass) : ''}`;
  const known =
    pour.foamPaS === undefined
      ? `${amount(assumed.value, 3)} Pa s, not known, assumed: ${amount(assumed.low)} to ${amount(assumed.high)} Pa s`
      : `${amount(pour.foamPaS, 3)} Pa s, as your trimmed risers taught`;
  return [
    WHY,
    air,
    `Foam that bleeds out before it plugs: ${grams(bleed.ventG)} through a vent of ${amount(bleed.ventMm)} mm, ${grams(bleed.wideG)} through one of ${amount(bleed.wideMm)} mm (vents ${amount(POUR_RULES.ventLength.value)} mm long, chosen here; foam of ${known}).`,
  ];
}

/** Of a foam of which nothing is known: the mass goes with one over its viscosity (Hagen and Poiseuille). */
const rangeWords = (mass: number): string =>
  ` (${amount((mass * assumed.value) / assumed.high, 1)} to ${amount((mass * assumed.value) / assumed.low, 2)} g)`;
