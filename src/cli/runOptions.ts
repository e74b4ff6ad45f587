import type { Shop } from '../job/shop';
import { bad, good, type Outcome } from '../problem';
import type { FoamCard, MassRatio, RunInputs } from '../yield';
import type { OptionSpec, OptionValues } from './command';
import { defined, readFigures, type Figure } from './moldFigures';
import { POUR_CALL_OPTIONS } from './pourCall';
import { readPourFigures, type PourFigure } from './pourFigures';
import { foamPrice, kitOption, STOCK_EXAMPLE, stockOption } from './runFoam';

const OWN_OPTIONS: readonly OptionSpec[] = [
  { flags: '--castings <count>', about: 'castings that are wanted' },
  { flags: '--molds <count>', about: 'molds there are of the piece' },
  {
    flags: '--mixed <mass>',
    about: 'A and B together for one casting (bare number: g), instead of what is poured for',
  },
  {
    flags: '--stock <amounts>',
    about: `what is left of the foam, instead of the shop's, as "${STOCK_EXAMPLE}"; once for each lot`,
    repeat: true,
  },
  {
    flags: '--kit <mass>',
    about: "size the foam is sold in, A and B together (bare number: kg), instead of the card's",
    repeat: true,
  },
  { flags: '--spares <share>', about: 'castings more, for those that fail (assumed 10 %)' },
  { flags: '--cup-test <mass>', about: 'foam of the cup test of each day (bare number: g; assumed 60)' },
  { flags: '--turnaround <time>', about: 'time of a round beside the wait (bare number: min; assumed 45)' },
  { flags: '--work-day <time>', about: 'length of a day (bare number: min; assumed 8 h)' },
  { flags: '--mold-life <count>', about: 'castings that a mold lasts for' },
  { flags: '--mold-used <count>', about: 'castings that each mold has done' },
  { flags: '--other-cost <price>', about: 'what a casting costs beside its foam, in your own money' },
];

export const RUN_OPTIONS: readonly OptionSpec[] = [...OWN_OPTIONS, ...POUR_CALL_OPTIONS];

const COUNTS: readonly PourFigure<'castings' | 'molds' | 'moldLife' | 'moldUsed' | 'otherPerCasting'>[] = [
  { key: 'castings', option: 'castings', unit: 'count' },
  { key: 'molds', option: 'molds', unit: 'count' },
  { key: 'moldLife', option: 'moldLife', unit: 'count' },
  { key: 'moldUsed', option: 'moldUsed', unit: 'count', allowZero: true },
  { key: 'otherPerCasting', option: 'otherCost', unit: 'money', allowZero: true },
];

const FIGURES: readonly Figure<'spareShare' | 'cupG' | 'turnaroundMin' | 'dayMin'>[] = [
  { key: 'spareShare', option: 'spares', kind: 'share', allowZero: true },
  { key: 'cupG', option: 'cupTest', kind: 'mass', bareUnit: 'g', allowZero: true },
  { key: 'turnaroundMin', option: 'turnaround', kind: 'minutes', allowZero: true },
  { key: 'dayMin', option: 'workDay', kind: 'minutes' },
];

export type RunWish = Omit<RunInputs, 'batch' | 'ratio' | 'openMin'>;

/** What the call and the shop say of the run, beside the casting itself. Errors: BAD_CALL. */
export function runOptions(
  options: OptionValues,
  foam: { card: FoamCard | undefined; shop: Shop | undefined; ratio: MassRatio },
): Outcome<RunWish> {
  const counts = readPourFigures(options, COUNTS);
  if (!counts.ok) return counts;
  const { castings, molds, ...more } = counts.value;
  if (castings === undefined || molds === undefined)
    return bad('BAD_CALL', {
      text: `The number of ${castings === undefined ? 'castings' : 'molds'} is missing.`,
      hint: 'Give --castings 10 and --molds 2.',
    });
  const figures = readFigures(options, FIGURES);
  if (!figures.ok) return figures;
  const stock = stockOption(options, foam);
  if (!stock.ok) return stock;
  const kits = kitOption(options, foam.card);
  if (!kits.ok) return kits;
  const price = foamPrice(options, foam);
  if (!price.ok) return price;
  const told = defined({ ...more, ...figures.value, foamPerKg: price.value });
  return good({ castings, molds, stock: stock.value, kits: kits.value, ...told });
}
