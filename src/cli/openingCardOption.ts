import { resolve } from 'node:path';
import { bad, good, type Outcome } from '../problem';
import { openingCard } from '../sheet';
import { textOf, type OptionValues } from './command';
import type { Io } from './io';
import { defined } from './moldFigures';
import type { Opened } from './openingCall';
import { orCannotWrite, showOf } from './report';

/** Where the place card goes: nowhere, to a file, or to stdout ("-"). Never over what is read, nor over the answer. Error: BAD_CALL. */
export function cardTarget(scan: string, options: OptionValues): Outcome<string | undefined> {
  const target = textOf(options, 'card');
  if (target === undefined) return good(undefined);
  if (target === '-') {
    const toStdout = textOf(options, 'output') === '-' || options.json === true;
    return toStdout
      ? bad('BAD_CALL', {
          text: '--card - and the answer cannot both go to stdout.',
          hint: 'Name a file for the card.',
        })
      : good(target);
  }
  const taken = [scan, textOf(options, 'shop'), textOf(options, 'output')];
  return taken.some((file) => file !== undefined && file !== '-' && resolve(file) === resolve(target))
    ? bad('BAD_CALL', {
        text: `--card "${target}" is a file that is read, or the answer: it would be lost.`,
        hint: 'Name another file.',
      })
    : good(target);
}

/** Throws CannotWrite. */
export function writeCard(
  target: string,
  { size, plan }: Opened,
  { options, io, version }: { options: OptionValues; io: Io; version: string },
): void {
  const [title, jobCode, date] = ['title', 'job', 'date'].map((name) => textOf(options, name));
  const html = openingCard(plan, {
    version,
    show: showOf(options),
    findings: size.findings,
    ...defined({ title, jobCode, date }),
  });
  if (target === '-') {
    io.out(html);
    return;
  }
  orCannotWrite(target, '--card', () => io.writeFile(target, html));
  if (options.quiet !== true && options.json !== true) io.note(`  Wrote       ${target}\n`);
}
