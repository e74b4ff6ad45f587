import { sheetOf } from '../../job/foamSheet';
import { isRecord } from '../../job/json';
import type { Piece } from '../../job/piece';
import { seenCasting } from '../../job/seen';
import { good, type Outcome } from '../../problem';
import type { ShopCore } from '../../store';
import {
  massRatio,
  planRun,
  RULES,
  type FoamCard,
  type MassRatio,
  type RunInputs,
  type RunPlan,
} from '../../yield';
import { roundParts } from '../../yield/rounding';
import { checkRun } from '../../yield/run/checkRun';
import { castingCode } from '../words/castingCode';

/** What the shop knows of a run: the foam of the casting in hand, what is weighed for it, what is left of it. */
export interface RunFacts {
  card: FoamCard;
  ratio: MassRatio;
  stepG: number;
  stock: RunInputs['stock'];
  kits: NonNullable<RunInputs['kits']>;
  /** Molds of the piece that are on its ticket. */
  molds: number;
  /** As its plan stands. */
  plan?: { partAG: number; partBG: number; totalG: number; packFactor: number; of: string };
  openMin?: number;
  foamPerKg?: number;
}

/** Undefined where the casting in hand names no card of the shop. */
export function runFacts(piece: Piece, core: ShopCore, version: string): RunFacts | undefined {
  const { casting } = piece.hand;
  const foam = piece.castings[casting]?.choices.foam;
  const name = isRecord(foam) && typeof foam.name === 'string' ? foam.name : undefined;
  const card = core.foams.find((one) => one.name === name);
  const ratio = card === undefined ? undefined : massRatio(card.ratio, card.partDensities);
  if (card === undefined || ratio?.ok !== true) return undefined;
  const seen = seenCasting(piece, casting, version);
  const sheet = sheetOf(card);
  const { aPerKg, bPerKg } = sheet;
  const { a, b } = ratio.value;
  return {
    card,
    ratio: ratio.value,
    stepG: core.scale?.stepG ?? RULES.scaleStep.value,
    stock: core.stock
      .filter((row) => row.card === card.name)
      .map(({ aKg, bKg }) => ({
        ...(aKg === undefined ? {} : { aKg }),
        ...(bKg === undefined ? {} : { bKg }),
      })),
    kits: sheet.kits ?? [],
    molds: Object.keys(piece.molds).length,
    ...(seen === undefined
      ? {}
      : {
          plan: {
            partAG: seen.partAG,
            partBG: seen.partBG,
            totalG: seen.totalG,
            packFactor: seen.packFactor,
            of: castingCode(piece),
          },
        }),
    ...(card.openMin === undefined ? {} : { openMin: card.openMin }),
    ...(aPerKg === undefined || bPerKg === undefined
      ? {}
      : { foamPerKg: (a * aPerKg + b * bPerKg) / (a + b) }),
  };
}

/** What was typed of the run; blank is left to the shop, the plan or what is assumed. */
export type RunTyped = Partial<
  Pick<
    RunInputs,
    | 'castings'
    | 'molds'
    | 'spareShare'
    | 'cupG'
    | 'openMin'
    | 'turnaroundMin'
    | 'dayMin'
    | 'moldLife'
    | 'moldUsed'
    | 'foamPerKg'
    | 'otherPerCasting'
  >
> & { mixedG?: number };

export interface PlannedRun {
  plan: RunPlan;
  casting: { partAG: number; partBG: number; stepG: number };
}

/** The run with what is known. Undefined until it is said how many, and what one casting takes. Errors: those of `planRun`, of rounding. */
export function plannedRun(typed: RunTyped, facts: RunFacts): Outcome<PlannedRun> | undefined {
  const { mixedG, castings, molds = facts.molds, ...more } = typed;
  if (castings === undefined) return undefined;
  const counted = checkRun({ castings, molds });
  if (!counted.ok) return counted;
  const { ratio, stepG, stock, kits, openMin, foamPerKg } = facts;
  const parts = mixedG === undefined ? facts.plan : roundParts({ mixedG, ratio, stepG });
  if (parts === undefined) return undefined;
  if ('ok' in parts && !parts.ok) return parts;
  const { partAG, partBG } = 'ok' in parts ? parts.value : parts;
  const plan = planRun({
    castings,
    molds,
    batch: { partAG, partBG },
    ratio,
    stock,
    kits,
    ...(openMin === undefined ? {} : { openMin }),
    ...(foamPerKg === undefined ? {} : { foamPerKg }),
    ...more,
  });
  return plan.ok ? good({ plan: plan.value, casting: { partAG, partBG, stepG } }) : plan;
}
