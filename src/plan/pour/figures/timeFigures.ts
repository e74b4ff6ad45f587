import { KELVIN_AT_0_C } from '../../../units';
import { massRatio, POUR_RULES } from '../../../yield';
import type { PourAsk } from '../pourAsk';
import type { PreparedPour } from '../preparePour';
import { givenOr, HERE, input, notedValue, type OpenedFigure, type OpenedInput } from './openedFigure';

const SHIFT = 'time of the card x exp(Ea / R x (1/T2 - 1/T1))';

/** Until it creams, until it may be opened, and how hot it gets. */
export function timeFigures(ready: PreparedPour, ask: PourAsk): OpenedFigure[] {
  return [...windowFigures(ready, ask), ...openFigures(ready, ask), ...coreFigures(ready, ask)];
}

/** What a time is shifted by; both temperatures are the same where one of them is not known. */
function shiftInputs(
  atC: number | undefined,
  nowC: number | undefined,
  activation: { value: number; from: string },
): OpenedInput[] {
  if (atC === undefined || nowC === undefined) return [];
  return [
    ...input('T1, of the card', atC + KELVIN_AT_0_C, 'K', 'data-sheet'),
    ...input('T2, today', nowC + KELVIN_AT_0_C, 'K', 'given'),
    ...input('Ea', 1000 * activation.value, 'J/mol', activation.from),
    ...input('R', POUR_RULES.gasConstant.value, 'J/(mol K)', POUR_RULES.gasConstant.from),
  ];
}

const formulaOf = (shift: readonly OpenedInput[]): string =>
  shift.length === 0
    ? 'the time of the card: one of the temperatures is not known, nothing is shifted'
    : SHIFT;

const RANGE = `range: ${POUR_RULES.quickening.low} to ${POUR_RULES.quickening.high} times as fast in 10 degrees, ${POUR_RULES.quickening.from}`;

function windowFigures({ times: { window } }: PreparedPour, ask: PourAsk): OpenedFigure[] {
  if (window === undefined) return [];
  const { foam = {}, cups = {}, ingredientsC, roomC } = ask;
  const noted = window.assumptions;
  const shift = shiftInputs(foam.timesAtC, ingredientsC ?? roomC, POUR_RULES.blowActivation);
  return [
    {
      key: 'cream_s',
      title: 'Cream time today',
      value: window.creamS.value,
      unit: 's',
      formula: formulaOf(shift),
      inputs: [...input('time of the card', foam.creamS, 's', 'data-sheet'), ...shift],
      source: `Arrhenius; ${POUR_RULES.blowActivation.from}; ${RANGE}`,
    },
    {
      key: 'pour_window_s',
      title: 'Time to pour',
      value: window.pourWindowS.value,
      unit: 's',
      formula: 'cream time today - mixing - carrying - margin',
      inputs: [
        ...input('cream time today', window.creamS.value, 's', HERE),
        ...input(
          'mixing',
          cups.mixS ?? notedValue(noted, 'mixing_time'),
          's',
          givenOr(cups.mixS, noted, 'mixing_time'),
        ),
        ...input(
          'carrying',
          cups.carryS ?? notedValue(noted, 'carrying_time'),
          's',
          givenOr(cups.carryS, noted, 'carrying_time'),
        ),
        ...input('margin', notedValue(noted, 'pour_margin'), 's', givenOr(undefined, noted, 'pour_margin')),
      ],
      source: 'a difference of times',
    },
  ];
}

function openFigures({ times: { openMin } }: PreparedPour, ask: PourAsk): OpenedFigure[] {
  if (openMin === undefined) return [];
  const { foam = {}, moldC, roomC } = ask;
  const shift = shiftInputs(foam.timesAtC, moldC ?? roomC, POUR_RULES.gelActivation);
  return [
    {
      key: 'open_min',
      title: 'Time to open',
      value: openMin.value,
      unit: 'min',
      formula: formulaOf(shift),
      inputs: [...input('time of the card', foam.openMin, 'min', 'data-sheet'), ...shift],
      source: `Arrhenius; ${POUR_RULES.gelActivation.from}; ${RANGE}`,
    },
  ];
}

/** The middle of the band; its ends are those of the heats. */
function coreFigures({ times: { exotherm } }: PreparedPour, ask: PourAsk): OpenedFigure[] {
  if (!exotherm.known) return [];
  const { foam = {}, ingredientsC, roomC, pour } = ask;
  const ratio = massRatio(pour.ratio, pour.partDensities);
  const { heatUrethane, heatWater, heatCapacity } = POUR_RULES;
  const a = ratio.ok ? ratio.value.a / (ratio.value.a + ratio.value.b) : undefined;
  return [
    {
      key: 'core_rise_k',
      title: 'Rise of the core, nothing cooling it',
      value: exotherm.riseK.value,
      unit: 'K',
      formula:
        '1e6 / cp x ((n - 2 w) x heat of urethane + w x heat of water), n = a x NCO / 42.0168, w = (1 - a) x water / 18.01528',
      inputs: [
        ...input('a, share of A in the mix', a, '', HERE, 'share'),
        ...input('NCO in part A', foam.ncoShare, '', 'data-sheet', 'share'),
        ...input('water in part B', foam.waterShare, '', 'data-sheet', 'share'),
        ...input('heat of urethane', heatUrethane.value, 'kJ/mol', heatUrethane.from),
        ...input('heat of water', heatWater.value, 'kJ/mol', heatWater.from),
        ...input('cp, heat capacity', heatCapacity.value, 'J/(kg K)', heatCapacity.from),
      ],
      source: `${heatUrethane.from}; molar masses: standard atomic weights (IUPAC)`,
    },
    {
      key: 'core_c',
      title: 'Core temperature',
      value: exotherm.coreC.value,
      unit: 'C',
      formula: 'A and B as mixed + rise',
      inputs: [
        ...input(
          'A and B as mixed',
          ingredientsC ?? roomC,
          'C',
          ingredientsC === undefined ? 'as the room' : 'given',
        ),
        ...input('rise', exotherm.riseK.value, 'K', HERE),
      ],
      source: `look over ${POUR_RULES.coreLook.value} °C: ${POUR_RULES.coreLook.from}; stop over ${POUR_RULES.coreStop.value} °C: ${POUR_RULES.coreStop.from}`,
    },
  ];
}
