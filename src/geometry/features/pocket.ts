/** Runs of a body with the heights of their ends. */
export interface RunHeights {
  count: number;
  topMm: Float64Array;
  bottomMm: Float64Array;
  /** What every run is across, seen from above, mm2. */
  crossMm2: number;
}

/** Runs that open to the outside, and the height up to which they do. */
export interface OpenRuns {
  run: number[];
  levelMm: number[];
}

export interface Pocket {
  saddleMm: number;
  /** The run that reaches highest. */
  topRun: number;
  volumeMm3: number;
  /** Of the saddle's level within the pocket. */
  levelMm2: number;
  /** All of it, every one with its top above the saddle. */
  runs: Int32Array;
  /** Where it meets the open part: a run of the pocket, and one of the open part; -1 where it meets the opening itself. */
  innerRun: number;
  outerRun: number;
}

export interface Pockets {
  pockets: Pocket[];
  /** Pockets smaller than asked for, as one sum. */
  smaller: { count: number; volumeMm3: number };
  /** Parts that meet nothing that is open: pieces of their own. */
  apart: { topRun: number; volumeMm3: number }[];
}

/** Heights closer than this, mm, are the same but for rounding: a lid of a turned body is no staircase. */
export const SAME_HEIGHT_MM = 1e-9;
