import { BOOK_COLUMNS, numberedPours, type BookRow, type LearnedBook, type LearnedFoam } from '../job/book';
import type { Estimate } from '../estimate';
import type { Slip } from '../yield';
import { nextPourWords, goodOnlyWords, movedTogetherWords, samePackWords } from '../words/bookWords';

/** "mixed_g" of mixedG, "water_temp_c" of waterTempC. */
const keyOf = (field: string): string =>
  field === 'pack' ? 'pack_factor' : field.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);

/** A row under the keys of the JSON, in the order of the columns. */
export function rowJson(row: BookRow): Record<string, unknown> {
  const known = row as unknown as Readonly<Record<string, unknown>>;
  return Object.fromEntries(
    BOOK_COLUMNS.filter(({ field }) => known[field] !== undefined).map(({ field }) => [
      keyOf(field),
      known[field],
    ]),
  );
}

/** How many rows of each kind. */
export const countsJson = (rows: readonly BookRow[]): Record<string, number> => ({
  pours: numberedPours(rows).length,
  cups: rows.filter(({ kind }) => kind === 'cup').length,
  fills: rows.filter(({ kind }) => kind === 'fill').length,
});

export const slipJson = (pour: number, id: string, slip: Slip): Record<string, unknown> => ({
  pour,
  id,
  code: slip.code,
  field: keyOf(slip.field),
  typed: slip.typed,
  ...(slip.instead === undefined ? {} : { instead: slip.instead }),
  held_back: slip.heldBack.map(keyOf),
  ...(slip.isPoured === undefined ? {} : { is_poured: slip.isPoured }),
});

/** The result of "book learn". */
export function learnJson(learned: LearnedBook): Record<string, unknown> {
  const { residue } = learned;
  return {
    residue: {
      way: residue.way,
      pours: residue.pours,
      ...ranged('fixed_g', residue.fixedG),
      ...ranged('per_mixed', residue.perMixed),
      ...(residue.scatterG === undefined ? {} : { scatter_g: residue.scatterG }),
    },
    free_rise: learned.foams.flatMap(freeRiseJson),
    fill: learned.foams.flatMap(fillJson),
    advice: adviceJson(learned),
  };
}

const ranged = (key: string, estimate: Estimate | undefined): Record<string, unknown> =>
  estimate === undefined ? {} : { [key]: estimate.value, [`range_${key}`]: [estimate.low, estimate.high] };

function freeRiseJson({ foam, card, freeRise }: LearnedFoam): Record<string, unknown>[] {
  if (freeRise === undefined) return [];
  const { freeRiseKgM3, cups, shortPours, bounds, leftOut } = freeRise;
  return [
    {
      foam,
      ...ranged('free_rise_kg_m3', freeRiseKgM3),
      from: freeRiseKgM3.from,
      ...(card === undefined ? {} : { card_kg_m3: card.freeRiseKgM3 }),
      cups,
      short_pours: shortPours,
      full_pours: bounds,
      left_out: leftOut,
    },
  ];
}

function fillJson({ foam, fill, batches }: LearnedFoam): Record<string, unknown>[] {
  if (fill === undefined) return [];
  return [
    {
      foam,
      from: fill.from,
      pours: fill.pours,
      exact: fill.exact,
      bounds: fill.bounds,
      fell_back: fill.fellBack,
      at_odds: fill.atOdds,
      cavities: batches.map(({ piece, mold, cavityCm3, leastMixedG, mixedG, chance }) => ({
        ...(piece === undefined ? {} : { piece }),
        ...(mold === undefined ? {} : { mold }),
        cavity_cm3: cavityCm3,
        ...ranged('least_mixed_g', leastMixedG),
        mixed_g: mixedG,
        chance,
      })),
    },
  ];
}

const FACTOR_KEYS = {
  packFactor: 'pack_factor',
  moldC: 'mold_c',
  opening: 'opening',
  roomC: 'room_c',
} as const;

/** What the log says and cannot say, and the one thing to change next. */
function adviceJson({ confounding, next }: LearnedBook): Record<string, unknown>[] {
  const { groups, samePack, goodOnlyWith, pours, verdict } = confounding;
  const moved = movedTogetherWords(confounding);
  const change = next?.change;
  return [
    ...(verdict === 'too-few'
      ? [{ code: 'too_few', pours, text: moved[0] }]
      : groups.map((group, n) => ({
          code: 'moved_together',
          settings: group.map((factor) => FACTOR_KEYS[factor]),
          pours,
          text: moved[n],
        }))),
    ...(goodOnlyWith === undefined
      ? []
      : [{ code: 'good_only_with', pours: goodOnlyWith.pours, text: goodOnlyWords(goodOnlyWith, 'both') }]),
    ...samePack.map((pair) => ({
      code: 'pack_not_enough',
      good: pair.good,
      bad: pair.bad,
      pack_factor: pair.packFactor,
      differ: pair.differ.map((factor) => FACTOR_KEYS[factor]),
      text: samePackWords(pair),
    })),
    ...(change === undefined
      ? []
      : [
          {
            code: 'change_next',
            ...(next?.foam === undefined ? {} : { foam: next.foam }),
            setting: FACTOR_KEYS[change.factor],
            from: change.from,
            to: change.to,
            why: change.why,
            base_pour: change.basePour,
            text: nextPourWords({ change, asks: [] }, 'both')[0],
          },
        ]),
    ...(next?.asks ?? []).map((ask) => ({
      code: 'ask_first',
      ask,
      text: nextPourWords({ asks: [ask] }, 'both')[0],
    })),
  ];
}
