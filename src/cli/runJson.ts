import type { PartCover, RunPlan } from '../yield';
import type { Run } from './runCall';

type Json = Record<string, unknown>;

/** A run as scripts know it: material, rounds and what to buy first. A key that is not computed is absent. */
export function runResult(run: Run): Json {
  const { plan, casting } = run;
  const { partAG, partBG } = casting;
  const { stock } = plan;
  return {
    material_g: grams(plan.materialKg),
    cycles: cyclesOf(run),
    ...buyKeys(plan),
    castings: plan.castings,
    spares: plan.spares,
    part_a_g: partAG,
    part_b_g: partBG,
    cups: plan.cups,
    ...(plan.cyclesADay === undefined ? {} : { cycles_a_day: plan.cyclesADay, days: plan.days }),
    stock: { a: partJson(stock.a), b: partJson(stock.b) },
    ...(stock.castings === undefined ? {} : { stock_castings: stock.castings }),
    runs_out: stock.runsOut.map(({ part, afterCasting }) => ({
      part: part.toUpperCase(),
      after_casting: afterCasting,
    })),
    not_counted: stock.uncounted.map((part) => part.toUpperCase()),
    ...(plan.costPerCasting === undefined ? {} : { cost_per_casting: plan.costPerCasting }),
    ...(plan.moldLife === undefined ? {} : { mold_life: moldLifeJson(plan.moldLife) }),
  };
}

/** 3.4 kg are 3 400 g, without the dust of binary fractions. */
const grams = (massKg: number): number => Number((1000 * massKg).toPrecision(12));

/** Round by round: which castings, and on which day where that is known. */
function cyclesOf({ plan, molds, casting: { partAG, partBG } }: Run): Json[] {
  const { castings, spares, cycles, cyclesADay } = plan;
  return Array.from({ length: cycles }, (_, n) => {
    const first = n * molds + 1;
    const last = Math.min(first + molds - 1, castings + spares);
    const count = last - first + 1;
    return {
      cycle: n + 1,
      ...(cyclesADay === undefined ? {} : { day: Math.floor(n / cyclesADay) + 1 }),
      first_casting: first,
      last_casting: last,
      part_a_g: Number((count * partAG).toPrecision(12)),
      part_b_g: Number((count * partBG).toPrecision(12)),
    };
  });
}

function buyKeys({ buyKg, buy }: RunPlan): Json {
  if (buyKg === undefined) return {};
  if (buyKg === 0) return { buy: [], buy_g: 0 };
  if (buy === undefined) return { buy_g: grams(buyKg) };
  return {
    buy: buy.kits.map(({ massKg, count, price }) => ({
      kit_g: grams(massKg),
      count,
      ...(price === undefined ? {} : { price }),
    })),
    buy_g: grams(buyKg),
    bought_g: grams(buy.totalKg),
    left_over_g: grams(buy.surplusKg),
    ...(buy.price === undefined ? {} : { buy_price: buy.price }),
  };
}

const partJson = ({ needKg, haveKg, castings, shortKg }: PartCover): Json => ({
  need_g: grams(needKg),
  ...(haveKg === undefined ? {} : { have_g: grams(haveKg) }),
  ...(castings === undefined ? {} : { castings }),
  ...(shortKg === undefined ? {} : { short_g: grams(shortKg) }),
});

const moldLifeJson = ({
  castingsEach,
  leftEach,
  lasts,
  moldsNeeded,
}: NonNullable<RunPlan['moldLife']>): Json => ({
  castings_each: castingsEach,
  left_each: leftEach,
  lasts,
  molds_needed: moldsNeeded,
});
