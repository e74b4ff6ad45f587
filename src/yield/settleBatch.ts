import type { Assumption, Source } from '../estimate';
import { good } from '../problem';
import type { Outcome } from '../problem';
import type { BatchUncertainties } from './batchBudget';
import { checkBatchInputs, standardU } from './batchInputs';
import type { BatchInputs, Given, GivenFreeRise } from './batchInputs';
import { massRatio, mixedLiquidKgM3 } from './foam';
import type { MassRatio } from './foam';
import { gasLossFromDensity } from './gas';
import type { MixedMassInputs } from './mixedMass';
import { RULES } from './rules';
import type { Rule } from './rules';

/** Something nobody told us. `basis` says where the figure comes from. */
export interface BatchAssumption extends Assumption {
  value: number;
  from: 'assumed';
  basis: string;
}

/** A batch with every figure in place except the pack. */
export interface SettledBatch {
  mass: Omit<MixedMassInputs, 'packFactor'>;
  u: BatchUncertainties;
  ratio: MassRatio;
  liquidKgM3: number;
  leastPack: number;
  stepG: number;
  cupTested: boolean;
  assumptions: BatchAssumption[];
}

/** Checks what was given and fills in the rest from the rules, each filling noted as an assumption. */
export function settleBatch(inputs: BatchInputs): Outcome<SettledBatch> {
  const checked = checkBatchInputs(inputs);
  if (!checked.ok) return checked;
  const ratio = massRatio(inputs.ratio, inputs.partDensities);
  if (!ratio.ok) return ratio;
  const assumptions: BatchAssumption[] = [];
  const note = noteIn(assumptions);
  const freeRiseKgM3 = inputs.freeRiseKgM3.value;
  const liquidKgM3 = settleLiquid(inputs, ratio.value, note);
  const mass = {
    cavityCm3: inputs.cavityCm3.value,
    riserCm3: inputs.riserCm3?.value ?? note('riser_cm3', RULES.riser),
    freeRiseKgM3,
    ventsG: inputs.ventsG?.value ?? note('vents_g', RULES.vents),
    gasLossShare:
      inputs.gasLossShare?.value ??
      note('gas_loss', {
        value: gasLossFromDensity({ freeRiseKgM3, liquidKgM3 }),
        unit: '',
        from: 'carbon dioxide needed for this density, ideal gas at 350 K',
      }),
    residueG: inputs.residueG?.value ?? note('residue_g', RULES.residue),
  };
  const stepG = inputs.scaleStepG?.value ?? note('scale_step_g', RULES.scaleStep);
  const leastPack = settleLeastPack(inputs, note);
  const u = settleUncertainties({ inputs, mass, stepG, note });
  const cupTested = isOfToday(inputs.freeRiseKgM3);
  return good({ mass, u, ratio: ratio.value, liquidKgM3, leastPack, stepG, cupTested, assumptions });
}

const isOfToday = ({ from, isOld }: GivenFreeRise): boolean => from === 'cup-test' && isOld !== true;

export type Note = (name: string, rule: Rule) => number;

/** Adds to the list of assumptions and hands back the value, so that a default cannot be used without being listed. */
export const noteIn =
  (assumptions: BatchAssumption[]): Note =>
  (name, { value, unit, from }) => {
    assumptions.push({ name, value, unit, from: 'assumed', basis: from });
    return value;
  };

function settleLiquid(inputs: BatchInputs, ratio: MassRatio, note: Note): number {
  if (inputs.liquidKgM3 !== undefined) return inputs.liquidKgM3.value;
  if (inputs.partDensities !== undefined) return mixedLiquidKgM3(ratio, inputs.partDensities);
  return note('liquid_density_kg_m3', RULES.liquidDensity);
}

/** A minimum fill lighter than the free rise is impossible in a mold, so the least pack is never below 1. */
function settleLeastPack(inputs: BatchInputs, note: Note): number {
  const freeRiseKgM3 = inputs.freeRiseKgM3.value;
  const minFillKgM3 =
    inputs.minFillKgM3?.value ??
    note('min_fill_kg_m3', {
      value: freeRiseKgM3,
      unit: 'kg/m3',
      from: 'taken as the free rise, for want of a short pour; skin and flow losses make the real one higher',
    });
  return Math.max(1, minFillKgM3 / freeRiseKgM3);
}

function settleUncertainties({
  inputs,
  mass,
  stepG,
  note,
}: {
  inputs: BatchInputs;
  mass: SettledBatch['mass'];
  stepG: number;
  note: Note;
}): BatchUncertainties {
  const { freeRiseKgM3: freeRise } = inputs;
  const cupTested = isOfToday(freeRise);
  const knownFreeRiseU = standardU(freeRise);
  return {
    freeRiseShare:
      knownFreeRiseU !== undefined
        ? knownFreeRiseU / freeRise.value
        : note('u_free_rise', cupTested ? RULES.uFreeRiseCup : RULES.uFreeRiseLabel),
    cavityCm3: cavityU(inputs, note),
    // A cup test of the day has risen under the pressure of the day: counting it again would count it twice.
    stationPressureShare: cupTested
      ? 0
      : (inputs.uStationPressureShare?.value ?? note('u_station_pressure', RULES.uStationPressure)),
    riserCm3: orNoted(inputs.riserCm3, () =>
      mass.riserCm3 === 0 ? 0 : mass.riserCm3 * note('u_riser', RULES.uRiser),
    ),
    residueG: orNoted(inputs.residueG, () => note('u_residue_g', RULES.uResidue)),
    gasLossShare: orNoted(inputs.gasLossShare, () => note('u_gas_loss', RULES.uGasLoss)),
    ventsG: orNoted(inputs.ventsG, () => note('u_vents_g', RULES.uVents)),
    scaleStepG: stepG,
  };
}

const orNoted = (given: Given | undefined, otherwise: () => number): number =>
  (given === undefined ? undefined : standardU(given)) ?? otherwise();

/** Ways to a volume that describe the sculpt or the file, not the mold the foam will fill. */
const NOT_THE_MOLD: readonly Source[] = ['scanned', 'file', 'taped', 'assumed'];

/** What the range leaves open and what lies between scan and mold, in quadrature; the latter alone if there is no range. */
function cavityU({ cavityCm3, uScanToMoldShare }: BatchInputs, note: Note): number {
  const ownCm3 = standardU(cavityCm3);
  const needsMold = ownCm3 === undefined || NOT_THE_MOLD.includes(cavityCm3.from);
  const share = uScanToMoldShare?.value ?? (needsMold ? note('u_scan_to_mold', RULES.uScanToMold) : 0);
  return Math.hypot(ownCm3 ?? 0, share * cavityCm3.value);
}
