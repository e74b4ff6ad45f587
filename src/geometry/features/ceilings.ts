import type { Vector } from '../vector';
import { pointOf, type Columns } from './columns';
import type { Mouth } from './mouth';
import { runsInMouth } from './openRuns';
import type { PourColumns } from './pourColumns';
import { eachAlone, partOf } from '../parts';

/** Ceilings so nearly level that foam laps over air under them, though a level liquid would drive it out. */
export interface FlatCeilings {
  areaMm2: number;
  /** The largest that hangs together, and the middle of it. */
  largest: { areaMm2: number; atMm: Vector } | undefined;
}

/** Flatter than this many degrees: common practice, no source. */
export const FLAT_DEGREES = 10;

/** A patch smaller than this is a summit like any other. Chosen here: 1 cm2. */
const LEAST_PATCH_MM2 = 100;

/** Ceilings within FLAT_DEGREES of level, the opening left out. */
export function flatCeilings(pour: PourColumns, mouth: Mouth | undefined): FlatCeilings {
  const { body, columns, links, heights } = pour;
  const isFlat = flatRuns(pour);
  if (mouth !== undefined) for (const run of runsInMouth(columns, body.axes, mouth)) isFlat[run] = 0;
  const parent = eachAlone(columns.count);
  const { highMm, grid } = columns;
  for (let i = 0; i < links.count; i++) {
    const [a, b] = [links.a[i]!, links.b[i]!];
    if (isFlat[a] === 0 || isFlat[b] === 0) continue;
    if (Math.abs(highMm[a]! - highMm[b]!) < grid.stepMm / 2) parent[partOf(parent, b)] = partOf(parent, a);
  }
  const patches = new Map<number, number[]>();
  for (let run = 0; run < columns.count; run++) {
    if (isFlat[run] === 0) continue;
    const part = partOf(parent, run);
    const patch = patches.get(part);
    if (patch === undefined) patches.set(part, [run]);
    else patch.push(run);
  }
  const wide = [...patches.values()].filter((patch) => patch.length * heights.crossMm2 >= LEAST_PATCH_MM2);
  const largest = wide.reduce<number[] | undefined>(
    (best, patch) => (best === undefined || patch.length > best.length ? patch : best),
    undefined,
  );
  return {
    areaMm2: wide.reduce((sum, patch) => sum + patch.length, 0) * heights.crossMm2,
    largest:
      largest === undefined
        ? undefined
        : { areaMm2: largest.length * heights.crossMm2, atMm: middleOf(pour, largest) },
  };
}

/** 1 for runs whose roof faces up within FLAT_DEGREES. */
function flatRuns({ body: { mesh }, columns }: PourColumns): Uint8Array {
  const least = Math.cos((FLAT_DEGREES * Math.PI) / 180);
  const isFlat = new Uint8Array(columns.count);
  const { positions: p, triangles } = mesh;
  for (let run = 0; run < columns.count; run++) {
    const t = columns.roof[run]!;
    const [a, b, c] = [3 * triangles[t]!, 3 * triangles[t + 1]!, 3 * triangles[t + 2]!];
    const [hb, ub, vb] = [p[b]! - p[a]!, p[b + 1]! - p[a + 1]!, p[b + 2]! - p[a + 2]!];
    const [hc, uc, vc] = [p[c]! - p[a]!, p[c + 1]! - p[a + 1]!, p[c + 2]! - p[a + 2]!];
    const up = ub * vc - vb * uc;
    if (up > least * Math.hypot(up, vb * hc - hb * vc, hb * uc - ub * hc)) isFlat[run] = 1;
  }
  return isFlat;
}

/** The run of a patch nearest to its middle, seen from above. */
function middleOf({ body, columns }: PourColumns, patch: readonly number[]): Vector {
  const { grid, column, highMm }: Columns = columns;
  const place = (run: number): number => column[run]! % grid.columns;
  const row = (run: number): number => Math.floor(column[run]! / grid.columns);
  const mean = (of: (run: number) => number): number =>
    patch.reduce((sum, run) => sum + of(run), 0) / patch.length;
  const [i, j] = [mean(place), mean(row)];
  const away = (run: number): number => Math.hypot(place(run) - i, row(run) - j);
  const run = patch.reduce((best, one) => (away(one) < away(best) ? one : best));
  return pointOf(body.axes, grid, column[run]!, highMm[run]!);
}
