import { MOLDMAKING_RULES, POUR_RULES, RULES, WARMTH_RULES } from '../../yield';
import type { PourAsk } from './pourAsk';
import type { PreparedPour } from './preparePour';

/** One number of a plan, opened: how it came about, from what, in which unit, and where that comes from. */
export interface OpenedFigure {
  key: string;
  title: string;
  value: number;
  unit: string;
  formula: string;
  inputs: readonly { title: string; value: number; unit: string; from: string }[];
  source: string;
}

type Input = OpenedFigure['inputs'][number];

const input = (title: string, value: number | undefined, unit: string, from: string): Input[] =>
  value === undefined ? [] : [{ title, value, unit, from }];

/** Every number of a prepared pour that was reckoned, opened; in the order in which they follow from each other. */
export function figuresOf(ready: PreparedPour, ask: PourAsk): OpenedFigure[] {
  return [
    ...batchFigures(ready, ask),
    ...forceFigures(ready, ask),
    ...timeFigures(ready, ask),
    ...warmthFigures(ready, ask),
  ];
}

function batchFigures({ batch, cavityCm3, air }: PreparedPour, ask: PourAsk): OpenedFigure[] {
  const { inputs } = batch;
  const said = (given: { from: string } | undefined): string => given?.from ?? 'assumed';
  const rise = input('free rise', inputs.freeRiseKgM3, 'kg/m3', ask.pour.freeRiseKgM3.from);
  const pack = input('pack factor', batch.packFactor, '', batch.packFrom);
  const volumes = [
    ...input('cavity', cavityCm3.value, 'cm3', cavityCm3.from),
    ...input('riser', inputs.riserCm3, 'cm3', said(ask.pour.riserCm3)),
  ];
  const mixed = input('mixed in all', batch.totalG, 'g', 'this plan');
  const ratio = [
    ...input('parts A by weight', batch.massRatio.a, '', 'given'),
    ...input('parts B by weight', batch.massRatio.b, '', 'given'),
  ];
  return [
    ...(air === undefined
      ? []
      : [
          {
            key: 'free_rise_kg_m3',
            title: 'Free rise in the air of the day',
            value: air.correction.freeRiseKgM3.value,
            unit: 'kg/m3',
            formula: '1/rho = 1/rho_liquid + (1/rho_card - 1/rho_liquid) x (p_card / p) x (T / T_card)',
            inputs: [
              ...input('free rise of the card', air.cardKgM3, 'kg/m3', ask.pour.freeRiseKgM3.from),
              ...input('air pressure', air.correction.stationKPa.value, 'kPa', air.correction.stationKPa.by),
              ...input('liquid density', batch.liquidKgM3, 'kg/m3', said(ask.pour.liquidKgM3)),
            ],
            source: 'ideal gas law, derived; pressure by altitude: US Standard Atmosphere 1976 (ISO 2533)',
          },
        ]),
    {
      key: 'mixed_g',
      title: 'Mixed in all, before rounding',
      value: batch.mixedG,
      unit: 'g',
      formula: '(free rise x pack x (cavity + riser) + vents) / (1 - gas) + residue',
      inputs: [
        ...rise,
        ...pack,
        ...volumes,
        ...input('out of the vents', inputs.ventsG, 'g', said(ask.pour.ventsG)),
        ...input('gas that leaves', inputs.gasLossShare, '', said(ask.pour.gasLossShare)),
        ...input('residue in the cup', inputs.residueG, 'g', said(ask.pour.residueG)),
      ],
      source: 'mass balance, derived',
    },
    {
      key: 'part_a_g',
      title: 'Part A',
      value: batch.partAG,
      unit: 'g',
      formula: 'mixed x a / (a + b), to the step of the scale',
      inputs: [
        ...mixed,
        ...ratio,
        ...input('step of the scale', batch.stepG, 'g', said(ask.pour.scaleStepG)),
      ],
      source: 'the ratio of the data sheet, A first',
    },
    {
      key: 'part_b_g',
      title: 'Part B',
      value: batch.partBG,
      unit: 'g',
      formula: 'mixed x b / (a + b), to the step of the scale',
      inputs: [...mixed, ...ratio],
      source: 'the ratio of the data sheet, A first',
    },
    {
      key: 'molded_density_kg_m3',
      title: 'Molded density',
      value: batch.moldedDensityKgM3,
      unit: 'kg/m3',
      formula: 'free rise x pack',
      inputs: [...rise, ...pack],
      source: 'definition of the packing factor',
    },
    {
      key: 'short_fill_chance',
      title: 'Chance of a short fill',
      value: batch.shortFillChance,
      unit: '',
      formula: 'Phi(-ln(pack / least pack) / sigma)',
      inputs: [
        ...pack,
        ...input('least pack', batch.leastPack, '', said(ask.pour.minFillKgM3)),
        ...input('sigma', batch.sigmaShare, '', 'this plan'),
      ],
      source: 'log-normal doubt; budget by JCGM 100:2008',
    },
  ];
}

function forceFigures({ batch, forces }: PreparedPour, { clamp = {} }: PourAsk): OpenedFigure[] {
  const { pressureKPa, straps, plugN } = forces;
  const gauge = input('pressure to plan for', pressureKPa.designKPa, 'kPa', pressureKPa.from);
  return [
    {
      key: 'pressure_kpa',
      title: 'Peak pressure in the mold',
      value: pressureKPa.value,
      unit: 'kPa',
      formula:
        clamp.measuredPeak === undefined
          ? 'p0 x (pack (1 - f) / (1 - pack f) - 1), f = free rise / liquid density'
          : 'measured peak x p(pack) / p(its pack)',
      inputs: [
        ...input('pack factor', batch.packFactor, '', batch.packFrom),
        ...input('free rise', batch.inputs.freeRiseKgM3, 'kg/m3', 'this plan'),
        ...input('liquid density', batch.liquidKgM3, 'kg/m3', 'this plan'),
      ],
      source: 'ideal gas, no venting, derived; a factor of two either way',
    },
    ...(forces.clamp === undefined
      ? []
      : [
          {
            key: 'clamp_n',
            title: 'Clamp force',
            value: forces.clamp.clampN,
            unit: 'N',
            formula: 'pressure x shadow x safety - weight of the lid',
            inputs: [
              ...gauge,
              ...input('shadow along the opening', clamp.projectedCm2, 'cm2', 'scanned or given'),
              ...input('safety', RULES.clampSafety.value, '', RULES.clampSafety.from),
              ...input('lid', clamp.lidG, 'g', 'given'),
            ],
            source: 'hydrostatics; the pressure is at least 20 kPa unless a peak was measured',
          },
        ]),
    ...(straps === undefined
      ? []
      : [
          {
            key: 'strap_n',
            title: 'Tension at each buckle',
            value: straps.buckleN,
            unit: 'N',
            formula: 'clamp / (2 x straps) / exp(-friction x wrap) / (1 - creep)',
            inputs: straps.assumptions
              .filter(({ value }) => typeof value === 'number')
              .map(({ name, value, unit, basis }) => ({
                title: name.replace(/_/g, ' '),
                value,
                unit,
                from: basis,
              })),
            source: 'belt friction (Euler and Eytelwein), from memory; creep: common practice, no source',
          },
        ]),
    ...(plugN === undefined
      ? []
      : [
          {
            key: 'plug_n',
            title: 'Push on the plug',
            value: plugN,
            unit: 'N',
            formula: 'pressure x area of the plug',
            inputs: [...gauge, ...input('area of the plug', clamp.plugCm2, 'cm2', 'given')],
            source: 'definition of pressure',
          },
        ]),
  ];
}

function timeFigures(
  { times, cups }: PreparedPour,
  { foam = {}, cups: limits = {} }: PourAsk,
): OpenedFigure[] {
  const { window, openMin, exotherm } = times;
  const shift = 't2 = t1 x exp(Ea/R x (1/T2 - 1/T1))';
  const kinetics = POUR_RULES.gelActivation.from;
  return [
    {
      key: 'cups',
      title: 'Cups',
      value: cups.cups.length,
      unit: '',
      formula: 'fewest equal cups whose mix is at most what the cup or the pour window takes',
      inputs: [
        ...input('largest mix', cups.largestMixG, 'g', cups.limitedBy),
        ...input('cup', limits.cupCm3, 'cm3', 'given'),
      ],
      source: POUR_RULES.cupFill.from,
    },
    ...(window === undefined
      ? []
      : [
          {
            key: 'pour_window_s',
            title: 'Time to pour',
            value: window.pourWindowS.value,
            unit: 's',
            formula: `cream time today - mixing - carrying - margin; ${shift}`,
            inputs: [
              ...input('cream time of the card', foam.creamS, 's', 'data-sheet'),
              ...input('cream time today', window.creamS.value, 's', window.creamS.from),
            ],
            source: kinetics,
          },
        ]),
    ...(openMin === undefined
      ? []
      : [
          {
            key: 'open_min',
            title: 'Time to open',
            value: openMin.value,
            unit: 'min',
            formula: shift,
            inputs: input('time of the card', foam.openMin, 'min', 'data-sheet'),
            source: kinetics,
          },
        ]),
    ...(exotherm.known && exotherm.coreC !== undefined
      ? [
          {
            key: 'core_c',
            title: 'Core temperature',
            value: exotherm.coreC.value,
            unit: 'C',
            formula: 'start + ((NCO - 2 x water) x dH_urethane + water x dH_water) / cp',
            inputs: [
              ...input('NCO in part A', foam.ncoShare, '', 'data-sheet'),
              ...input('water in part B', foam.waterShare, '', 'data-sheet'),
              ...input('rise', exotherm.riseK.value, 'K', exotherm.riseK.from),
            ],
            source: POUR_RULES.heatUrethane.from,
          },
        ]
      : []),
  ];
}

function warmthFigures({ warmth }: PreparedPour, { warm }: PourAsk): OpenedFigure[] {
  const { warmUp, coolDown } = warmth;
  if (warm === undefined || warmUp === undefined || coolDown === undefined) return [];
  const wall = [
    ...input('wall', warm.wallMm, 'mm', 'given'),
    ...input('air around', warm.airTempC, 'C', 'given'),
    ...input('target', warm.targetTempC, 'C', 'chosen'),
  ];
  const series = 'theta = sum of C_n exp(-z_n^2 Fo) cos(z_n x/L), z tan z = Bi';
  return [
    {
      key: 'warm_deep_min',
      title: 'Warm-up, deep face',
      value: warmUp.deepFaceMin.value,
      unit: 'min',
      formula: series,
      inputs: [...wall, ...input('Biot number', warmUp.biot, '', 'this plan')],
      source: `heat conduction in a slab (Carslaw and Jaeger), from memory; room ${MOLDMAKING_RULES.roomTemp.value} C unless said`,
    },
    {
      key: 'pour_within_min',
      title: 'Pour within',
      value: coolDown.pourWithinMin,
      unit: 'min',
      formula: series,
      inputs: wall,
      source: `the same series in still air; ${WARMTH_RULES.stillAir.from}`,
    },
  ];
}
