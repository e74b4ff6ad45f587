import { numberedPours, readBook } from '../../job/book';
import { bad, good, type Outcome } from '../../problem';
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
  {
    flags: '--piece <name>',
    about: 'last pours of this piece, by name or id, from the book of the --shop file',
  },
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
    const before = poursBefore(poured.value, textOf(options, 'piece'));
    if (!before.ok) return complain(before.problem, told, io);
    const html = pourSheet(poured.value.prepared, {
      ...metaOf(poured.value, options, version),
      before: before.value,
    });
    const file = textOf(options, 'output');
    const toFile = file !== undefined && file !== '-';
    if (toFile || options.json !== true) answer(html.trimEnd(), options, io);
    if (options.json === true)
      answer(JSON.stringify(envelopeOf(poured.value, options, toFile ? { file } : { html })), told, io);
    else if (toFile && options.quiet !== true) io.note(`  Wrote       ${file}\n`);
    return exitOfAnswer(poured.value.findings, options);
  },
};

/** What the book of the shop has of the piece. Errors: BAD_CALL. */
function poursBefore(
  { call: { shop } }: Poured,
  piece: string | undefined,
): Outcome<NonNullable<SheetMeta['before']>> {
  if (piece === undefined) return good([]);
  if (shop === undefined)
    return bad('BAD_CALL', {
      text: '--piece is looked up in the book of a shop, and none was given.',
      hint: 'Add --shop FILE, or leave --piece out.',
    });
  const ids = Object.values(shop.pieces).filter(({ id, name }) => id === piece || name === piece);
  const names = new Set([piece, ...ids.flatMap(({ id, name }) => [id, name])]);
  const before = numberedPours(readBook(shop.book).rows).flatMap(({ no, row }) =>
    row.piece !== undefined && names.has(row.piece) ? [{ ...row, no }] : [],
  );
  if (before.length > 0 || ids.length > 0) return good(before);
  return bad('BAD_CALL', {
    text: `"${piece}" is no piece of the shop, and its book has no pour of it.`,
    hint: 'book list --shop FILE shows what it has.',
  });
}

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
