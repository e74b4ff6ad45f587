import { FACTORS, settingOf } from './triedPour';
import type { Factor, TriedPour } from './triedPour';

export interface EmptySpot {
  to: number;
  /** The tried pour nearest to it, and how far off, in spans of what was tried. */
  nearestNo: number;
  distance: number;
}

/**
 * Of the offered values of one setting, the others as in `base`, the one farthest from everything tried (a maximin distance design:
 * Johnson, Moore and Ylvisaker, J. Stat. Plan. Inference 26 (1990) 131, from memory). Distances in spans of the tried values, over
 * the settings that both pours know. Undefined where nothing was tried or offered.
 */
export function emptierCorner(
  tried: readonly TriedPour[],
  base: TriedPour,
  factor: Factor,
  offered: readonly number[],
): EmptySpot | undefined {
  const spans = FACTORS.map((one) => spanOf(tried, one));
  let best: EmptySpot | undefined;
  for (const to of offered) {
    const spot = nearest(tried, base, { factor, to }, spans);
    if (spot !== undefined && (best === undefined || spot.distance > best.distance + 1e-12)) best = spot;
  }
  return best;
}

function nearest(
  tried: readonly TriedPour[],
  base: TriedPour,
  { factor, to }: { factor: Factor; to: number },
  spans: readonly number[],
): EmptySpot | undefined {
  let best: EmptySpot | undefined;
  for (const pour of tried) {
    const away = FACTORS.map((one, i) => {
      // The room is not set, it happens: it makes no corner.
      const wanted = one === factor ? to : settingOf(base, one);
      const had = settingOf(pour, one);
      if (one === 'roomC' || wanted === undefined || had === undefined || spans[i] === 0) return 0;
      return (wanted - had) / spans[i]!;
    });
    const distance = Math.hypot(...away);
    if (best === undefined || distance < best.distance) best = { to, nearestNo: pour.no, distance };
  }
  return best;
}

function spanOf(tried: readonly TriedPour[], factor: Factor): number {
  const known = tried.map((pour) => settingOf(pour, factor)).filter((value) => value !== undefined);
  return known.length === 0 ? 0 : Math.max(...known) - Math.min(...known);
}
