import { isRecord } from '../../job/json';
import type { Piece, SavedCasting } from '../../job/piece';
import { newId } from '../../store/newId';
import { withoutFill } from './withoutFill';

/** The next casting: all that was said of the one it is begun from, but what is only true of that day, at its bench and on its scale. */
export function nextCasting(piece: Piece, from: string): Piece {
  const model = piece.castings[from];
  if (model === undefined) throw new Error(`nextCasting: expected a casting of ${piece.id}, got ${from}`);
  const id = newId();
  const no = 1 + Math.max(...Object.values(piece.castings).map((casting) => casting.no));
  const casting: SavedCasting = { ...withoutDay(model), no, after: from };
  return {
    ...piece,
    castings: { ...piece.castings, [id]: casting },
    hand: { mold: model.mold, casting: id },
  };
}

/** Another mold of the same sculpt, begun with what was said of the one in hand, and a first casting in it. */
export function nextMold(piece: Piece): Piece {
  const mold = newId();
  const no = 1 + Math.max(...Object.values(piece.molds).map((one) => one.no));
  const molds = { ...piece.molds, [mold]: { ...withoutFill(piece.molds[piece.hand.mold]!), no } };
  const next = nextCasting({ ...piece, molds }, piece.hand.casting);
  return {
    ...next,
    castings: {
      ...next.castings,
      [next.hand.casting]: { ...next.castings[next.hand.casting]!, mold },
    },
    hand: { mold, casting: next.hand.casting },
  };
}

/** Boxes that were filled on the day of a pour: temperatures, what is in the cup. Asked anew each time. */
const OF_DAY: readonly string[] = ['pourRoom', 'ingredients', 'moldTemp', 'bInCup'];

/** What a casting keeps beside what was said of it: figures that were seen, presses and ticks of its bench, its weights. */
const NOT_SAID: readonly string[] = ['seen', 'bench', 'weigh'];

function withoutDay(casting: SavedCasting): SavedCasting {
  const { fields, choices, ...more } = casting;
  const rest = Object.fromEntries(Object.entries(more).filter(([key]) => !NOT_SAID.includes(key))) as Pick<
    SavedCasting,
    'no' | 'mold' | 'after'
  >;
  const { pouring, foam, ...others } = choices;
  return {
    ...rest,
    fields: Object.fromEntries(Object.entries(fields).filter(([name]) => !OF_DAY.includes(name))),
    choices: {
      ...others,
      ...(foam === undefined ? {} : { foam: withoutCup(foam) }),
      ...(pouring === undefined ? {} : { pouring: withoutFacts(pouring) }),
    },
  };
}

type Choice = SavedCasting['choices'][string];

/** What was looked at before that pour has to be looked at before this one; and it is not ready. */
function withoutFacts(pouring: Choice): Choice {
  if (!isRecord(pouring)) return pouring;
  const { facts: _facts, readyFor: _readyFor, ...rest } = pouring as Record<string, Choice>;
  return rest;
}

/** The cup was of that day: its density stays, and is no longer one of today. */
const withoutCup = (foam: Choice): Choice =>
  isRecord(foam) && foam.from === 'cup-test' ? { ...(foam as Record<string, Choice>), from: 'given' } : foam;
