import type { Problem } from '../../problem';
import { moldBecause } from '../../words/moldBecause';
import { sizeBecause } from '../../words/sizeWords';
import { inputsGiven, type CommandSpec, type OptionValues } from '../command';
import { assumptionJson, findingJson, type Envelope } from '../envelope';
import { EXIT, exitOf, type ExitCode } from '../exit';
import type { Io } from '../io';
import { comparedJson } from '../moldAllJson';
import { comparedText } from '../moldAllText';
import { assumedFor, cautionsOf, makeMolds, type Made } from '../moldCall';
import { moldJson, moldRange } from '../moldJson';
import { MOLD_OPTIONS, moldOptions, type MoldCall } from '../moldOptions';
import { moldText } from '../moldText';
import { answer, complain, exitOfAnswer, showOf } from '../report';

export const mold: CommandSpec = {
  name: 'mold',
  operands: '<scan>',
  about: 'Silicone for a new mold: grams of base and catalyst, coats, kits, jacket or box',
  options: MOLD_OPTIONS,
  run: ({ operands, options, io }) => {
    const [file] = operands as [string];
    const call = moldOptions(options, io);
    if (!call.ok) return complain(call.problem, options, io);
    const made = makeMolds(file, call.value, options, io);
    if (!made.ok) return refused(made.problem, file, options, io);
    const isJson = options.json === true;
    const text = isJson
      ? JSON.stringify(envelopeOf(file, made.value, call.value, options))
      : textOf(file, made.value, call.value, options);
    answer(text, options, io);
    return exitOfAnswer(findingsOf(made.value), options);
  },
};

/** What is wrong with the call is not said of the file. */
const refused = (problem: Problem, file: string, options: OptionValues, io: Io): ExitCode =>
  complain(problem, options, io, exitOf(problem.code) === EXIT.badCall ? undefined : file);

const findingsOf = ({ size, mold: one, compared = [] }: Made): Problem[] => [
  ...size.findings,
  ...(one?.findings ?? []),
  ...compared.flatMap(({ isUsual, mold: each }) => (isUsual && each.ok ? each.value.findings : [])),
];

function textOf(
  file: string,
  { size, mold: one, compared }: Made,
  call: MoldCall,
  options: OptionValues,
): string {
  const show = showOf(options);
  return one === undefined
    ? comparedText({ file, size, compared: compared ?? [], call, show })
    : moldText({ file, size, mold: one, call, show });
}

function envelopeOf(
  file: string,
  { size, mold: one, compared }: Made,
  call: MoldCall,
  options: OptionValues,
): Envelope {
  const assumed = one === undefined ? [] : assumedFor(one, call);
  return {
    schema: 'risewright/mold@1',
    inputs: { file, ...inputsGiven(options, MOLD_OPTIONS) },
    assumptions: [...size.assumptions, ...call.assumptions, ...assumed].map(assumptionJson),
    findings: [...size.findings, ...(one?.findings ?? [])].map(findingJson),
    result:
      one === undefined
        ? { molds: comparedJson(compared ?? [], call) }
        : moldJson(one, cautionsOf(one, call), call.ask.finish !== undefined),
    range: one === undefined ? {} : moldRange(one),
    because: [...sizeBecause(size), ...(one === undefined ? [] : moldBecause(one))],
  };
}
