import { batchRange, batchResult } from '../batchJson';
import { batchText, becauseOf } from '../batchText';
import { inputsGiven, textOf, type CommandSpec, type OptionValues } from '../command';
import { assumptionJson, findingJson, type Envelope } from '../envelope';
import { POUR_CALL_OPTIONS, pourCall, pourFor, type Poured } from '../pourCall';
import { answer, complain, exitOfAnswer, showOf } from '../report';

export const batch: CommandSpec = {
  name: 'batch',
  about: 'Grams of A and B to weigh for a cavity, and the chance that it comes up short',
  options: POUR_CALL_OPTIONS,
  run: ({ options, io }) => {
    const call = pourCall(options, io);
    if (!call.ok) return complain(call.problem, options, io, textOf(options, 'scan'));
    const poured = pourFor(call.value);
    if (!poured.ok) return complain(poured.problem, options, io, textOf(options, 'scan'));
    const text =
      options.json === true
        ? JSON.stringify(envelopeOf(poured.value, options))
        : batchText(poured.value, showOf(options));
    answer(text, options, io);
    return exitOfAnswer(poured.value.findings, options);
  },
};

const envelopeOf = (poured: Poured, options: OptionValues): Envelope => ({
  schema: 'risewright/batch@1',
  inputs: inputsGiven(options, POUR_CALL_OPTIONS),
  assumptions: poured.assumptions.map(assumptionJson),
  findings: poured.findings.map(findingJson),
  result: batchResult(poured),
  range: batchRange(poured.prepared),
  because: becauseOf(poured, 'both'),
});
