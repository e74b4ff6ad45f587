import type { Pour, Size } from '../plan';
import type { Problem } from '../problem';
import { formatDensity, formatVolume, formatVolumeRange, type Show } from '../units';
import { assumptionLine } from '../words/assumptionWords';
import { batchBecause, gramsLine } from '../words/batchWords';
import { chanceWords } from '../words/chance';
import { POUR_CAUTIONS } from '../words/cautions';
import { amount } from '../words/sentence';
import { findingLine } from './findingLine';

/** The batch for a person: checks, what was assumed, why, cautions; the grams last. Masses are those of the scale, in grams. */
export function batchText(
  pour: Pour,
  size: Size | undefined,
  findings: readonly Problem[],
  show: Show,
): string {
  const { batch, cavityCm3 } = pour;
  const assumed = [...(size?.assumptions ?? []), ...batch.assumptions];
  return [
    ...findings.map((problem) => findingLine(problem, show)),
    ...assumed.map((assumption) => `  Assumed     ${assumptionLine(assumption, show)}`),
    ...batchBecause(pour, show).map((line) => `  Because     ${line}`),
    ...POUR_CAUTIONS.map(({ when, what }) => `  ${when.padEnd(11)} ${what}`),
    `  Cavity      ${formatVolume(cavityCm3.value, show)}, ${formatVolumeRange(cavityCm3.low, cavityCm3.high, show)} (${cavityCm3.from})`,
    `  Short fill  ${chanceWords(batch.shortFillChance)}, packed ${amount(batch.packFactor)} times to ${formatDensity(batch.moldedDensityKgM3, show)}`,
    `  Range       ${amount(batch.mixedRangeG[0], 3)} to ${amount(batch.mixedRangeG[1], 3)} g is what this pack could ask for, 9 times in 10`,
    `  Weigh       ${gramsLine(pour)}`,
  ].join('\n');
}
