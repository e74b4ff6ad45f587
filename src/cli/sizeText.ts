import type { Size } from '../plan';
import { formatLength, formatVolume, type Show } from '../units';
import { assumptionWords } from '../words/assumptionWords';
import { say } from '../words/say';
import { amount } from '../words/sentence';
import { sizeBecause } from '../words/sizeWords';
import { STATUS_WORDS } from '../words/statusWords';

/** The size of one scan for a person: findings first, the volume last, as it is what stays on the screen. */
export function sizeText(file: string, size: Size, show: Show): string {
  const findings = size.findings.map((problem) => {
    const { text, hint } = say(problem);
    return `  ${STATUS_WORDS[problem.status].padEnd(11)} ${text} ${hint}`;
  });
  const assumed = size.assumptions.map((assumption) => `  Assumed     ${assumptionWords(assumption)}`);
  const { value, low, high, from } = size.volumeCm3;
  return [
    file,
    ...findings,
    ...assumed,
    ...sizeBecause(size, show).map((line) => `  Because     ${line}`),
    `  Size        ${size.extentsMm.map((mm) => formatLength(mm, show)).join(' x ')} (wide, deep, tall), area ${amount(size.areaCm2)} cm², ${amount(size.triangles, 9)} triangles`,
    `  Volume      ${formatVolume(value, show)}, ${amount(low, 5)} to ${amount(high, 5)} cm³ 19 times in 20 (${from})`,
  ].join('\n');
}
