import { fillBecause, fillCautions, volumeWithRange } from '../../words/volumeWayWords';
import { assumptionLine } from '../../words/assumptionWords';
import type { Show } from '../../units';
import { inputsGiven, type CommandSpec, type OptionValues } from '../command';
import { assumptionJson, type Envelope } from '../envelope';
import { FILL_OPTIONS, fillCall, type Filled } from '../fillCall';
import { line } from '../moldLines';
import { answer, complain, exitOfAnswer, showOf } from '../report';

export const fill: CommandSpec = {
  name: 'fill',
  about: 'Cavity of a mold from the water that fills it, weighed',
  options: FILL_OPTIONS,
  run: ({ options, io }) => {
    const filled = fillCall(options, io);
    if (!filled.ok) return complain(filled.problem, options, io);
    const text =
      options.json === true
        ? JSON.stringify(envelopeOf(filled.value, options))
        : fillText(filled.value, showOf(options));
    answer(text, options, io);
    return exitOfAnswer([], options);
  },
};

const becauseOf = ({ waterG, waterTempC, cavityCm3 }: Filled, show?: Show): string[] =>
  fillBecause({ waterG, waterTempC, volumeCm3: cavityCm3.value }, show);

const envelopeOf = (filled: Filled, options: OptionValues): Envelope => ({
  schema: 'risewright/fill@1',
  inputs: inputsGiven(options, FILL_OPTIONS),
  assumptions: filled.assumptions.map(assumptionJson),
  findings: [],
  result: {
    cavity_cm3: filled.cavityCm3.value,
    water_g: filled.waterG,
    cautions: fillCautions().map(({ key, when, what }) => ({ key, when, what })),
  },
  range: { cavity_cm3: [filled.cavityCm3.low, filled.cavityCm3.high] },
  because: becauseOf(filled),
});

function fillText(filled: Filled, show: Show): string {
  const { cavityCm3, assumptions } = filled;
  return [
    ...assumptions.map((assumption) => line('Assumed', assumptionLine(assumption, show))),
    ...becauseOf(filled, show).map((why) => line('Because', why)),
    ...fillCautions().map(({ when, what }) => line(when, what)),
    line(
      'Next',
      `batch takes it as --volume "${cavityCm3.value.toFixed(1)} cm3"; with --mold-water "confirmed dry" once someone has made sure of it`,
    ),
    line('Cavity', `${volumeWithRange(cavityCm3, 4, show)} (${cavityCm3.from})`),
  ].join('\n');
}
