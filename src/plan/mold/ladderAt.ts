import type { Estimate } from '../../estimate';
import type { MoldShape } from '../../geometry';
import { bad, good, type Outcome } from '../../problem';
import { planCoats } from '../../yield';
import { MM3_PER_CM3 } from '../sizeDoubts';
import type { LadderOfType, Rung } from './ladder';
import { monotoneCurve, type CurvePoint } from './monotoneCurve';
import type { SiliconeWish, WorkWish } from './moldWish';
import { siliconeFor, type SiliconeNeed } from './siliconeFor';

/** The rubber between two rungs. */
export interface RubberBetween {
  /** With the range of the scan and what the way between the rungs leaves open. */
  rubberCm3: Estimate;
  parts: Rung['parts'];
}

/**
 * Between rungs the rubber is taken to be known to this share at best. Chosen here: on a ball, the troll and the hand it was within 0.0016 of what is
 * measured there by the molds' own, finer field (tests/plan/ladder.test.ts).
 */
const BETWEEN_SHARE = 0.002;

/** Rubber at a thickness; undefined beyond the ends of the ladder. */
export function rubberAt({ rungs }: LadderOfType, thicknessMm: number): RubberBetween | undefined {
  const parts = partsAt(rungs, thicknessMm);
  if (parts === undefined) return undefined;
  const value = sumOf(parts);
  const doubtCm3 = Math.max(BETWEEN_SHARE * value, wayDoubtCm3(rungs, thicknessMm));
  const half = (end: (rung: Rung) => number): number => Math.hypot(lineAt(rungs, thicknessMm, end), doubtCm3);
  return {
    rubberCm3: {
      value,
      low: Math.max(0, value - half(({ rubberCm3 }) => rubberCm3.value - rubberCm3.low)),
      high: value + half(({ rubberCm3 }) => rubberCm3.high - rubberCm3.value),
      from: rungs[0]!.rubberCm3.from,
    },
    parts,
  };
}

/**
 * Silicone to mix and buy at a thickness, by the sums of the mold itself: quick enough to follow a slider. Errors: INPUT_OUT_OF_BOUNDS
 * beyond the ladder, COATS_DO_NOT_FIT, and those of `siliconeFor`.
 */
export function siliconeAt(
  ladder: LadderOfType,
  thicknessMm: number,
  wish: { silicone: SiliconeWish; work: WorkWish },
): Outcome<SiliconeNeed> {
  const rubber = rubberAt(ladder, thicknessMm);
  if (rubber === undefined) return beyond(ladder, thicknessMm);
  const coats = coatsAt(ladder, thicknessMm);
  if (!coats.ok) return coats;
  const shape = {
    key: ladder.type,
    rubber: rubber.parts.map(({ name, volumeCm3 }) => ({ name, volumeMm3: volumeCm3 * MM3_PER_CM3 })),
    rubberMm3: rubber.rubberCm3.value * MM3_PER_CM3,
    ...(coats.value.length === 0 ? {} : { coats: coats.value }),
  };
  return siliconeFor(shape, rubber.rubberCm3, wish);
}

const beyond = ({ of, rungs }: LadderOfType, value: number): Outcome<never> =>
  bad('INPUT_OUT_OF_BOUNDS', {
    input: of,
    value,
    low: rungs[0]!.thicknessMm,
    high: rungs.at(-1)!.thicknessMm,
    unit: 'mm',
  });

function partsAt(rungs: readonly Rung[], thicknessMm: number): Rung['parts'] | undefined {
  const [first] = rungs;
  const last = rungs.at(-1);
  if (first === undefined || last === undefined) return undefined;
  if (!(thicknessMm >= first.thicknessMm && thicknessMm <= last.thicknessMm)) return undefined;
  return first.parts.map(({ name }, part) => ({
    name,
    volumeCm3: Math.max(0, monotoneCurve(pointsOf(rungs, part))(thicknessMm)),
  }));
}

/** The skin with its measured slopes; what comes to it, without. */
const pointsOf = (rungs: readonly Rung[], part: number): CurvePoint[] =>
  rungs.map(({ thicknessMm, parts, growsCm3PerMm }) => ({
    x: thicknessMm,
    y: parts[part]!.volumeCm3,
    ...(part === 0 && growsCm3PerMm !== undefined ? { slope: growsCm3PerMm } : {}),
  }));

/** The curve of the other rungs misses the one left out by this; between two rungs, half as far apart, half of it is not passed. Chosen here, and tried. */
const MISSED_SHARE = 0.5;

function wayDoubtCm3(rungs: readonly Rung[], thicknessMm: number): number {
  const after = rungs.findIndex((rung) => rung.thicknessMm >= thicknessMm);
  if (rungs[after]?.thicknessMm === thicknessMm) return 0;
  const missed = [after - 1, after]
    .filter((i) => i > 0 && i < rungs.length - 1)
    .map((i) => missedCm3(rungs, i));
  return MISSED_SHARE * Math.max(0, ...missed);
}

function missedCm3(rungs: readonly Rung[], i: number): number {
  const others = rungs.filter((_, n) => n !== i);
  const told = partsAt(others, rungs[i]!.thicknessMm);
  return told === undefined ? 0 : Math.abs(sumOf(told) - sumOf(rungs[i]!.parts));
}

const sumOf = (parts: Rung['parts']): number => parts.reduce((sum, { volumeCm3 }) => sum + volumeCm3, 0);

/** Along the line between two rungs. */
function lineAt(rungs: readonly Rung[], thicknessMm: number, of: (rung: Rung) => number): number {
  const after = Math.max(
    1,
    rungs.findIndex((rung) => rung.thicknessMm >= thicknessMm),
  );
  const [a, b] = [rungs[after - 1]!, rungs[after]!];
  const t = (thicknessMm - a.thicknessMm) / (b.thicknessMm - a.thicknessMm);
  return (1 - t) * of(a) + t * of(b);
}

/** What each coat brings, for a type that goes on in coats. */
function coatsAt(
  { settings, rungs, startsCm3PerMm }: LadderOfType,
  skinMm: number,
): Outcome<NonNullable<MoldShape['coats']>> {
  const { firstCoatMm, coatMm } = settings;
  if (typeof firstCoatMm !== 'number' || typeof coatMm !== 'number') return good([]);
  const planned = planCoats({ skinMm, firstCoatMm, coatMm });
  if (!planned.ok) return planned;
  const start = startsCm3PerMm === undefined ? {} : { slope: startsCm3PerMm };
  const within = monotoneCurve([{ x: 0, y: 0, ...start }, ...pointsOf(rungs, 0)]);
  return good(
    planned.value.outerMm.map((toMm, i, all) => ({
      toMm,
      volumeMm3: (within(toMm) - within(all[i - 1] ?? 0)) * MM3_PER_CM3,
    })),
  );
}
