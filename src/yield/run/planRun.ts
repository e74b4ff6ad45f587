import { bad, good } from '../../problem';
import type { Outcome } from '../../problem';
import type { MassRatio } from '../foam';
import type { BatchAssumption } from '../settleBatch';
import { noteIn } from '../settleBatch';
import { cheapestKits } from '../silicone';
import type { KitPurchase, SiliconeKit } from '../silicone';
import { checkRun } from './checkRun';
import { RUN_RULES as R } from './rules';
import { stockForRun } from './stockForRun';
import type { FoamStock, StockForRun } from './stockForRun';

export interface RunInputs {
  castings: number;
  molds: number;
  /** What is weighed for one casting, as the batch says. */
  batch: { partAG: number; partBG: number };
  ratio: MassRatio;
  stock: readonly FoamStock[];
  /** A and B together, with the price where it is known. None: nothing can be said about buying. */
  kits?: readonly SiliconeKit[];
  /** Castings more, for those that fail; a tenth, rounded up, when left out. */
  spareShare?: number;
  /** Of one cup test; one is made each day. */
  cupG?: number;
  /** From pour to open mold. Without it neither cycles a day nor days are told. */
  openMin?: number;
  turnaroundMin?: number;
  dayMin?: number;
  /** Castings a mold lasts for, and that each has done. */
  moldLife?: number;
  moldUsed?: number;
  /** In the shop's own money. */
  foamPerKg?: number;
  otherPerCasting?: number;
}

export interface RunPlan {
  castings: number;
  spares: number;
  /** Rounds in which every mold is poured once. */
  cycles: number;
  cyclesADay?: number;
  days?: number;
  cups: number;
  materialKg: number;
  stock: StockForRun;
  /** Mixed mass to buy, so that neither part runs out. */
  buyKg?: number;
  buy?: KitPurchase;
  /** For a casting that is kept, spares and cups included. */
  costPerCasting?: number;
  moldLife?: { castingsEach: number; leftEach: number; lasts: boolean; moldsNeeded: number };
  assumptions: BatchAssumption[];
}

/**
 * A run of castings on a few molds: what it takes, how far the stock goes part by part, what to buy, how many days, what one costs. A
 * fact that is missing leaves its answer out; what was assumed is listed. Errors: INPUT_NOT_A_NUMBER, INPUT_OUT_OF_BOUNDS,
 * INPUT_NOT_WHOLE, RATIO_NOT_POSITIVE, those of the kits.
 */
export function planRun(inputs: RunInputs): Outcome<RunPlan> {
  const sound = checkInputs(inputs);
  if (!sound.ok) return sound;
  const assumptions: BatchAssumption[] = [];
  const note = noteIn(assumptions);
  const { castings, molds, batch, ratio } = inputs;
  const spares = Math.ceil(castings * (inputs.spareShare ?? note('spare_castings', R.spareShare)) - 1e-9);
  const poured = castings + spares;
  const cycles = Math.ceil(poured / molds);
  const time = timeOf(inputs, cycles, note);
  const cups = time.days ?? 1;
  const cupG = inputs.cupG ?? note('cup_test_g', R.cupG);
  const stock = stockForRun({
    castings: poured,
    perCasting: batch,
    castingsADay: time.cyclesADay === undefined ? undefined : time.cyclesADay * molds,
    cupG,
    cups,
    ratio,
    stock: inputs.stock,
  });
  const buying = buyingOf(stock, inputs);
  if (!buying.ok) return buying;
  const materialKg = stock.a.needKg + stock.b.needKg;
  return good({
    castings,
    spares,
    cycles,
    ...time,
    cups,
    materialKg,
    stock,
    ...buying.value,
    ...costOf(inputs, materialKg, poured),
    ...moldLifeOf(inputs, poured),
    assumptions,
  });
}

function timeOf(
  { openMin, turnaroundMin, dayMin }: RunInputs,
  cycles: number,
  note: ReturnType<typeof noteIn>,
): Pick<RunPlan, 'cyclesADay' | 'days'> {
  if (openMin === undefined) return {};
  const cycleMin = openMin + (turnaroundMin ?? note('turnaround_min', R.turnaroundMin));
  // A round longer than the day is left overnight: one a day.
  const cyclesADay = Math.max(1, Math.floor((dayMin ?? note('work_day_min', R.dayMin)) / cycleMin));
  return { cyclesADay, days: Math.ceil(cycles / cyclesADay) };
}

/** Kits hold A and B by the ratio, so the part that is shorter of its share says how much. */
function buyingOf(
  { a, b, uncounted }: StockForRun,
  { ratio, kits = [] }: RunInputs,
): Outcome<Pick<RunPlan, 'buyKg' | 'buy'>> {
  if (uncounted.length > 0) return good({});
  const sum = ratio.a + ratio.b;
  const buyKg = Math.max((a.shortKg! * sum) / ratio.a, (b.shortKg! * sum) / ratio.b);
  if (buyKg === 0 || kits.length === 0) return good({ buyKg });
  const buy = cheapestKits(kits, buyKg);
  return buy.ok ? good({ buyKg, buy: buy.value }) : buy;
}

function costOf(
  { castings, foamPerKg, otherPerCasting = 0 }: RunInputs,
  materialKg: number,
  poured: number,
): Pick<RunPlan, 'costPerCasting'> {
  if (foamPerKg === undefined) return {};
  return { costPerCasting: (foamPerKg * materialKg + otherPerCasting * poured) / castings };
}

function moldLifeOf({ molds, moldLife, moldUsed = 0 }: RunInputs, poured: number): Pick<RunPlan, 'moldLife'> {
  if (moldLife === undefined) return {};
  const castingsEach = Math.ceil(poured / molds);
  const leftEach = Math.max(0, moldLife - moldUsed);
  const beyond = Math.max(0, poured - molds * leftEach);
  const moldsNeeded = molds + Math.ceil(beyond / moldLife);
  return { moldLife: { castingsEach, leftEach, lasts: castingsEach <= leftEach, moldsNeeded } };
}

function checkInputs(inputs: RunInputs): Outcome<true> {
  const { castings, molds, batch, ratio, stock, ...more } = inputs;
  const { spareShare, cupG: cupTestG, openMin, turnaroundMin, dayMin } = more;
  const { moldLife, moldUsed, foamPerKg, otherPerCasting } = more;
  const checked = checkRun(
    { castings, molds, partAG: batch.partAG, partBG: batch.partBG },
    {
      spareShare,
      cupTestG,
      openMin,
      turnaroundMin,
      dayMin,
      moldLife,
      moldUsed,
      foamPerKg,
      otherPerCasting,
    },
  );
  if (!checked.ok) return checked;
  if (!(ratio.a > 0 && ratio.b > 0 && Number.isFinite(ratio.a + ratio.b)))
    return bad('RATIO_NOT_POSITIVE', { a: String(ratio.a), b: String(ratio.b), by: 'mass' });
  for (const stockKg of stock.flatMap(({ aKg, bKg }) => [aKg, bKg])) {
    const counted = checkRun({}, { foamStockKg: stockKg });
    if (!counted.ok) return counted;
  }
  return good(true);
}
