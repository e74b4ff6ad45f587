import { openingBecause } from '../../words/openingBecause';
import { ventWords } from '../../words/openingVents';
import { sizeBecause } from '../../words/sizeWords';
import type { Problem } from '../../problem';
import { inputsGiven, type CommandSpec, type OptionValues } from '../command';
import { assumptionJson, findingJson, type Envelope } from '../envelope';
import { EXIT, exitOf, type ExitCode } from '../exit';
import type { Io } from '../io';
import { planCall, type Opened } from '../openingCall';
import { cardTarget, writeCard } from '../openingCardOption';
import { openingJson, openingRange } from '../openingJson';
import { OPENING_OPTIONS, openingOptions, type OpeningCall } from '../openingOptions';
import { openingText } from '../openingText';
import { answer, complain, exitOfAnswer, showOf } from '../report';

export const opening: CommandSpec = {
  name: 'opening',
  operands: '<scan>',
  about:
    'Where to pour, vent and brush first, which way up, what is thin, and does it come out; a place card',
  options: OPENING_OPTIONS,
  run: ({ operands, options, io, version }) => {
    const [file] = operands as [string];
    const target = cardTarget(file, options);
    if (!target.ok) return complain(target.problem, options, io);
    const call = openingOptions(options, io);
    if (!call.ok) return complain(call.problem, options, io);
    const opened = planCall(file, call.value, options, io);
    if (!opened.ok) return refused(opened.problem, file, options, io);
    if (target.value !== undefined) writeCard(target.value, opened.value, { options, io, version });
    if (target.value !== '-' || options.output !== undefined)
      answer(answerOf(file, opened.value, call.value, options), options, io);
    return exitOfAnswer(opened.value.findings, options);
  },
};

/** What is wrong with the call is not said of the file. */
const refused = (problem: Problem, file: string, options: OptionValues, io: Io): ExitCode =>
  complain(problem, options, io, exitOf(problem.code) === EXIT.badCall ? undefined : file);

const answerOf = (file: string, opened: Opened, call: OpeningCall, options: OptionValues): string =>
  options.json === true
    ? JSON.stringify(envelopeOf(file, opened, call, options))
    : openingText({ file, opened, ask: call.ask, show: showOf(options) });

const envelopeOf = (
  file: string,
  { size, plan, findings, assumptions }: Opened,
  { ask }: OpeningCall,
  options: OptionValues,
): Envelope => ({
  schema: 'risewright/opening@1',
  inputs: { file, ...inputsGiven(options, OPENING_OPTIONS) },
  assumptions: assumptions.map(assumptionJson),
  findings: findings.map(findingJson),
  result: openingJson(plan),
  range: openingRange(plan),
  because: [...sizeBecause(size), ...openingBecause(plan, ask), ...ventWords(plan, ask)],
});
