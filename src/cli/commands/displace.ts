import type { Show } from '../../units';
import { assumptionLine } from '../../words/assumptionWords';
import { displaceBecause, volumeWithRange } from '../../words/volumeWayWords';
import { inputsGiven, type CommandSpec, type OptionValues } from '../command';
import { DISPLACE_OPTIONS, displaceCall, type Displaced } from '../displaceCall';
import { assumptionJson, type Envelope } from '../envelope';
import { line } from '../moldLines';
import { answer, complain, exitOfAnswer, showOf } from '../report';

export const displace: CommandSpec = {
  name: 'displace',
  about: 'Volume of a sculpt from the water or rice it pushes out',
  options: DISPLACE_OPTIONS,
  run: ({ options, io }) => {
    const displaced = displaceCall(options, io);
    if (!displaced.ok) return complain(displaced.problem, options, io);
    const text =
      options.json === true
        ? JSON.stringify(envelopeOf(displaced.value, options))
        : displaceText(displaced.value, showOf(options));
    answer(text, options, io);
    return exitOfAnswer([], options);
  },
};

const becauseOf = ({ way, volumeCm3 }: Displaced, show?: Show): string[] =>
  displaceBecause(
    way.by === 'level'
      ? way
      : {
          by: 'overflow',
          water: { waterG: way.waterG, waterTempC: way.waterTempC, volumeCm3: volumeCm3.value },
        },
    show,
  );

const envelopeOf = (displaced: Displaced, options: OptionValues): Envelope => ({
  schema: 'risewright/displace@1',
  inputs: inputsGiven(options, DISPLACE_OPTIONS),
  assumptions: displaced.assumptions.map(assumptionJson),
  findings: [],
  result: { volume_cm3: displaced.volumeCm3.value, by: displaced.way.by },
  range: { volume_cm3: [displaced.volumeCm3.low, displaced.volumeCm3.high] },
  because: becauseOf(displaced),
});

const displaceText = (displaced: Displaced, show: Show): string =>
  [
    ...displaced.assumptions.map((assumption) => line('Assumed', assumptionLine(assumption, show))),
    ...becauseOf(displaced, show).map((why) => line('Because', why)),
    line('Volume', `${volumeWithRange(displaced.volumeCm3, 3, show)}, of the sculpt`),
  ].join('\n');
