import type { Io } from './io';
import type { ExitCode } from './exit';

/** One option of a command, in the notation of the commander library. */
export interface OptionSpec {
  flags: string;
  about: string;
  /** May be given more than once; its value is then a list. */
  repeat?: boolean;
  choices?: readonly string[];
}

export type OptionValues = Record<string, string | boolean | string[] | undefined>;

/** A command is one file and one line in `commands/index.ts`. */
export interface CommandSpec {
  name: string;
  /** Operands in commander's notation: `<scan...>`. */
  operands?: string;
  about: string;
  options: readonly OptionSpec[];
  run: (call: {
    operands: string[];
    options: OptionValues;
    io: Io;
    /** Of the program. */
    version: string;
  }) => ExitCode | Promise<ExitCode>;
}

/** Options that every command takes. */
export const COMMON_OPTIONS: readonly OptionSpec[] = [
  { flags: '--shop <file>', about: 'material cards, kits, stock and scale of a shop (JSON)' },
  { flags: '--json', about: 'one JSON document on stdout, nothing else there' },
  { flags: '-o, --output <file>', about: 'write the answer to a file ("-" is stdout)' },
  { flags: '--quiet', about: 'no progress, no messages but errors' },
  { flags: '--no-input', about: 'never ask (it never does)' },
  { flags: '--no-color', about: 'plain text (it always is)' },
  { flags: '--show <system>', about: 'units shown', choices: ['metric', 'us', 'both'] },
  { flags: '--strict', about: 'exit 6 when a check says Stop' },
];

/** "file-unit" of the flags "--file-unit <unit>", and the key under which its value is. */
export const nameOfFlags = (flags: string): string => flags.slice(2).split(' ')[0]!;
export const keyOf = (name: string): string =>
  name.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase());

export const textOf = (options: OptionValues, name: string): string | undefined => {
  const value = options[name];
  return typeof value === 'string' ? value : undefined;
};
export const listOf = (options: OptionValues, name: string): string[] => {
  const value = options[name];
  return Array.isArray(value) ? value : typeof value === 'string' ? [value] : [];
};

/** Every one of these options that was given, as it was given, under its name with low lines. */
export function inputsGiven(options: OptionValues, specs: readonly OptionSpec[]): Record<string, unknown> {
  const given: Record<string, unknown> = {};
  for (const { flags } of specs) {
    const name = nameOfFlags(flags);
    const value = options[keyOf(name)];
    if (value !== undefined) given[name.replace(/-/g, '_')] = value;
  }
  return given;
}
