import type { Problem } from '../problem';
import type { Show } from '../units';
import { say } from '../words/say';
import { textOf, type OptionValues } from './command';
import { errorJson } from './envelope';
import { exitOf, type ExitCode } from './exit';
import type { Io } from './io';
import { fileTrouble } from './fileTrouble';

export const showOf = (options: OptionValues): Show =>
  (textOf(options, 'show') as Show | undefined) ?? 'both';

/** The answer, to stdout or to the file of -o. */
export function answer(text: string, options: OptionValues, io: Io): void {
  const target = textOf(options, 'output');
  if (target === undefined || target === '-') {
    io.out(`${text}\n`);
    return;
  }
  try {
    io.writeFile(target, `${text}\n`);
  } catch (e) {
    throw new CannotWrite(target, fileTrouble(e));
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

/** The file of -o cannot be written: a wrong call, told by `run`. */
export class CannotWrite extends Error {
  readonly file: string;
  constructor(file: string, why: string) {
    super(`${file} cannot be written: ${why}`);
    this.file = file;
  }
}
