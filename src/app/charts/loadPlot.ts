import type * as plotKit from './plotKit';

export type PlotKit = typeof plotKit;

let loaded: Promise<PlotKit> | undefined;

/** The drawing library, fetched once. A fetch that failed is tried again by the next chart. */
export function loadPlot(): Promise<PlotKit> {
  loaded ??= import('./plotKit').catch((fault: unknown) => {
    loaded = undefined;
    throw fault;
  });
  return loaded;
}
