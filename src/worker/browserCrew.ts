import type { Crew } from '../geometry';

/** The part of a Worker that is used here. */
export interface HelperLike {
  postMessage(message: unknown): void;
  onmessage: ((event: MessageEvent) => void) | null;
}

/** Helpers that are started at most. Chosen here: beyond it the memory they take side by side outweighs what they save. */
const MOST_HELPERS = 3;

/**
 * Starts helpers of the page's worker. Those that have said they are ready help; until then (their word comes only after the measure
 * that started them), and where the page may not share memory (it must be served with two headers, see vite.config.ts), the worker
 * does all of it alone.
 */
export function startBrowserCrew(
  spawn: () => HelperLike,
  scope: { isIsolated: boolean; cores: number },
): Crew | undefined {
  if (!scope.isIsolated) return undefined;
  const ready: HelperLike[] = [];
  for (let i = 0; i < Math.min(MOST_HELPERS, scope.cores - 1); i++) {
    const helper = spawn();
    helper.onmessage = () => void ready.push(helper);
  }
  return {
    get helpers() {
      return ready.length;
    },
    begin: (task) =>
      ready.slice(0, task.size - 1).forEach((helper, i) => helper.postMessage({ task, id: i + 1 })),
  };
}
