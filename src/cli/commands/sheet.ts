import { pourSheet, type SheetMeta } from '../../sheet';
import { batchRange, batchResult } from '../batchJson';
import { becauseOf } from '../batchText';
import { inputsGiven, textOf, type CommandSpec, type OptionSpec, type OptionValues } from '../command';
import { assumptionJson, findingJson, type Envelope } from '../envelope';
import { POUR_CALL_OPTIONS, pourCall, pourFor, type Poured } from '../pourCall';
import { answer, complain, exitOfAnswer, showOf } from '../report';

const SHEET_OPTIONS: readonly OptionSpec[] = [
  { flags: '--title <text>', about: 'what is cast, at the head of the sheet' },
  { flags: '--job <code>', about: 'short name of the job, at its foot' },
  { flags: '--lot <text>', about: 'lot of the foam' },
  { flags: '--date <text>', about: 'date as it shall stand there (left out: a line to write it on)' },
  ...POUR_CALL_OPTIONS,
];

export const sheet: CommandSpec = {
  name: 'sheet',
  about: 'The pour sheet: one printed page (A4 or Letter) to hold at the bench, as HTML',
  options: SHEET_OPTIONS,
  run: ({ options, io, version }) => {
    // The page is never written over by a complaint.
    const told = { ...options };
    delete told.output;
    const call = pourCall(options, io);
    if (!call.ok) return complain(call.problem, told, io, textOf(options, 'scan'));
    const poured = pourFor(call.value);
    if (!poured.ok) return complain(poured.problem, told, io, textOf(options, 'scan'));
    const html = pourSheet(poured.value.prepared, metaOf(poured.value, options, version));
    const file = textOf(options, 'output');
    const toFile = file !== undefined && file !== '-';
    if (toFile || options.json !== true) answer(html.trimEnd(), options, io);
    if (options.json === true)
      answer(JSON.stringify(envelopeOf(poured.value, options, toFile ? { file } : { html })), told, io);
    else if (toFile && options.quiet !== true) io.note(`  Wrote       ${file}\n`);
    return exitOfAnswer(poured.value.findings, options);
  },
};

function metaOf({ call }: Poured, options: OptionValues, version: string): SheetMeta {
  const [title, jobCode, lot, date] = ['title', 'job', 'lot', 'date'].map((name) => textOf(options, name));
  return {
    version,
    show: showOf(options),
    told: call.ask,
    findings: call.cavity.findings,
    ...(title === undefined ? {} : { title }),
    ...(jobCode === undefined ? {} : { jobCode }),
    ...(lot === undefined ? {} : { lot }),
    ...(date === undefined ? {} : { date }),
    ...(call.card === undefined ? {} : { foam: call.card.name }),
  };
}

const envelopeOf = (
  poured: Poured,
  options: OptionValues,
  page: { file: string } | { html: string },
): Envelope => ({
  schema: 'risewright/sheet@1',
  inputs: inputsGiven(options, SHEET_OPTIONS),
  assumptions: poured.assumptions.map(assumptionJson),
  findings: poured.findings.map(findingJson),
  result: { ...batchResult(poured), ...page },
  range: batchRange(poured.prepared),
  because: becauseOf(poured, 'both'),
});
