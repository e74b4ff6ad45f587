import { packsBecause } from '../../words/packWords';
import { inputsGiven, textOf, type CommandSpec, type OptionValues } from '../command';
import { assumptionJson, findingJson, type Envelope } from '../envelope';
import { EXIT, type ExitCode } from '../exit';
import { packLevelsOf, packsFor, PACKS_OPTIONS, type Packs } from '../packsCall';
import { packsResult } from '../packsJson';
import { packsText } from '../packsText';
import { pourCall } from '../pourCall';
import { answer, complain, exitOfAnswer, showOf } from '../report';

export const packs: CommandSpec = {
  name: 'packs',
  about: 'Pack factors side by side: grams, density, stiffness, short fill, pressure, straps, cost',
  options: PACKS_OPTIONS,
  run: ({ options, io }) => {
    const file = textOf(options, 'scan');
    const levels = packLevelsOf(options);
    if (!levels.ok) return complain(levels.problem, options, io, file);
    const call = pourCall(options, io);
    if (!call.ok) return complain(call.problem, options, io, file);
    const compared = packsFor(call.value, levels.value);
    if (!compared.ok) return complain(compared.problem, options, io, file);
    const text =
      options.json === true
        ? JSON.stringify(envelopeOf(compared.value, options))
        : packsText(compared.value, call.value, showOf(options));
    answer(text, options, io);
    return exitOf(compared.value, options);
  },
};

/** With --strict: a Stop at every level, be it the same or each its own, leaves nothing to choose. */
function exitOf({ columns, findings }: Packs, options: OptionValues): ExitCode {
  const none = columns.every(
    (column) => column.refused !== undefined || column.own.some(({ status }) => status === 'stop'),
  );
  if (options.strict === true && none) return EXIT.strictStop;
  return exitOfAnswer(findings, options);
}

function envelopeOf(compared: Packs, options: OptionValues): Envelope {
  const first = compared.columns.find((column) => column.refused === undefined);
  const poured = first?.refused === undefined ? first?.poured : undefined;
  return {
    schema: 'risewright/packs@1',
    inputs: inputsGiven(options, PACKS_OPTIONS),
    assumptions: (poured?.assumptions ?? []).filter(({ name }) => name !== 'pack_factor').map(assumptionJson),
    findings: compared.findings.map(findingJson),
    result: packsResult(compared),
    range: {},
    because: packsBecause(compared.reference, poured?.prepared.forces.pressureKPa.caveats ?? []),
  };
}
