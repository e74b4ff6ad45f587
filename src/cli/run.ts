import { resolve } from 'node:path';
import { Command, CommanderError, Option } from 'commander';
import type { Problem } from '../problem';
import { COMMON_OPTIONS, textOf, type CommandSpec, type OptionSpec, type OptionValues } from './command';
import { COMMANDS } from './commands';
import { EXIT, type ExitCode } from './exit';
import type { Io } from './io';
import { CannotWrite, complain } from './report';

/** Runs one call of the program and returns its exit code; nothing here touches the process. */
export function run(args: readonly string[], io: Io, version: string): ExitCode | Promise<ExitCode> {
  let exit: ExitCode | Promise<ExitCode> = EXIT.answered;
  const program = new Command('risewright')
    .description('From a scan of a sculpt to the grams of A and B to weigh, before a bucket is opened.')
    .version(version)
    .exitOverride()
    .showSuggestionAfterError()
    .configureOutput({
      writeOut: io.out,
      writeErr: (text) => (args.includes('--json') ? undefined : io.note(text)),
    });
  for (const spec of COMMANDS)
    addCommand(
      program,
      spec,
      (ended) => {
        exit = ended;
      },
      io,
      version,
    );
  try {
    program.parse(args, { from: 'user' });
    const ended = exit as ExitCode | Promise<ExitCode>;
    return ended instanceof Promise ? ended.catch((e: unknown) => cannotWrite(e, [], io)) : ended;
  } catch (e) {
    if (e instanceof CannotWrite) return cannotWrite(e, args, io);
    if (!(e instanceof CommanderError)) throw e;
    if (e.exitCode === 0) return EXIT.answered;
    if (args.includes('--json')) {
      complain(
        {
          code: 'BAD_CALL',
          status: 'stop',
          values: { text: e.message.replace(/^error: /, ''), hint: 'See --help.' },
        },
        { json: true },
        io,
      );
    }
    return EXIT.badCall;
  }
}

/** A file that cannot be written is told; every other fault is thrown on. */
function cannotWrite(fault: unknown, args: readonly string[], io: Io): ExitCode {
  if (!(fault instanceof CannotWrite)) throw fault;
  return complain(fault.problem, { json: args.includes('--json') }, io);
}

type Done = (exit: ExitCode | Promise<ExitCode>) => void;

function addCommand(program: Command, spec: CommandSpec, done: Done, io: Io, version: string): void {
  const command = program
    .command(`${spec.name}${spec.operands === undefined ? '' : ` ${spec.operands}`}`)
    .description(spec.about);
  for (const option of [...spec.options, ...COMMON_OPTIONS]) command.addOption(optionOf(option));
  command.action((...params: unknown[]) => {
    const operands = params
      .slice(0, -2)
      .flat()
      .filter((x): x is string => typeof x === 'string');
    const options = params[params.length - 2] as OptionValues;
    const read = overwritten(operands, options);
    done(
      read === undefined
        ? spec.run({ operands, options, io, version })
        : complain(read, { ...options, output: undefined }, io),
    );
  });
}

/** Options that name a file to be read. */
const READ_BY = ['scan', 'core', 'shop'] as const;

/** An answer must not be written over a file it was read from. */
function overwritten(operands: readonly string[], options: OptionValues): Problem | undefined {
  const target = textOf(options, 'output');
  if (target === undefined || target === '-') return undefined;
  const read = [...operands, ...READ_BY.map((name) => textOf(options, name))];
  if (!read.some((file) => file !== undefined && file !== '-' && resolve(file) === resolve(target)))
    return undefined;
  return {
    code: 'BAD_CALL',
    status: 'stop',
    values: { text: `-o "${target}" is a file that is read: it would be lost.`, hint: 'Name another file.' },
  };
}

function optionOf({ flags, about, repeat, choices }: OptionSpec): Option {
  const option = new Option(flags, about);
  if (choices !== undefined) option.choices(choices);
  if (repeat === true)
    option.argParser((value: string, before: string[] | undefined) => [...(before ?? []), value]);
  return option;
}
