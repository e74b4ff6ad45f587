import type { Vector } from '../../geometry';
import { amount } from '../../words/sentence';
import { POUR_WAYS, type PourWay } from '../ticket/ventingState';

/** Six ways up, as a pair of hands would turn the piece. */
export const WAY_CHOICES: Readonly<Record<PourWay, string>> = {
  stands: 'as it stands',
  over: 'turned over, base up',
  front: 'on its back, front up',
  back: 'on its face, back up',
  left: 'on its right side, left up',
  right: 'on its left side, right up',
};

const SHORT: Readonly<Record<PourWay, string>> = {
  stands: 'as it stands',
  over: 'base up',
  front: 'front up',
  back: 'back up',
  left: 'left side up',
  right: 'right side up',
};

/** Less than this is no tilt that anyone sets by hand, degrees. Chosen here. */
const LEVEL_DEGREES = 1;

/** "base up", or "base up, tipped 20° to the front": the nearest of the six, and how far and where to from there. */
export function upWords(up: Vector): string {
  const ways = Object.entries(POUR_WAYS) as [PourWay, Vector][];
  const by = ways.map(([way, axis]) => ({ way, cosine: cosineOf(up, axis) }));
  by.sort((one, other) => other.cosine - one.cosine);
  const [nearest, toward] = [by[0]!, by[1]!];
  const degrees = (Math.acos(Math.min(1, nearest.cosine)) * 180) / Math.PI;
  if (degrees < LEVEL_DEGREES) return SHORT[nearest.way];
  return `${SHORT[nearest.way]}, tipped ${amount(degrees, 2)}° so that ${HIGH[toward.way]} comes up`;
}

/** The side that rises when the piece is tipped. */
const HIGH: Readonly<Record<PourWay, string>> = {
  stands: 'the top',
  over: 'the base',
  front: 'the front',
  back: 'the back',
  left: 'its left',
  right: 'its right',
};

/** As numbers, for the drawing board. */
export const upNumbers = (up: Vector): string => up.map((c) => amount(Number(c.toFixed(3)), 3)).join(', ');

const cosineOf = (one: Vector, other: Vector): number =>
  (one[0] * other[0] + one[1] * other[1] + one[2] * other[2]) / (Math.hypot(...one) * Math.hypot(...other));
