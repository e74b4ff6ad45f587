import {
  fillBatch,
  learnFill,
  learnFreeRise,
  type FillBatch,
  type FillModel,
  type FillPrior,
  type FoamCard,
  type FreeRiseCup,
  type FreeRisePour,
  type LearnedFreeRise,
  type PourGroup,
  type ResidueLine,
} from '../../yield';
import type { BookRow } from './bookRow';
import type { CheckedPour } from './checkedPours';
import { cavityOf, cupsOf, fillPours, freeRisePours } from './evidence';
import { soundOnly, type LeftOut } from './soundOnly';

/** What fills a cavity of which a pour of that foam is in the book. */
export interface LearnedBatch extends FillBatch {
  piece?: string;
  mold?: string;
  cavityCm3: number;
}

export interface LearnedFoam {
  foam: string;
  /** What the card says. */
  card?: Pick<FoamCard, 'freeRiseKgM3' | 'freeRiseFrom'>;
  /** Left out where neither card nor cup nor short pour says anything. */
  freeRise?: LearnedFreeRise;
  fill?: FillModel;
  batches: LearnedBatch[];
  leftOut: LeftOut[];
}

export interface FoamEvidence {
  foam: string;
  card: FoamCard | undefined;
  rows: readonly BookRow[];
  /** Of that foam. */
  pours: readonly CheckedPour[];
  residue: ResidueLine;
  /** Room of the pour to come. */
  roomC: number | undefined;
  chance: number;
}

/** What the book says of one foam: how far it rises by itself, and how much fills each cavity that it was poured into. */
export function learnFoam(evidence: FoamEvidence): LearnedFoam {
  const { foam, card, rows, pours, roomC } = evidence;
  const at: PourGroup = { foam, ...(roomC === undefined ? {} : { roomC }) };
  const sheet = card === undefined ? {} : { sheet: { freeRiseKgM3: card.freeRiseKgM3 } };
  const cups = rows
    .flatMap((row) => (row.kind === 'cup' ? cupsOf(row) : []))
    .filter((cup) => cup.foam === foam && learnFreeRise({ cups: [cup], pours: [] }).ok);
  const rise = soundOnly(freeRisePours(pours, rows), 'free rise', (pour: FreeRisePour) =>
    learnFreeRise({ cups: [], pours: [pour], sheet: { freeRiseKgM3: 100 } }),
  );
  const freeRise = learnFreeRise({ cups, pours: rise.used, ...sheet, at });
  const filled = learnedFill(evidence, cups, at);
  return {
    foam,
    ...(card === undefined ? {} : { card }),
    ...(freeRise.ok ? { freeRise: freeRise.value } : {}),
    ...filled,
    leftOut: [...rise.leftOut, ...filled.leftOut],
  };
}

function learnedFill(
  { card, pours, rows, residue, chance }: FoamEvidence,
  cups: readonly FreeRiseCup[],
  at: PourGroup,
): Pick<LearnedFoam, 'fill' | 'batches' | 'leftOut'> {
  const prior = priorOf(card, cups, at);
  if (prior === undefined) return { batches: [], leftOut: [] };
  const { used, leftOut } = soundOnly(fillPours(pours, rows), 'fill', (pour) => learnFill(prior, [pour]));
  const fill = learnFill(prior, used);
  if (!fill.ok) return { batches: [], leftOut };
  const batches = cavitiesOf(pours, rows).flatMap((cavity) => {
    const { cavityCm3 } = cavity;
    const batch = fillBatch({ fill: fill.value, residue, cavityCm3, chance });
    return batch.ok ? [{ ...cavity, ...batch.value }] : [];
  });
  return { fill: fill.value, batches, leftOut };
}

/** Card and cups, without the pours: those come on top, and must not count twice. */
function priorOf(
  card: FoamCard | undefined,
  cups: readonly FreeRiseCup[],
  at: PourGroup,
): FillPrior | undefined {
  const sheet = card === undefined ? {} : { sheet: { freeRiseKgM3: card.freeRiseKgM3 } };
  const known = learnFreeRise({ cups, pours: [], ...sheet, at });
  if (!known.ok) return undefined;
  const { freeRiseKgM3, uShare, cups: used } = known.value;
  const from = used > 0 ? 'cup-test' : (card?.freeRiseFrom ?? 'data-sheet');
  return { freeRiseKgM3: freeRiseKgM3.value, from, uFreeRiseShare: uShare };
}

/** The cavities that were poured, each once, as the last pour of each knows it. */
function cavitiesOf(
  pours: readonly CheckedPour[],
  rows: readonly BookRow[],
): Pick<LearnedBatch, 'piece' | 'mold' | 'cavityCm3'>[] {
  const known = new Map<string, Pick<LearnedBatch, 'piece' | 'mold' | 'cavityCm3'>>();
  for (const { sound } of pours) {
    const cavityCm3 = cavityOf(sound, rows);
    const { piece, mold } = sound;
    if (cavityCm3 === undefined || (piece === undefined && mold === undefined)) continue;
    known.set(JSON.stringify([piece, mold]), {
      ...(piece === undefined ? {} : { piece }),
      ...(mold === undefined ? {} : { mold }),
      cavityCm3,
    });
  }
  return [...known.values()];
}
