import type { Estimate } from '../estimate';
import type { Size } from '../plan';
import { formatArea, formatLength, formatVolume, formatVolumeRange, type Show } from '../units';
import { assumptionLine } from '../words/assumptionWords';
import { amount } from '../words/sentence';
import { sizeBecause } from '../words/sizeWords';
import { findingLine } from './findingLine';

/** The size of one scan for a person: findings first, the volume last, as it is what stays on the screen. */
export function sizeText(file: string, size: Size, show: Show): string {
  const findings = size.findings.map((problem) => findingLine(problem, show));
  const assumed = size.assumptions.map((assumption) => `  Assumed     ${assumptionLine(assumption, show)}`);
  const { value, low, high, from } = size.volumeCm3;
  return [
    file,
    ...findings,
    ...assumed,
    ...sizeBecause(size, show).map((line) => `  Because     ${line}`),
    `  Size        ${size.extentsMm.map((mm) => formatLength(mm, show)).join(' x ')} (wide, deep, tall), area ${formatArea(size.areaCm2, show)}, ${amount(size.triangles, 9)} triangles`,
    ...offsetLines(size, show),
    `  Volume      ${formatVolume(value, show)}, ${formatVolumeRange(low, high, show)} 19 times in 20 (${from})`,
  ].join('\n');
}

/** One line an offset: the body grown or shrunk, and its envelope where it is hollow. */
function offsetLines({ offsets }: Size, show: Show): string[] {
  return (offsets?.volumes ?? []).flatMap(({ offsetMm, volumeCm3, envelopeCm3 }) => {
    const how = `${formatLength(Math.abs(offsetMm), show)} ${offsetMm < 0 ? 'smaller' : 'larger'} all round`;
    const line = ({ value, low, high }: Estimate, what: string): string =>
      `  Offset      ${how}${what}: ${formatVolume(value, show)}, ${formatVolumeRange(low, high, show)} 19 times in 20`;
    return [
      line(volumeCm3, ''),
      ...(envelopeCm3 === undefined ? [] : [line(envelopeCm3, ', its hollows filled')]),
    ];
  });
}
