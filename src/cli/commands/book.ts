import { resolve } from 'node:path';
import { bad, type Outcome } from '../../problem';
import {
  addRow,
  checkRows,
  exportRows,
  learn,
  listRows,
  type BookAnswer,
  type BookDoer,
} from '../bookActions';
import { importRows } from '../bookImport';
import { BOOK_ACTIONS, BOOK_OPTIONS, onlyItsOptions, type BookAction } from '../bookOptions';
import { inputsGiven, textOf, type CommandSpec, type OptionValues } from '../command';
import { assumptionJson, findingJson, type Envelope } from '../envelope';
import { EXIT, type ExitCode } from '../exit';
import { findingLine } from '../findingLine';
import type { Io } from '../io';
import { answer, complain, exitOfAnswer, orCannotWrite, showOf } from '../report';

const DOERS: Readonly<Record<BookAction, BookDoer>> = {
  add: addRow,
  list: listRows,
  learn,
  check: checkRows,
  export: exportRows,
  import: importRows,
};

export const book: CommandSpec = {
  name: 'book',
  operands: `<${BOOK_ACTIONS.join('|')}>`,
  about: 'The book of past pours: write a row, list, ask about slips, learn, take in and give out as CSV',
  options: BOOK_OPTIONS,
  run: ({ operands, options, io }) => {
    const action = BOOK_ACTIONS.find((one) => one === operands[0]);
    if (action === undefined) return complain(unknownAction(operands[0]), options, io);
    const sound = mayBeDone(action, options);
    // A complaint is never written over a file that is read.
    if (!sound.ok) return complain(sound.problem, withoutTarget(options), io);
    const done = DOERS[action](options, io);
    if (!done.ok) return complain(done.problem, withoutTarget(options), io);
    tell(done.value, { action, options, io });
    return exitOf(done.value, action, options);
  },
};

const unknownAction = (action = '') =>
  bad('BAD_CALL', {
    text: `"book ${action}" is not known.`,
    hint: `It is one of: ${BOOK_ACTIONS.map((one) => `book ${one}`).join(', ')}.`,
  }).problem;

function withoutTarget(options: OptionValues): OptionValues {
  const { output: _output, ...rest } = options;
  return rest;
}

/** Only the options of the action, and -o on none of the files that are read. */
function mayBeDone(action: BookAction, options: OptionValues): Outcome<true> {
  const target = textOf(options, 'output');
  const read = ['book', 'shop', 'csv'].map((name) => textOf(options, name));
  if (
    target !== undefined &&
    target !== '-' &&
    read.some((file) => file !== undefined && resolve(file) === resolve(target))
  )
    return bad('BAD_CALL', {
      text: `-o "${target}" is a file that is read or written: it would be lost.`,
      hint: 'Name another file.',
    });
  return onlyItsOptions(action, options);
}

/** A list that was not taken is no answer. */
function exitOf({ findings }: BookAnswer, action: BookAction, options: OptionValues): ExitCode {
  if (action === 'import' && findings.some(({ status }) => status === 'stop')) return EXIT.unreadable;
  return exitOfAnswer(findings, options);
}

function tell(
  { findings, assumptions, result, lines, raw }: BookAnswer,
  { action, options, io }: { action: BookAction; options: OptionValues; io: Io },
): void {
  if (options.json === true) {
    const envelope: Envelope = {
      schema: 'risewright/book@1',
      inputs: { action, ...inputsGiven(options, BOOK_OPTIONS) },
      assumptions: assumptions.map(assumptionJson),
      findings: findings.map(findingJson),
      result,
      range: {},
      because: [],
    };
    answer(JSON.stringify(envelope), options, io);
    return;
  }
  const told = findings.map((one) => findingLine(one, showOf(options)));
  if (raw === undefined) answer([...told, ...lines].join('\n'), options, io);
  else {
    if (told.length > 0) io.note(`${told.join('\n')}\n`);
    rawOut(raw, options, io);
  }
}

/** Data as it is: its last line has its end. */
function rawOut(raw: string, options: OptionValues, io: Io): void {
  const target = textOf(options, 'output');
  if (target === undefined || target === '-') io.out(raw);
  else orCannotWrite(target, '-o', () => io.replaceFile(target, raw));
}
