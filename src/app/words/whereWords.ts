import type { Bounds } from '../../geometry';
import type { Place } from '../../problem';
import { formatLength } from '../../units';

/** Nearer than this share of the piece it is in the middle. Chosen here. */
const MIDDLE_SHARE = 0.02;

/**
 * A place on the piece as someone finds it with a tape: up from its lowest point, and from its middle to its own right or left and
 * to the front or back (+x is its right, +y its front).
 */
export function whereWords({ xMm, yMm, zMm }: Place, { min, max }: Bounds): string | undefined {
  if (xMm === undefined || yMm === undefined || zMm === undefined) return undefined;
  const up = `${formatLength(Math.max(0, zMm - min[2]))} up`;
  const sides = [
    asideWords(xMm, min[0], max[0], ['to its right', 'to its left']),
    asideWords(yMm, min[1], max[1], ['to the front', 'to the back']),
  ].filter((words) => words !== undefined);
  return sides.length === 0 ? `${up}, in the middle` : `${up}, ${sides.join(' and ')} of the middle`;
}

function asideWords(
  at: number,
  low: number,
  high: number,
  [above, below]: readonly [string, string],
): string | undefined {
  const off = at - (low + high) / 2;
  if (Math.abs(off) <= MIDDLE_SHARE * (high - low)) return undefined;
  return `${formatLength(Math.abs(off))} ${off > 0 ? above : below}`;
}
