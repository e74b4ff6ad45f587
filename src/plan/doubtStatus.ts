import type { Status } from '../problem';

/** Below the first share of the volume a doubt is *Fine*, above the second *Stop*. Chosen here, to match what a good cup test leaves. */
export const LOOK_SHARE = 0.01;
export const STOP_SHARE = 0.1;

export const statusOf = (share: number): Status =>
  share <= LOOK_SHARE ? 'fine' : share <= STOP_SHARE ? 'look' : 'stop';
