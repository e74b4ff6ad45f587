import { besselJ } from './bessel';
import { bisect } from './bisect';
import { heatTerm } from './eigenvalues';
import type { HeatShape, HeatTerm } from './eigenvalues';
import { riseShare } from './semiInfinite';

/** Share of the first difference to the air that is left: 1 at the start, 0 in the end. */
export interface Fading {
  /** `depthShare`: 0 at the heated surface, 1 at the insulated face or in the middle. `fourier` = alpha t / L^2. */
  shareLeft: (depthShare: number, fourier: number) => number;
  /** The Fourier number at which only `share` (between 0 and 1) is left at a depth. */
  fourierAt: (depthShare: number, share: number) => number;
}

/**
 * The whole series, as many terms as count, and not its first term alone: so short times are right as well. The terms are
 * worked out when they are first needed. Under a Fourier number of `EARLY` the body does not yet feel its far side and the
 * solution for a thick body stands in: exact to 1e-9 for a slab; for cylinder and sphere it leaves their curvature
 * out, which is a few percent of what little has arrived by then.
 */
export function fading(shape: HeatShape, biot: number): Fading {
  const terms: HeatTerm[] = [];
  const term = (index: number): HeatTerm => (terms[index] ??= heatTerm(shape, biot, index + 1));

  function shareLeft(depthShare: number, fourier: number): number {
    if (fourier < EARLY[shape]) {
      const spread = Math.sqrt(fourier);
      return 1 - riseShare(depthShare / spread, biot * spread, fourier);
    }
    const count = Math.ceil(NOTHING_LEFT / (Math.PI * Math.sqrt(fourier))) + 1;
    let sum = 0;
    for (let index = 0; index < count; index += 1) {
      const { root, weight } = term(index);
      sum += weight * PROFILE[shape](root * (1 - depthShare)) * Math.exp(-(root ** 2) * fourier);
    }
    return sum;
  }

  function fourierAt(depthShare: number, share: number): number {
    let late = 1;
    while (shareLeft(depthShare, late) > share) late *= 2;
    return bisect(0, late, (fourier) => shareLeft(depthShare, fourier) > share);
  }

  return { shareLeft, fourierAt };
}

/** exp(-6.5^2) = 5e-19. The n-th root is larger than (n - 1) pi. */
const NOTHING_LEFT = 6.5;

const EARLY: Readonly<Record<HeatShape, number>> = { slab: 0.01, cylinder: 0.001, sphere: 0.001 };

const PROFILE: Readonly<Record<HeatShape, (x: number) => number>> = {
  slab: Math.cos,
  cylinder: (x) => besselJ(0, x),
  sphere: (x) => (Math.abs(x) < 1e-8 ? 1 : Math.sin(x) / x),
};
