import { readFileSync, writeFileSync } from 'node:fs';
import { availableParallelism, cpus } from 'node:os';
import { join } from 'node:path';

/** One line of the table: what was measured, against what, and what was wanted of it. */
export interface Row {
  what: string;
  /** The median, or for memory the most. */
  ours: number;
  unit: 's' | 'ms' | 'MB' | 'times' | '%';
  /** What ran in the same run, and our time over its time. */
  baseline?: string;
  ratio?: number;
  /** Which of the two columns this is a limit of, and the limit. */
  wanted?: { of: 'ours' | 'ratio'; atMost: number } | { of: 'ours'; atLeast: number };
}

/** The middle of the numbers; of an even count the lower of the two. */
export function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[(values.length - 1) >> 1]!;
}

export const verdict = (ok: boolean): string => (ok ? 'ok' : 'NOT MET');

/** Whether a line keeps what was wanted of it; undefined where nothing was, or nothing was measured to hold against it. */
export function isMet({ ours, ratio, wanted }: Row): boolean | undefined {
  if (wanted === undefined) return undefined;
  const value = wanted.of === 'ours' ? ours : ratio;
  if (value === undefined) return undefined;
  return 'atMost' in wanted ? value <= wanted.atMost : value >= wanted.atLeast;
}

export const versionOf = (root: string): string =>
  (JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string }).version;

export const machineHere = (): string =>
  `Node ${process.version}, ${availableParallelism()} cores, ${cpus()[0]?.model ?? 'unknown processor'}, ${process.platform} ${process.arch}`;

/** Where the single measurements of one bench stand. */
export const resultsFile = (root: string, bench: string): string =>
  join(root, 'bench', 'results', `${bench}-${versionOf(root)}.json`);

/** Writes the single measurements with the lines they come to. */
export function keepResults(root: string, bench: string, rows: readonly Row[], measured: object): void {
  const whole = { version: versionOf(root), machine: machineHere(), rows, ...measured };
  writeFileSync(resultsFile(root, bench), `${JSON.stringify(whole, null, 2)}\n`);
}
