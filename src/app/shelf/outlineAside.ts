import type { Outline } from '../../job/seen';
import type { Facets } from './outline.worker';

/** The outline of a picture, drawn by a thread of its own; undefined where there is none to draw. */
export function outlineAside({ positions, index }: Facets): Promise<Outline | undefined> {
  const worker = new Worker(new URL('./outline.worker.ts', import.meta.url), { type: 'module' });
  return new Promise<Outline | undefined>((resolve) => {
    // A Shelf without a drawing works as well.
    worker.onerror = () => resolve(undefined);
    worker.onmessage = ({ data }: MessageEvent<Outline | undefined>) => resolve(data);
    worker.postMessage({ positions, index } satisfies Facets);
  }).finally(() => worker.terminate());
}
