import { POUR_RULES, RULES } from '../../../yield';
import type { PourAsk } from '../pourAsk';
import type { PreparedPour } from '../preparePour';
import { airFrom } from './airFigures';
import { packInput, riseInput } from './batchFigures';
import { givenOr, HERE, input, notedValue, type OpenedFigure, type OpenedInput } from './openedFigure';

/** Pressure, what it pushes with, and what holds it. */
export function forceFigures(ready: PreparedPour, ask: PourAsk): OpenedFigure[] {
  const { clamp = {} } = ask;
  const { pressureKPa, plugN } = ready.forces;
  const gauge = input('pressure to plan for', pressureKPa.designKPa, 'kPa', HERE);
  return [
    pressureFigure(ready, ask),
    designFigure(ready, ask),
    ...clampFigures(ready, ask, gauge),
    ...strapFigures(ready, ask),
    ...(plugN === undefined || plugN === 0
      ? []
      : [
          {
            key: 'plug_n',
            title: 'Push on the plug',
            value: plugN,
            unit: 'N',
            formula: 'pressure x area / 10',
            inputs: [...gauge, ...input('area of the plug', clamp.plugCm2, 'cm2', 'given')],
            source: 'definition of pressure; kPa on cm2 are tenths of a newton',
          },
        ]),
  ];
}

function pressureFigure(ready: PreparedPour, ask: PourAsk): OpenedFigure {
  const { batch, forces, air } = ready;
  const measured = ask.clamp?.measuredPeak;
  const ideal = 'p0 x (pack (1 - f) / (1 - pack f) - 1), f = free rise / liquid density';
  const outside =
    air === undefined
      ? input('p0, air outside', RULES.standardPressure.value, 'kPa', RULES.standardPressure.from)
      : input(
          'p0, air outside',
          air.correction.stationKPa.value,
          'kPa',
          airFrom(air.correction.stationKPa.by),
        );
  return {
    key: 'pressure_kpa',
    title: 'Peak pressure in the mold, over the air outside',
    value: forces.pressureKPa.value,
    unit: 'kPa',
    formula: measured === undefined ? ideal : `measured peak x p(pack) / p(its pack), p = ${ideal}`,
    inputs: [
      ...input('measured peak', measured?.peakKPa, 'kPa', 'given'),
      ...input('pack it was measured at', measured?.packFactor, '', 'given'),
      ...packInput(batch),
      ...riseInput(ready, ask),
      ...input('liquid density', batch.liquidKgM3, 'kg/m3', HERE),
      ...outside,
    ],
    source:
      measured === undefined
        ? `ideal gas, no venting, derived. Range: half to twice that; ${POUR_RULES.pressureFactor.from}`
        : `carried over by the ideal gas. Range: a quarter either way; ${POUR_RULES.measuredPeakDoubt.from}`,
  };
}

function designFigure({ forces: { pressureKPa } }: PreparedPour, { clamp }: PourAsk): OpenedFigure {
  const peak = input('peak pressure', pressureKPa.value, 'kPa', HERE);
  const figure = { key: 'design_kpa', title: 'Pressure that clamps are made for', unit: 'kPa' };
  return clamp?.measuredPeak === undefined
    ? {
        ...figure,
        value: pressureKPa.designKPa,
        formula: 'the greater of both',
        inputs: [
          ...peak,
          ...input('least pressure', RULES.minClampPressure.value, 'kPa', RULES.minClampPressure.from),
        ],
        source: RULES.minClampPressure.from,
      }
    : {
        ...figure,
        value: pressureKPa.designKPa,
        formula: 'the peak',
        inputs: peak,
        source: 'a measured peak',
      };
}

function clampFigures(
  { forces }: PreparedPour,
  { clamp = {} }: PourAsk,
  gauge: readonly OpenedInput[],
): OpenedFigure[] {
  if (forces.clamp === undefined) return [];
  const shadow = input('shadow along the opening', clamp.projectedCm2, 'cm2', 'scanned or given');
  return [
    {
      key: 'push_n',
      title: 'The foam pushes it open with',
      value: forces.clamp.pushN,
      unit: 'N',
      formula: 'pressure x shadow / 10',
      inputs: [...gauge, ...shadow],
      source: 'hydrostatics; kPa on cm2 are tenths of a newton. kgf: N / 9.80665, exact',
    },
    {
      key: 'clamp_n',
      title: 'Clamp force',
      value: forces.clamp.clampN,
      unit: 'N',
      formula: 'pressure x shadow / 10 x safety - lid / 1000 x 9.80665, not under 0',
      inputs: [
        ...gauge,
        ...shadow,
        ...input('safety', RULES.clampSafety.value, '', RULES.clampSafety.from),
        ...input('lid', clamp.lidG ?? 0, 'g', clamp.lidG === undefined ? 'none was given' : 'given'),
      ],
      source:
        'hydrostatics; the pressure is at least 20 kPa unless a peak was measured; gravity: ISO 80000-3',
    },
  ];
}

function strapFigures({ forces }: PreparedPour, { clamp = {} }: PourAsk): OpenedFigure[] {
  const { straps, ratchets } = forces;
  if (forces.clamp === undefined || straps === undefined) return [];
  const settings = clamp.straps ?? {};
  const noted = straps.assumptions;
  const whole = input('clamp force', forces.clamp.clampN, 'N', HERE);
  const kept = [
    ...input(
      'friction',
      settings.strapFriction ?? notedValue(noted, 'strap_friction'),
      '',
      givenOr(settings.strapFriction, noted, 'strap_friction'),
    ),
    ...input(
      'wrap',
      settings.strapWrapDegrees ?? notedValue(noted, 'strap_wrap_degrees'),
      'degrees',
      givenOr(settings.strapWrapDegrees, noted, 'strap_wrap_degrees'),
    ),
    ...input(
      'creep',
      settings.strapLossShare ?? notedValue(noted, 'strap_loss'),
      '',
      givenOr(settings.strapLossShare, noted, 'strap_loss'),
      'share',
    ),
  ];
  const source =
    'belt friction (Euler and Eytelwein), from memory; creep: common practice, no source; wrap in radians: degrees x pi / 180';
  const needed = (
    key: string,
    title: string,
    value: number,
    tension: readonly OpenedInput[],
  ): OpenedFigure => ({
    key,
    title,
    value,
    unit: '',
    formula: 'clamp / (2 x tension x exp(-friction x wrap) x (1 - creep)), rounded up',
    inputs: [...whole, ...tension, ...kept],
    source,
  });
  return [
    needed(
      'straps_needed',
      'Straps it takes',
      straps.strapsNeeded,
      input('tension of one', straps.strapN, 'N', givenOr(settings.strapN, noted, 'strap_tension')),
    ),
    ...(ratchets === undefined
      ? []
      : [
          needed(
            'ratchets_needed',
            'Ratchet straps it takes',
            ratchets.strapsNeeded,
            input('tension of one', ratchets.strapN, 'N', POUR_RULES.ratchetTension.from),
          ),
        ]),
    {
      key: 'strap_n',
      title: 'Tension at each buckle',
      value: straps.buckleN,
      unit: 'N',
      formula: 'clamp / (2 x straps) / exp(-friction x wrap) / (1 - creep)',
      inputs: [
        ...whole,
        ...input('straps', straps.straps, '', settings.straps === undefined ? HERE : 'given'),
        ...kept,
      ],
      source,
    },
  ];
}
