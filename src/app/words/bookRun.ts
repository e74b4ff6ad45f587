import type { RunField } from '../book/runFields';
import type { RunFacts } from '../book/runAsk';
import { amount, counted, percent } from '../../words/sentence';
import { RUN_RULES, type RunPlan } from '../../yield';

/** "Can we make 10 more?" */
export const runAskWords = (castings: number | undefined): string =>
  castings === undefined ? 'Can we make more of them?' : `Can we make ${amount(castings, 9)} more?`;

/** "No: 5 of 11", "Yes, all 11", or what is not known. */
export function runAnswer({ castings, spares, stock }: RunPlan): string {
  const all = castings + spares;
  if (stock.castings === undefined) return 'Not known: the stock is not counted';
  return stock.castings >= all
    ? `Yes, all ${amount(all, 9)}`
    : `No: ${amount(stock.castings, 9)} of ${amount(all, 9)}`;
}

export const daysWords = ({ days, cycles, cyclesADay, cups }: RunPlan): string =>
  days === undefined || cyclesADay === undefined
    ? `${counted(cycles, 'round')}; how many fit into a day hangs on the time to opening`
    : `${counted(days, 'day')}: ${counted(cycles, 'round')}, ${amount(cyclesADay)} a day at most, ${counted(cups, 'cup test')}`;

export const RUN_LABELS: Readonly<Record<RunField, string>> = {
  castings: 'Castings that are wanted',
  molds: 'Molds there are',
  mixedG: 'A and B together for one casting',
  spareShare: 'Castings more, for those that fail',
  cupG: 'Foam of the cup test of each day',
  openMin: 'May be opened after',
  turnaroundMin: 'A round beside that wait',
  dayH: 'Length of a day',
  moldLife: 'Castings that a mold lasts for',
  moldUsed: 'Castings that each mold has done',
  foamPerKg: 'Foam costs, A and B together',
  otherPerCasting: 'A casting costs beside its foam',
};

interface Assumed {
  text: string;
  shown: string;
  basis: string;
}

/** What is taken while a box is blank, with where it comes from; nothing where nobody knows. */
export function runAssumed(facts: RunFacts): Partial<Record<RunField, Assumed>> {
  const { plan, molds, openMin, foamPerKg, card } = facts;
  const { spareShare, cupG, turnaroundMin, dayMin } = RUN_RULES;
  const hours = amount(dayMin.value / 60);
  return {
    molds: { text: String(molds), shown: counted(molds, 'mold'), basis: 'on the ticket of the piece.' },
    ...(plan === undefined
      ? {}
      : {
          mixedG: {
            text: amount(plan.totalG, 9).replaceAll('\u202f', ''),
            shown: `${amount(plan.totalG, 6)} g`,
            basis: `the plan of ${plan.of} as it stands, pack ${plan.packFactor.toFixed(2)}.`,
          },
        }),
    spareShare: {
      text: String(100 * spareShare.value),
      shown: percent(spareShare.value),
      basis: spareShare.from,
    },
    cupG: { text: String(cupG.value), shown: `${cupG.value} g`, basis: cupG.from },
    ...(openMin === undefined
      ? {}
      : {
          openMin: {
            text: String(openMin),
            shown: `${amount(openMin)} min`,
            basis: `the card of ${card.name}.`,
          },
        }),
    turnaroundMin: {
      text: String(turnaroundMin.value),
      shown: `${turnaroundMin.value} min`,
      basis: turnaroundMin.from,
    },
    dayH: { text: hours, shown: `${hours} h`, basis: dayMin.from },
    ...(foamPerKg === undefined
      ? {}
      : {
          foamPerKg: {
            text: foamPerKg.toFixed(2),
            shown: foamPerKg.toFixed(2),
            basis: `the prices on the card of ${card.name}.`,
          },
        }),
  };
}
