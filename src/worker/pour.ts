import { figuresOf, preparePour, type OpenedFigure, type PourAsk, type PreparedPour } from '../plan';
import { good, type Outcome, type Problem } from '../problem';

/** What is told beside the batch, in groups: one that is refused is left out and told, and the grams stay. */
export type PourGroup = 'mold' | 'cups' | 'forces' | 'times' | 'warm' | 'skin' | 'colors' | 'prices';

/** A pour as the page shows it: what could be worked out, and why a group of it could not. */
export interface PourOnPage extends PreparedPour {
  refused: Partial<Record<PourGroup, Problem>>;
  /** Every number of it, opened. */
  figures: OpenedFigure[];
}

/** What each group adds to the batch in the air of the day. */
const GROUPS: Readonly<Record<PourGroup, (ask: PourAsk, all: PourAsk) => PourAsk>> = {
  mold: (ask, { moldC }) => (moldC === undefined ? ask : { ...ask, moldC }),
  cups: (ask, { cups, foam }) => ({
    ...ask,
    ...(cups === undefined ? {} : { cups }),
    ...withFoam(ask, foam, 'creamS'),
  }),
  forces: (ask, { clamp }) => (clamp === undefined ? ask : { ...ask, clamp }),
  times: (ask, { foam }) => ({ ...ask, ...withFoam(ask, foam, 'openMin', 'ncoShare', 'waterShare') }),
  warm: (ask, { warm }) => (warm === undefined ? ask : { ...ask, warm }),
  skin: (ask, { castingCm2, skinMm }) => ({
    ...ask,
    ...(castingCm2 === undefined ? {} : { castingCm2 }),
    ...(skinMm === undefined ? {} : { skinMm }),
  }),
  colors: (ask, { colors }) => (colors === undefined ? ask : { ...ask, colors }),
  prices: (ask, { prices }) => (prices === undefined ? ask : { ...ask, prices }),
};

/**
 * A pour with all that was told. Where that is refused, it is told again group by group, and what a group cannot have stands beside
 * its name. Errors: those of the batch itself and of the air of the day, which its grams hang on.
 */
export function pourWish(ask: PourAsk): Outcome<PourOnPage> {
  const all = preparePour(ask);
  if (all.ok) return good({ ...all.value, refused: {}, figures: figuresOf(all.value, ask) });
  let told = batchAlone(ask);
  let ready = preparePour(told);
  if (!ready.ok) return ready;
  const refused: PourOnPage['refused'] = {};
  for (const [group, add] of Object.entries(GROUPS) as [PourGroup, (typeof GROUPS)[PourGroup]][]) {
    const more = add(told, ask);
    const tried = preparePour(more);
    if (tried.ok) [told, ready] = [more, tried];
    else refused[group] = tried.problem;
  }
  return good({ ...ready.value, refused, figures: figuresOf(ready.value, told) });
}

function batchAlone({ pour, air, roomC, ingredientsC, foam, packs, past, facts }: PourAsk): PourAsk {
  const timesAtC = foam?.timesAtC;
  return {
    pour,
    ...(air === undefined ? {} : { air }),
    ...(roomC === undefined ? {} : { roomC }),
    ...(ingredientsC === undefined ? {} : { ingredientsC }),
    ...(timesAtC === undefined ? {} : { foam: { timesAtC } }),
    ...(packs === undefined ? {} : { packs }),
    ...(past === undefined ? {} : { past }),
    ...(facts === undefined ? {} : { facts }),
  };
}

type Foam = NonNullable<PourAsk['foam']>;

/** The foam as told so far, with some more of what is known of it. */
function withFoam(
  { foam: told }: PourAsk,
  all: Foam | undefined,
  ...names: (keyof Foam)[]
): Pick<PourAsk, 'foam'> {
  const more = Object.fromEntries(
    names.flatMap((name) => (all?.[name] === undefined ? [] : [[name, all[name]]])),
  );
  const foam = { ...told, ...more };
  return Object.keys(foam).length === 0 ? {} : { foam };
}
