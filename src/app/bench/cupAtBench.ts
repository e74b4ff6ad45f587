import { targetAG } from '../../yield';
import type { PourOnPage } from '../../worker/pour';

/** What one cup takes, as it is weighed: with the B that lies in it its A, else as planned. g. */
export interface CupAtBench {
  partAG: number;
  partBG: number;
  totalG: number;
  /** B was read off the scale. */
  isRead: boolean;
}

export function cupAtBench({ cups: { cups }, batch }: PourOnPage, bG: number | undefined): CupAtBench {
  if (bG === undefined) return { ...cups[0]!, isRead: false };
  const { massRatio, stepG } = batch;
  const aG = stepG * Math.round(targetAG(massRatio, bG) / stepG);
  return { partAG: aG, partBG: bG, totalG: aG + bG, isRead: true };
}

/** The color of one cup, g: the scale weighs it too. */
export const colorOfCupG = ({ color, refused, cups: { cups } }: PourOnPage): number =>
  refused.colors === undefined ? (color?.totalG ?? 0) / cups.length : 0;
