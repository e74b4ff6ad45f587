import { MOLD_TYPES, type MoldKey } from '../geometry';
import { planMold, type Mold, type MoldBench } from '../plan';
import { bad, good, type Outcome } from '../problem';
import type { MoldOfType, MoldsAsk } from './protocol';
import type { Help } from './sizeWish';
import { watchedBench } from './watchedBench';

/** Molds that were worked out last on one bench, by type, with what was asked: a type whose ask is the same is not built anew. */
export type KnownMolds = Map<MoldKey, { key: string; mold: Outcome<Mold> }>;

/** Every type with settings, in the order of the list. Error: STOPPED. */
export function moldsWish(
  { bench, known }: { bench: MoldBench; known: KnownMolds },
  { settings, ...rest }: MoldsAsk,
  help: Help,
): Outcome<MoldOfType[]> {
  const asked = MOLD_TYPES.map(({ key }) => key).filter((key) => settings[key] !== undefined);
  const molds: MoldOfType[] = [];
  for (const [n, type] of asked.entries()) {
    if (help.shouldStop?.() === true) return bad('STOPPED');
    const ask = { ...rest, type, settings: settings[type]! };
    const key = JSON.stringify(ask);
    const watched = watchedBench(bench, help, (share) => (n + share) / asked.length);
    const held = known.get(type);
    const mold = held?.key === key ? held.mold : told(planMold(watched, ask));
    if (!mold.ok && mold.problem.code === 'STOPPED') return mold;
    known.set(type, { key, mold });
    molds.push({ type, mold });
    help.onProgress?.((n + 1) / asked.length);
  }
  return good(molds);
}

/** The facets are large and of no use to a page. */
const told = (mold: Outcome<Mold>): Outcome<Mold> =>
  mold.ok ? good({ ...mold.value, sculpt: { ...mold.value.sculpt, chain: undefined } }) : mold;
