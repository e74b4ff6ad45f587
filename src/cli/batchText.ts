import type { Pour, Size } from '../plan';
import type { Problem } from '../problem';
import { formatVolume, type Show } from '../units';
import { assumptionWords } from '../words/assumptionWords';
import { batchBecause, gramsLine } from '../words/batchWords';
import { chanceWords } from '../words/chance';
import { POUR_CAUTIONS } from '../words/cautions';
import { say } from '../words/say';
import { amount } from '../words/sentence';
import { STATUS_WORDS } from '../words/statusWords';

/** The batch for a person: checks, what was assumed, why, cautions; the grams last. */
export function batchText(
  pour: Pour,
  size: Size | undefined,
  findings: readonly Problem[],
  show: Show,
): string {
  const { batch, cavityCm3 } = pour;
  const assumed = [...(size?.assumptions ?? []), ...batch.assumptions];
  return [
    ...findings.map((problem) => {
      const { text, hint } = say(problem);
      return `  ${STATUS_WORDS[problem.status].padEnd(11)} ${text} ${hint}`;
    }),
    ...assumed.map((assumption) => `  Assumed     ${assumptionWords(assumption)}`),
    ...batchBecause(pour, show).map((line) => `  Because     ${line}`),
    ...POUR_CAUTIONS.map(({ when, what }) => `  ${when.padEnd(11)} ${what}`),
    `  Cavity      ${formatVolume(cavityCm3.value, show)}, ${amount(cavityCm3.low, 5)} to ${amount(cavityCm3.high, 5)} cm³ (${cavityCm3.from})`,
    `  Short fill  ${chanceWords(batch.shortFillChance)}, packed ${amount(batch.packFactor)} times to ${amount(batch.moldedDensityKgM3)} kg/m³`,
    `  Range       ${amount(batch.mixedRangeG[0], 3)} to ${amount(batch.mixedRangeG[1], 3)} g is what this pack could ask for, 9 times in 10`,
    `  Weigh       ${gramsLine(pour)}`,
  ].join('\n');
}
