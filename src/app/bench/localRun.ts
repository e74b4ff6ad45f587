import { readRun, type BenchRun } from '../../job/benchState';
import { isRecord } from '../../job/json';
import type { Anchor, Doubt } from './clock';

/** What this browser keeps of a pour at once, before the store has it: every press, and where the clock stood. */
export interface LocalRun {
  run: BenchRun;
  anchor?: Anchor;
}

/** What the keys of all pours begin with. */
export const RUN_KEY = 'risewright bench ';

/** Takes every pour out of what the browser keeps at once. */
export function forgetRuns(kept: Pick<Storage, 'length' | 'key' | 'removeItem'>): void {
  const keys = Array.from({ length: kept.length }, (_, n) => kept.key(n));
  for (const key of keys) if (key?.startsWith(RUN_KEY) === true) kept.removeItem(key);
}

/** As it was written; undefined where it is not there or cannot be read. */
export function readLocalRun(text: string | null): LocalRun | undefined {
  const json = parsed(text);
  const run = isRecord(json) ? readRun(json.run) : undefined;
  if (run === undefined) return undefined;
  const anchor = readAnchor((json as Record<string, unknown>).anchor);
  return { run, ...(anchor === undefined ? {} : { anchor }) };
}

export const localRunText = (local: LocalRun): string => JSON.stringify(local);

/** Where the clock last stood. Of a run without its anchor (another browser, a cleared one): at its last press. */
export function anchorFor({ run, anchor }: LocalRun): Anchor | undefined {
  const last = run.presses.at(-1) ?? run.undone;
  if (last === undefined || anchor !== undefined) return anchor;
  const { wallMs, elapsedMs } = last;
  return { wallMs, elapsedMs, beganMs: wallMs - elapsedMs, doubts: [] };
}

function parsed(text: string | null): unknown {
  try {
    return text === null ? undefined : JSON.parse(text);
  } catch {
    return undefined;
  }
}

const isNumber = (json: unknown): json is number => typeof json === 'number' && Number.isFinite(json);

function readAnchor(json: unknown): Anchor | undefined {
  if (!isRecord(json)) return undefined;
  const { wallMs, elapsedMs, beganMs, doubts } = json;
  if (!isNumber(wallMs) || !isNumber(elapsedMs) || elapsedMs < 0 || !isNumber(beganMs)) return undefined;
  return { wallMs, elapsedMs, beganMs, doubts: Array.isArray(doubts) ? doubts.filter(isDoubt) : [] };
}

const isDoubt = (json: unknown): json is Doubt =>
  isRecord(json) &&
  isNumber(json.aheadMs) &&
  (json.taken === 'running' || json.taken === 'day') &&
  (json.because === 'hidden' || json.because === 'awake' || json.because === 'cannot tell');
