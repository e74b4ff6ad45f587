import type { Problem } from '../problem';
import type { Show } from '../units';
import { say } from '../words/say';
import { textOf, type OptionValues } from './command';
import { errorJson } from './envelope';
import { EXIT, exitOf, type ExitCode } from './exit';
import type { Io } from './io';
import { fileTrouble } from './fileTrouble';

export const showOf = (options: OptionValues): Show =>
  (textOf(options, 'show') as Show | undefined) ?? 'both';

/** The exit code of an answer: with --strict a check that says Stop counts. */
export const exitOfAnswer = (findings: readonly Problem[], options: OptionValues): ExitCode =>
  options.strict === true && findings.some((f) => f.status === 'stop') ? EXIT.strictStop : EXIT.answered;

/** The answer, to stdout or to the file of -o. */
export function answer(text: string, options: OptionValues, io: Io): void {
  const target = textOf(options, 'output');
  if (target === undefined || target === '-') {
    io.out(`${text}\n`);
    return;
  }
  orCannotWrite(target, '-o', () => io.writeFile(target, `${text}\n`));
}

/** Runs what writes; the disk's refusal becomes a `CannotWrite`. `instead`: what to name another one of. */
export function orCannotWrite(file: string, instead: string, write: () => void): void {
  try {
    write();
  } catch (e) {
    throw new CannotWrite({ file, why: fileTrouble(e), instead });
  }
}

/** No answer: what, where, how far off, what to do. To stderr in words, or to stdout as JSON. */
export function complain(problem: Problem, options: OptionValues, io: Io, file?: string): ExitCode {
  if (options.json === true) answer(errorJson(problem, file), options, io);
  else {
    const { text, hint } = say(problem);
    io.note(`${file === undefined ? '' : `${file}: `}${text}\n  ${hint}\n`);
  }
  return exitOf(problem.code);
}

/** A file cannot be written: a wrong call, told by `run`, and never to that file. */
export class CannotWrite extends Error {
  readonly problem: Problem;
  constructor(values: { file: string; why: string; instead: string }) {
    super(`${values.file} cannot be written: ${values.why}`);
    this.problem = { code: 'CANNOT_WRITE_FILE', status: 'stop', values };
  }
}
