import { good } from '../../problem';
import type { Outcome } from '../../problem';
import type { BatchTerm, BatchUncertainties } from '../batchBudget';
import type { BatchInputs } from '../batchInputs';
import { choosePack, sigmasAt } from '../choosePack';
import { mixedMassG } from '../mixedMass';
import type { MixedMassInputs } from '../mixedMass';
import { settleBatch } from '../settleBatch';
import type { SettledBatch } from '../settleBatch';
import { packForChance } from '../shortFill';
import { checkInput } from '../checkInput';
import { POUR_RULES as R } from './rules';

export type Measurement =
  | 'cup-test'
  | 'water-fill'
  | 'barometer'
  | 'measure-riser'
  | 'weigh-cup'
  | 'weigh-lost-gas'
  | 'weigh-vent-trim'
  | 'finer-scale';

/** What one measurement would do to the doubt of the mixed mass. */
export interface MeasurementGain {
  measurement: Measurement;
  /** The row of the budget it makes smaller. */
  term: BatchTerm;
  /** One standard uncertainty of the mixed mass afterwards. */
  uG: number;
  /** What is left of the doubt: 0.46 is "would halve it". */
  leftShare: number;
  /** The pack that keeps the wanted chance of a short fill afterwards; left out where none within bounds does. */
  packFactor?: number;
}

export interface BestMeasurement {
  /** As it is now. */
  uG: number;
  packFactor?: number;
  /** The one that leaves least first; those that gain nothing are left out. */
  gains: MeasurementGain[];
}

/**
 * The one measurement that would buy most: each is tried in the budget of the batch (JCGM 100), never for a wider one. A cup test
 * of the day also takes away the doubt of the air pressure and the floor of 5 % that stands without it. With a wanted `chance`
 * of a short fill, the pack that keeps it, now and after each. Errors: those of the batch.
 */
export function bestMeasurement(inputs: BatchInputs, chance?: number): Outcome<BestMeasurement> {
  if (chance !== undefined) {
    const sound = checkInput(chance, 'shortFillChance');
    if (!sound.ok) return sound;
  }
  const settled = settleBatch(inputs);
  if (!settled.ok) return settled;
  const pack = choosePack(inputs, settled.value);
  if (!pack.ok) return pack;
  const mass: MixedMassInputs = { ...settled.value.mass, packFactor: pack.value.packFactor };
  const now = doubtOf(mass, settled.value, chance);
  const gains = MEASUREMENTS.map(({ measurement, term, measured }): MeasurementGain => {
    const after = doubtOf(mass, { ...settled.value, ...measured(settled.value, mass) }, chance);
    return { measurement, term, ...after, leftShare: now.uG > 0 ? after.uG / now.uG : 1 };
  });
  const useful = gains.filter(({ leftShare }) => leftShare < 1 - LAST_DIGITS);
  return good({ ...now, gains: useful.sort((one, other) => one.leftShare - other.leftShare) });
}

const LAST_DIGITS = 1e-12;

interface Doubt {
  uG: number;
  packFactor?: number;
}

function doubtOf(mass: MixedMassInputs, settled: SettledBatch, chance: number | undefined): Doubt {
  const uG = sigmasAt(mass, settled).sigmaShare * mixedMassG(mass);
  if (chance === undefined) return { uG };
  const sigmaShareAt = (packFactor: number): number =>
    sigmasAt({ ...mass, packFactor }, settled).packSigmaShare;
  const found = packForChance({ chance, leastPack: settled.leastPack, sigmaShareAt });
  return found.ok ? { uG, packFactor: found.value } : { uG };
}

interface MeasurementRow {
  measurement: Measurement;
  term: BatchTerm;
  measured: (settled: SettledBatch, mass: MixedMassInputs) => Partial<SettledBatch>;
}

/** A row that sets one doubt to what the measurement leaves, unless it is smaller already. */
const row = (
  measurement: Measurement,
  term: BatchTerm,
  after: (mass: MixedMassInputs) => Partial<BatchUncertainties>,
): MeasurementRow => ({
  measurement,
  term,
  measured: ({ u }, mass) => ({ u: smaller(u, after(mass)) }),
});

const MEASUREMENTS: readonly MeasurementRow[] = [
  {
    measurement: 'cup-test',
    term: 'free_rise',
    measured: ({ u }) => ({
      u: smaller(u, { freeRiseShare: R.uCupTest.value, stationPressureShare: 0 }),
      cupTested: true,
    }),
  },
  row('water-fill', 'cavity', ({ cavityCm3 }) => ({ cavityCm3: R.uWaterFill.value * cavityCm3 })),
  row('barometer', 'station_pressure', () => ({ stationPressureShare: R.uBarometerShare.value })),
  row('measure-riser', 'riser', ({ riserCm3 }) => ({ riserCm3: R.uRiserMeasured.value * riserCm3 })),
  row('weigh-cup', 'residue', () => ({ residueG: R.uWeighedBack.value })),
  row('weigh-lost-gas', 'gas_loss', () => ({ gasLossShare: R.uGasMeasured.value })),
  row('weigh-vent-trim', 'vents', () => ({ ventsG: R.uWeighedBack.value })),
  row('finer-scale', 'scale', () => ({ scaleStepG: R.fineStep.value })),
];

function smaller(u: BatchUncertainties, after: Partial<BatchUncertainties>): BatchUncertainties {
  const entries = Object.entries(u) as [keyof BatchUncertainties, number][];
  const least = entries.map(([name, value]) => [name, Math.min(value, after[name] ?? value)]);
  return Object.fromEntries(least) as BatchUncertainties;
}
