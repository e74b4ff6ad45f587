import { formatMass, type Show } from '../../units';
import { assumptionLine } from '../../words/assumptionWords';
import { buyWords, needWords, runBecause, stockWords } from '../../words/runWords';
import { findingLines } from '../batchText';
import { inputsGiven, type CommandSpec, type OptionValues } from '../command';
import { assumptionJson, findingJson, type Envelope } from '../envelope';
import { line } from '../moldLines';
import { answer, complain, exitOfAnswer, showOf } from '../report';
import { runCall, type Run } from '../runCall';
import { runResult } from '../runJson';
import { RUN_OPTIONS } from '../runOptions';

export const run: CommandSpec = {
  name: 'run',
  about: 'A run of castings on a few molds: material, rounds, how far the stock goes, what to buy',
  options: RUN_OPTIONS,
  run: ({ options, io }) => {
    const planned = runCall(options, io);
    if (!planned.ok) return complain(planned.problem, options, io);
    const text =
      options.json === true
        ? JSON.stringify(envelopeOf(planned.value, options))
        : runText(planned.value, showOf(options));
    answer(text, options, io);
    return exitOfAnswer(planned.value.findings, options);
  },
};

const envelopeOf = (planned: Run, options: OptionValues): Envelope => ({
  schema: 'risewright/run@1',
  inputs: inputsGiven(options, RUN_OPTIONS),
  assumptions: planned.assumptions.map(assumptionJson),
  findings: planned.findings.map(findingJson),
  result: runResult(planned),
  range: {},
  because: runBecause(planned.plan, planned.casting),
});

/** The run for a person; where the stock ends and what to buy stand last. */
function runText({ plan, casting, findings, assumptions }: Run, show: Show): string {
  const { materialKg, costPerCasting } = plan;
  return [
    ...findingLines(findings, show),
    ...assumptions.map((assumption) => line('Assumed', assumptionLine(assumption, show))),
    ...runBecause(plan, casting).map((why) => line('Because', why)),
    ...(costPerCasting === undefined
      ? []
      : [line('Cost', `${costPerCasting.toFixed(2)} of your own money for each casting that is kept`)]),
    line('Material', `${formatMass(1000 * materialKg, show)}: ${needWords(plan)}`),
    line('Buy', buyWords(plan)),
    line('Stock', stockWords(plan)),
  ].join('\n');
}
