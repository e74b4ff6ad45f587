import type { Finishing } from '../plan';
import { formatArea, formatMass, type Show } from '../units';
import { FINISH_NOTES } from '../words/finishNotes';
import { amount, counted } from '../words/sentence';
import type { MoldCall } from './moldOptions';

/** Paint, sealer and glue of one casting, and the notes of the trade; only where finishing was asked for. */
export function finishLines(finishing: Finishing, { ask, wantsFinish }: MoldCall, show: Show): string[] {
  if (!wantsFinish) return [];
  const { surfaceCm2, coatedCm2, textureFactor, paint, seal, bondG, poreFillG } = finishing;
  const row = (text: string): string => `  Finish      ${text}`;
  const coats = (what: string, { amount: much, coats: count }: { amount: number; coats: number }): string =>
    row(`${counted(count, 'coat')} of ${what}: ${amount(much, 3)} L or kg, as its coverage was given`);
  return [
    ...(ask.finish === undefined
      ? []
      : [
          row(
            `surface ${formatArea(surfaceCm2, show)}, with its texture (${amount(textureFactor)} times) ${formatArea(coatedCm2, show)}`,
          ),
        ]),
    ...(seal === undefined ? [] : [coats('sealer', seal)]),
    ...(poreFillG === undefined
      ? []
      : [row(`open cells swallow about ${formatMass(poreFillG, show)} of sealer`)]),
    ...(paint === undefined ? [] : [coats('paint', paint)]),
    ...(bondG === undefined
      ? []
      : [
          row(
            `glue for both faces of the seam: ${amount(bondG.value, 3)} g, ${amount(bondG.low, 3)} to ${amount(bondG.high, 3)} g`,
          ),
        ]),
    ...FINISH_NOTES.map(({ when, what, from }) => row(`${when}: ${what} (${from})`)),
  ];
}
