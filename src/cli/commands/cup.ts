import { formatDensity, type Show } from '../../units';
import { assumptionLine } from '../../words/assumptionWords';
import { counted } from '../../words/sentence';
import { cupBecause } from '../../words/volumeWayWords';
import { inputsGiven, type CommandSpec, type OptionValues } from '../command';
import { CUP_OPTIONS, cupCall, type CupCall } from '../cupCall';
import { assumptionJson, findingJson, type Envelope } from '../envelope';
import { findingLine } from '../findingLine';
import { line } from '../moldLines';
import { answer, complain, exitOfAnswer, showOf } from '../report';

export const cup: CommandSpec = {
  name: 'cup',
  about: 'Free-rise density of today from cups of foam, trimmed flush and weighed',
  options: CUP_OPTIONS,
  run: ({ options, io }) => {
    const test = cupCall(options);
    if (!test.ok) return complain(test.problem, options, io);
    const text =
      options.json === true
        ? JSON.stringify(envelopeOf(test.value, options))
        : cupText(test.value, showOf(options));
    answer(text, options, io);
    return exitOfAnswer(test.value.findings, options);
  },
};

function envelopeOf(test: CupCall, options: OptionValues): Envelope {
  const { freeRiseKgM3, cups, uShare } = test;
  return {
    schema: 'risewright/cup@1',
    inputs: inputsGiven(options, CUP_OPTIONS),
    assumptions: test.assumptions.map(assumptionJson),
    findings: test.findings.map(findingJson),
    result: {
      free_rise_kg_m3: freeRiseKgM3.value,
      u_share: uShare,
      n: cups.length,
      cup_cm3: cups[0]!.cupCm3,
      cups: cups.map((one) => ({ foam_g: one.foamG, free_rise_kg_m3: one.freeRiseKgM3 })),
    },
    range: { free_rise_kg_m3: [freeRiseKgM3.low, freeRiseKgM3.high] },
    because: cupBecause(test),
  };
}

function cupText(test: CupCall, show: Show): string {
  const { value, low, high, from } = test.freeRiseKgM3;
  return [
    ...test.findings.map((problem) => findingLine(problem, show)),
    ...test.assumptions.map((assumption) => line('Assumed', assumptionLine(assumption, show))),
    ...cupBecause(test, show).map((why) => line('Because', why)),
    line('Next', `batch takes it as --free-rise "${value.toFixed(1)} kg/m3" --free-rise-from cup-test`),
    line(
      'Free rise',
      `${formatDensity(value, show)}, ${formatDensity(low, show)} to ${formatDensity(high, show)}, from ${counted(test.cups.length, 'cup')} (${from})`,
    ),
  ].join('\n');
}
