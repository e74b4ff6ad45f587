import type { Bounds } from '../triangleMesh';

/** Cells of free air left around the level: the outermost cell would close what reaches it. */
const MARGIN_CELLS = 2;

/** Most grid samples of one level: 512 MiB of float64; a ball then takes 34 million distances, 17 s. Chosen here. */
const MOST_SAMPLES = 2 ** 26;

export interface LevelGrid {
  /** Whole cells on every axis. */
  box: Bounds;
  edgeMm: number;
}

export interface LevelPlace {
  /** Where level 0 lies. */
  bounds: Bounds;
  levelMm: number;
  edgeMm: number;
  baseMm?: number | undefined;
}

/**
 * The grid around one level; undefined where no room is left for it. A level t outside lies within the bounds grown by t,
 * and t inside within the bounds shrunk by t: the field is a distance. Below the base little is needed, it is cut away.
 */
export function gridAround({ bounds, levelMm, edgeMm, baseMm }: LevelPlace): LevelGrid | undefined {
  const around = levelMm + MARGIN_CELLS * edgeMm;
  const box: Bounds = {
    min: bounds.min.map((x) => x - around) as Bounds['min'],
    max: bounds.max.map((x) => x + around) as Bounds['max'],
  };
  if (baseMm !== undefined) box.min[2] = Math.max(box.min[2], baseMm - MARGIN_CELLS * edgeMm);
  for (const k of [0, 1, 2] as const) {
    const size = box.max[k] - box.min[k];
    if (!(size > 0)) return undefined;
    const spare = edgeMm * Math.ceil(size / edgeMm) - size;
    box.min[k] -= spare / 2;
    box.max[k] += spare / 2;
  }
  if (samplesOf(box, edgeMm) > MOST_SAMPLES)
    throw new Error(`gridAround: expected an edge of finestEdgeMm or more, got ${edgeMm} mm`);
  return { box, edgeMm };
}

/** The finest edge a level of this size can be meshed with here, in mm, to within 1 %. */
export function finestEdgeMm(place: Omit<LevelPlace, 'edgeMm'>): number {
  const growth = Math.max(0, place.levelMm);
  const sizes = [0, 1, 2].map((k) => place.bounds.max[k]! - place.bounds.min[k]! + 2 * growth);
  let edgeMm = Math.max(...sizes) / 1000;
  while (samplesFor(sizes.map((size) => size / edgeMm + 2 * MARGIN_CELLS + 1)) > MOST_SAMPLES) edgeMm *= 1.01;
  return edgeMm;
}

function samplesOf({ min, max }: Bounds, edgeMm: number): number {
  return samplesFor([0, 1, 2].map((k) => (max[k]! - min[k]!) / edgeMm));
}

/**
 * What the library lays out for so many cells: two shifted cubic grids (body-centered), three layers more than cells, and
 * its y and z axes rounded up to powers of two (read in its source, sdf.cpp of version 3).
 */
const samplesFor = ([x, y, z]: readonly number[]): number =>
  2 * (x! + 4) * 2 ** Math.ceil(Math.log2(y! + 4)) * 2 ** Math.ceil(Math.log2(z! + 4));
