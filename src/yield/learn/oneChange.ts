import type { Estimate } from '../../estimate';
import type { Confounding } from './confounded';
import { skinEffect } from './skinEffect';
import { settingOf } from './triedPour';
import type { Factor, TriedPour } from './triedPour';

export type ChangeReason =
  /** The mold was colder than is common. */
  | 'mold-cold'
  /** An open mouth lets the pack out. */
  | 'opening-open'
  /** Warm, vented, tested today, and yet short or bare: now more pack. */
  | 'still-poor'
  /** It moved together with others: change it alone. */
  | 'tell-apart'
  /** All is well: try with less foam. */
  | 'try-lighter';

export interface OneChange {
  factor: Factor;
  /** A plug is 1, an open mouth 0. */
  from: number;
  to: number;
  why: ChangeReason;
  /** The pour it starts from; all else stays as it was then. */
  basePour: number;
  /** What shows it. */
  fromPours: number[];
  /** For `tell-apart`: what it is to be told from. */
  apartFrom?: Factor[];
  /** Of the tried pours the nearest, in spans of what was tried. */
  nearest?: { no: number; distance: number };
  /** Of the skin score. */
  effect?: Estimate;
}

/** Makes a change that starts from one pour, with the effect that the log promises. Undefined where that pour does not know the setting. */
export const changeFrom =
  (pours: readonly TriedPour[], base: TriedPour, confounding: Confounding) =>
  (factor: Factor, to: number, why: ChangeReason, fromPours: number[]): OneChange | undefined => {
    const from = settingOf(base, factor);
    if (from === undefined) return undefined;
    const isConfounded = confounding.groups.some((group) => group.includes(factor));
    const effect = skinEffect(pours, { factor, by: to - from, isConfounded });
    const change: OneChange = { factor, from, to, why, basePour: base.no, fromPours };
    return effect === undefined ? change : { ...change, effect };
  };

/** To the hundredth, so that 1.3 - 0.05 is 1.25. */
export const roundPack = (pack: number): number => Math.round(100 * pack) / 100;
