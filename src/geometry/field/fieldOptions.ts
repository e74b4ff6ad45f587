import type { Crew } from '../parallel/crew';
import type { FieldTask } from './fieldTask';

export interface FieldOptions {
  /** Edge of the fine voxels, mm. */
  voxelMm: number;
  /** Levels that will be asked for: the grid and the seeds reach that far. Negative inside. */
  levelsMm: readonly number[];
  /** Everything below this height is left out; the grid is laid so that it costs no accuracy. */
  baseMm?: number;
  /** Helping threads; without them the caller's thread does all of it. */
  crew?: Crew;
  onProgress?: (share: number) => void;
  /** Looked at about every 10 ms; true stops the work with the code STOPPED. */
  shouldStop?: () => boolean;
  /** Called with the milliseconds of every stage, one row a thread. */
  onTimings?: (kind: FieldTask['kind'], timings: Float64Array) => void;
}
