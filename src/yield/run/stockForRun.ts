import type { MassRatio } from '../foam';

export type FoamPart = 'a' | 'b';

/** A lot on the shelf; what is left out was not counted. */
export interface FoamStock {
  aKg?: number;
  bKg?: number;
}

export interface PartCover {
  part: FoamPart;
  perCastingG: number;
  needKg: number;
  /** Left out where no lot counts this part. */
  haveKg?: number;
  /** Whole castings of the run that the stock makes, the cup of each day taken off first. */
  castings?: number;
  shortKg?: number;
}

export interface StockForRun {
  a: PartCover;
  b: PartCover;
  /** Castings that both parts make together; left out where a part was not counted. */
  castings?: number;
  /** Parts that run out within the run, the scarcer one first, and after which casting. */
  runsOut: { part: FoamPart; afterCasting: number }[];
  uncounted: FoamPart[];
}

/** What the stock allows, part by part: A without its B makes no foam. Cups and castings split by the same ratio. */
export function stockForRun({
  castings,
  perCasting,
  castingsADay,
  cupG,
  cups,
  ratio,
  stock,
}: {
  /** Spares included. */
  castings: number;
  perCasting: { partAG: number; partBG: number };
  /** A cup is made before the first of them; all on one day when left out. */
  castingsADay?: number | undefined;
  cupG: number;
  cups: number;
  ratio: MassRatio;
  stock: readonly FoamStock[];
}): StockForRun {
  const shareA = ratio.a / (ratio.a + ratio.b);
  const cover = (part: FoamPart): PartCover => {
    const perCastingG = part === 'a' ? perCasting.partAG : perCasting.partBG;
    const perCupG = cupG * (part === 'a' ? shareA : 1 - shareA);
    const needG = castings * perCastingG + cups * perCupG;
    const counted = stock.map((lot) => (part === 'a' ? lot.aKg : lot.bKg)).filter((kg) => kg !== undefined);
    const known = { part, perCastingG, needKg: needG / 1000 };
    if (counted.length === 0) return known;
    const haveKg = counted.reduce((sum, kg) => sum + kg, 0);
    const usedG = (made: number): number =>
      made * perCastingG +
      Math.min(cups, Math.max(1, Math.ceil(made / (castingsADay ?? Infinity)))) * perCupG;
    let made = 0;
    while (made < castings && usedG(made + 1) <= 1000 * haveKg * (1 + WHOLE_ENOUGH)) made += 1;
    return {
      ...known,
      haveKg,
      castings: made,
      shortKg: Math.max(0, needG / 1000 - haveKg),
    };
  };
  const parts = [cover('a'), cover('b')] as [PartCover, PartCover];
  const runsOut = parts
    .filter((part) => part.castings !== undefined && part.castings < castings)
    .sort((one, other) => reach(one) - reach(other))
    .map(({ part, castings: afterCasting }) => ({ part, afterCasting: afterCasting! }));
  const uncounted = parts.filter(({ haveKg }) => haveKg === undefined).map(({ part }) => part);
  return {
    a: parts[0],
    b: parts[1],
    ...(uncounted.length > 0 ? {} : { castings: Math.min(...parts.map((part) => part.castings!)) }),
    runsOut,
    uncounted,
  };
}

/** 1 kg is five castings of 200 g, though not in binary. */
const WHOLE_ENOUGH = 1e-12;

/** Castings with their fraction: of two parts that end in the same casting, which ends sooner. */
const reach = ({ haveKg = 0, perCastingG }: PartCover): number => haveKg / perCastingG;
