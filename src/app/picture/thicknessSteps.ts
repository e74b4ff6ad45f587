import { formatLength } from '../../units';
import type { StepBorders } from '../../viewer/paintMaterial';

/** The six steps in words, thinnest first. The last is open where thicker places are told as that. */
export function thicknessSteps(
  borders: StepBorders,
  { cappedMm, mostMm }: { cappedMm: number; mostMm: number },
): string[] {
  const last = borders[borders.length - 1]!;
  const open = mostMm >= cappedMm;
  return [
    `under ${formatLength(borders[0])}`,
    ...borders
      .slice(1)
      .map((border, i) => `${formatLength(borders[i]!, 'metric')} to ${formatLength(border)}`),
    open || mostMm <= last
      ? `${formatLength(last)} and more`
      : `${formatLength(last, 'metric')} to ${formatLength(Number(mostMm.toPrecision(3)))}`,
  ];
}
