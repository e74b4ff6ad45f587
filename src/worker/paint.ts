import type { BaseChoice } from '../geometry';
import { paintThickness, type MoldBench } from '../plan';
import { bad, type Outcome } from '../problem';
import type { Paint, Picture } from './protocol';
import type { Help } from './sizeWish';
import { watchedBench } from './watchedBench';

/**
 * Thickness of the casting at every vertex of a picture. Measured as for the opening, with which it is shared; the samples stay with the worker. Errors: those of
 * `paintThickness`.
 */
export function paintWish(
  { bench }: { bench: MoldBench },
  picture: Pick<Picture, 'positions' | 'middleUnits' | 'place'>,
  help: Help,
  base: BaseChoice = 'open',
): Outcome<Paint> {
  const { up, scale } = bench.settled;
  if (picture.place.up !== up)
    throw new Error(`paintWish: expected a picture with ${up} up, got one with ${picture.place.up}`);
  if (help.shouldStop?.() === true) return bad('STOPPED');
  const { options } = watchedBench(bench, help);
  const { onProgress, shouldStop } = options;
  return paintThickness({ ...bench, options }, base, placed(picture, scale.mmPerUnit), {
    ...(onProgress === undefined ? {} : { onProgress }),
    ...(shouldStop === undefined ? {} : { shouldStop }),
  });
}

/** The picture's vertices in mm on the placed piece. */
function placed(
  { positions, middleUnits }: Pick<Picture, 'positions' | 'middleUnits'>,
  mmPerUnit: number,
): Float32Array {
  const points = new Float32Array(positions.length);
  for (let c = 0; c < points.length; c++) points[c] = mmPerUnit * (positions[c]! + middleUnits[c % 3]!);
  return points;
}
