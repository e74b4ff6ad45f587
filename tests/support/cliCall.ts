import { run } from '../../src/cli/run';
import type { Io } from '../../src/cli/io';
import { sampleBytes } from './samples';

/** What one call of the command line did, with files in memory and no process. */
export interface Called {
  exit: number;
  out: string;
  notes: string;
  files: Map<string, string | Uint8Array>;
  folders: string[];
}

export interface Desk {
  files?: Readonly<Record<string, string | Uint8Array>>;
  /** What the disk says of the length of a file. */
  sizes?: Readonly<Record<string, number>>;
  stdin?: Uint8Array;
  isTerminal?: boolean;
  /** The disk refuses to be written to, with these words. */
  cannotWrite?: string;
}

/**
 * Sample meshes can be opened by their plain names.
 *
 * @param program another build of the program
 */
export function call(args: readonly string[], desk: Desk = {}, program = run): Called {
  const { called, exit } = begin(args, desk, program);
  if (exit instanceof Promise) throw new Error('call: this call takes its time, use callAsync');
  called.exit = exit;
  return called;
}

/** The same for a call that may take its time. */
export async function callAsync(args: readonly string[], desk: Desk = {}): Promise<Called> {
  const { called, exit } = begin(args, desk, run);
  called.exit = await exit;
  return called;
}

function begin(
  args: readonly string[],
  desk: Desk,
  program: typeof run,
): { called: Called; exit: ReturnType<typeof run> } {
  const called: Called = { exit: -1, out: '', notes: '', files: new Map(), folders: [] };
  const io: Io = {
    out: (text) => void (called.out += text),
    note: (text) => void (called.notes += text),
    readFile: (path) => {
      const file = desk.files?.[path];
      if (file !== undefined) return typeof file === 'string' ? new TextEncoder().encode(file) : file;
      return sampleBytes(path);
    },
    fileBytes: (path) => desk.sizes?.[path] ?? 0,
    readStdin: () => desk.stdin ?? new Uint8Array(),
    readSample: sampleBytes,
    exists: (path) => desk.files?.[path] !== undefined,
    makeFolder: (path) => void called.folders.push(path),
    writeFile: (path, data) => {
      if (desk.cannotWrite !== undefined) throw new Error(desk.cannotWrite);
      called.files.set(path, data);
    },
    replaceFile: (path, data) => {
      if (desk.cannotWrite !== undefined) throw new Error(desk.cannotWrite);
      called.files.set(path, data);
    },
    isTerminal: desk.isTerminal ?? false,
  };
  return { called, exit: program(args, io, '0.0.0-test') };
}

export interface Document {
  schema: string;
  inputs: Record<string, unknown>;
  assumptions: { name: string; value: unknown; unit: string; from: string; basis?: string }[];
  findings: {
    code: string;
    status: string;
    text: string;
    count?: number;
    effect_cm3?: number;
    at_mm?: number[];
  }[];
  result: Record<string, unknown>;
  range: Record<string, [number, number]>;
  because: string[];
  error?: { code: string; text: string; hint: string };
}

/** The JSON documents on stdout, one a line. */
export const documents = ({ out }: Called): Document[] =>
  out
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line) as Document);

export const document = (args: readonly string[], desk: Desk = {}): Document => {
  const called = call([...args, '--json'], desk);
  const [one, ...more] = documents(called);
  if (one === undefined || more.length > 0)
    throw new Error(`document: expected one document, got ${called.out}`);
  return one;
};
