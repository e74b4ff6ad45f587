/** What the passes keep for every level asked for. Distances are signed, mm: negative inside. */
export interface Levels {
  levelsMm: Float64Array;
  /** So many of them, from the first, are counted by octants too; the others are checks. */
  withOctants: number;
  /** By squared distance of the seed in grid steps: 1 where a voxel may lie near a level, outside and inside. */
  nearOutside: Uint8Array;
  nearInside: Uint8Array;
  /** How many voxels are far from every level, by the same distance. */
  farOutside: Float64Array;
  farInside: Float64Array;
  /** SUMS numbers a level. */
  sums: Float64Array;
}

/**
 * Columns of voxels over the surface are dealt into this many bins by a hash of where their feet lie; the first SAMPLED are counted
 * by octants at first, the others only if those show that it matters. An eighth, in sixteen parts to see their scatter. Chosen here.
 */
export const BINS = 128;
export const SAMPLED = 16;

/**
 * Places in the sums of a level. Counts of voxels: `full` whole ones, `share` plane fractions, `bend` their second difference, `slope`
 * their first; `clipped` what a second front changed; `rest` octants of the columns that are not in the sample; from `bins` on, for every sampled bin its octants, share and bend.
 */
export const SUM = { full: 0, share: 1, bend: 2, slope: 3, clipped: 4, rest: 5, bins: 6 } as const;
export const BIN = { octants: 0, share: 1, bend: 2, width: 3 } as const;
export const SUMS = SUM.bins + BIN.width * SAMPLED;

/** Half the diagonal of a unit cube: a plane farther from the center does not cut it. */
export const HALF_DIAGONAL = Math.sqrt(3) / 2;

/** How far from a level a coarse voxel (edge `stepMm`) still counts into its second difference. */
export const marginMm = (stepMm: number): number => HALF_DIAGONAL * stepMm + stepMm / 2;

/** Does one of the first `count` levels lie within the margin of a signed distance, mm? */
export function isNearAny(levelsMm: Float64Array, count: number, signedMm: number, margin: number): boolean {
  for (let l = 0; l < count; l++) {
    const over = signedMm - levelsMm[l]!;
    if (over < margin && over > -margin) return true;
  }
  return false;
}

export function newLevels(levelsMm: readonly number[], withOctants: number, stepMm: number): Levels {
  const margin = marginMm(stepMm);
  const most = Math.max(0, ...levelsMm.map(Math.abs));
  const top = Math.ceil((most + margin) / stepMm + 2) ** 2;
  const levels: Levels = {
    levelsMm: Float64Array.from(levelsMm),
    withOctants,
    nearOutside: new Uint8Array(top + 1),
    nearInside: new Uint8Array(top + 1),
    farOutside: new Float64Array(top + 1),
    farInside: new Float64Array(top + 1),
    sums: new Float64Array(SUMS * levelsMm.length),
  };
  // The seed's distance and the true one differ by a step at most.
  const slack = margin + stepMm;
  for (let d2 = 0; d2 < top; d2++) {
    const away = Math.sqrt(d2) * stepMm;
    if (levelsMm.some((level) => Math.abs(away - level) <= slack)) levels.nearOutside[d2] = 1;
    if (levelsMm.some((level) => Math.abs(-away - level) <= slack)) levels.nearInside[d2] = 1;
  }
  return levels;
}

/** Adds the far voxels: whole inside a level, or whole outside. */
export function addFarVoxels({ levelsMm, farOutside, farInside, sums }: Levels, stepMm: number): void {
  levelsMm.forEach((level, l) => {
    for (let d2 = 0; d2 < farInside.length; d2++) {
      const away = Math.sqrt(d2) * stepMm;
      if (-away <= level) sums[SUMS * l + SUM.full]! += farInside[d2]!;
      if (away <= level) sums[SUMS * l + SUM.full]! += farOutside[d2]!;
    }
  });
}
