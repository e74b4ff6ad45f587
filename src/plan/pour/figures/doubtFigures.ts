import { RULES, type Batch } from '../../../yield';
import { ENDS_Z } from '../justFills';
import type { PourAsk } from '../pourAsk';
import type { PreparedPour } from '../preparePour';
import { massInputs, MIXED, packInput, riseInput } from './batchFigures';
import { HERE, input, saidOr, type OpenedFigure, type OpenedInput } from './openedFigure';

const GUM = 'independent doubts added up as squares, JCGM 100:2008, 5.1.2';

/** How sure the grams are, what just fills, and the chance that they do not. */
export function doubtFigures(ready: PreparedPour, ask: PourAsk): OpenedFigure[] {
  const { batch } = ready;
  return [
    ...sigmaFigures(batch, ask),
    {
      key: 'least_pack',
      title: 'Least pack that fills',
      value: batch.leastPack,
      unit: '',
      formula: 'minimum fill / free rise, never under 1',
      inputs: [
        ...input(
          'minimum fill',
          ask.pour.minFillKgM3?.value ?? batch.inputs.freeRiseKgM3,
          'kg/m3',
          saidOr(ask.pour.minFillKgM3, batch.assumptions, 'min_fill_kg_m3'),
        ),
        ...riseInput(ready, ask),
      ],
      source: 'definition of the packing factor',
    },
    {
      key: 'short_fill_chance',
      title: 'Chance of a short fill',
      value: batch.shortFillChance,
      unit: '',
      shown: 'chance',
      formula: 'Phi(-ln(pack / least pack) / doubt of the pack)',
      inputs: [
        ...packInput(batch),
        ...input('least pack', batch.leastPack, '', HERE),
        ...input('doubt of the pack', batch.packSigmaShare, '', HERE, 'share'),
      ],
      source: 'log-normal doubt; budget by JCGM 100:2008',
    },
    ...fillFigures(ready, ask),
  ];
}

function sigmaFigures(batch: Batch, { pour }: PourAsk): OpenedFigure[] {
  const rows = batch.uncertainty
    .filter(({ contributionG }) => contributionG > 0)
    .flatMap(({ input: name, contributionG }) =>
      input(`doubt of the ${name.replace(/_/g, ' ')}`, contributionG, 'g', doubtFrom(batch, name)),
    );
  const { freeRiseKgM3 } = pour;
  const isTested = freeRiseKgM3.from === 'cup-test' && freeRiseKgM3.isOld !== true;
  const { value: least, from } = RULES.minSigmaNoCup;
  const floor = isTested ? [] : input('least doubt', least, '', from, 'share');
  const formula = (over: string): string =>
    `square root of the sum of squares / ${over}${isTested ? '' : ', not under the least doubt'}`;
  const { inputs } = batch;
  const foamG = batch.mixedG - inputs.residueG - inputs.ventsG / (1 - inputs.gasLossShare);
  return [
    {
      key: 'sigma_share',
      title: 'Doubt of the mix, one standard deviation',
      value: batch.sigmaShare,
      unit: '',
      shown: 'share',
      formula: formula('mixed'),
      inputs: [...rows, ...input('mixed', batch.mixedG, 'g', HERE), ...floor],
      source: GUM,
    },
    {
      key: 'pack_sigma_share',
      title: 'Doubt of the pack, one standard deviation',
      value: batch.packSigmaShare,
      unit: '',
      shown: 'share',
      formula: formula('foam poured for the cavity'),
      inputs: [
        ...rows,
        ...input('foam poured for the cavity', foamG, 'g', 'mixed less residue and vents'),
        ...floor,
      ],
      source: GUM,
    },
  ];
}

/** The rule behind a doubt that nobody gave. */
const NOTED: Readonly<Record<string, string>> = {
  free_rise: 'u_free_rise',
  cavity: 'u_scan_to_mold',
  station_pressure: 'u_station_pressure',
  riser: 'u_riser',
  residue: 'u_residue_g',
  gas_loss: 'u_gas_loss',
  vents: 'u_vents_g',
  scale: 'scale_step_g',
};

function doubtFrom({ assumptions }: Batch, name: string): Pick<OpenedInput, 'from' | 'isAssumed'> {
  const noted = assumptions.find((one) => one.name === NOTED[name]);
  return noted === undefined ? { from: HERE } : { from: noted.basis, isAssumed: true };
}

function fillFigures(ready: PreparedPour, ask: PourAsk): OpenedFigure[] {
  const { justFills, batch } = ready;
  if (justFills === undefined) return [];
  const { lowPack, valuePack, highPack } = justFills;
  const doubt = Math.log(highPack / valuePack) / ENDS_Z;
  const at = (title: string, packFactor: number): OpenedInput[] =>
    massInputs(ready, ask, input(title, packFactor, '', HERE));
  return [
    {
      key: 'just_fills_pack',
      title: 'Pack at the high end of what just fills',
      value: highPack,
      unit: '',
      formula: `least pack x exp(${ENDS_Z.toFixed(3)} x doubt of the pack there)`,
      inputs: [
        ...input('least pack', valuePack, '', HERE),
        ...input('doubt of the pack there', doubt, '', HERE, 'share'),
      ],
      source: 'a short fill has a chance of 1 in 20 at this pack; log-normal doubt',
    },
    {
      key: 'just_fills_low_g',
      title: 'Just fills, low end',
      value: justFills.lowG,
      unit: 'g',
      formula: MIXED,
      inputs: at('pack, least pack squared / pack of the high end', lowPack),
      source: 'mass balance, derived',
    },
    {
      key: 'just_fills_high_g',
      title: 'Just fills, high end',
      value: justFills.highG,
      unit: 'g',
      formula: MIXED,
      inputs: at('pack of the high end', highPack),
      source: 'mass balance, derived',
    },
    {
      key: 'over_just_fills_g',
      title: 'Mixed over the high end',
      value: batch.totalG - justFills.highG,
      unit: 'g',
      formula: 'mixed - just fills, high end',
      inputs: [
        ...input('mixed', batch.totalG, 'g', HERE, 'exact'),
        ...input('just fills, high end', justFills.highG, 'g', HERE),
      ],
      source: 'a difference',
    },
  ];
}
