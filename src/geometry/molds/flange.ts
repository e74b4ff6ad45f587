import type { Field } from '../field/buildField';
import { areaWithin, distanceAt, growRegion, perimeterAt } from '../plane/growRegion';
import { outlineOf, valuesOnBoard } from './boardOutline';
import { placeIn, type SweptBody } from './sweptBody';
import { fractionAt } from './volumeWithin';

/*
 * A flange lies on the board around the rubber: `widthMm` beyond its outline there (that of the rubber with its undercuts filled), `thickMm` high. The jacket
 * covers it as thick as everything else. Both are counted as what they add: rubber where there is none yet, jacket where neither is.
 */
export interface Flange {
  /** Rubber that the flange adds. */
  rubberMm3: number;
  /** Jacket that its cover adds, less what the flange takes of the jacket around the rubber. */
  jacketMm3: number;
  /** Length of the outline of the rubber on the board. */
  outlineMm: number;
  /** Area of the flange on the board. */
  areaMm2: number;
}

export interface FlangeWish {
  skinMm: number;
  jacketMm: number;
  widthMm: number;
  thickMm: number;
}

/** @param field with a base: the board */
export function flangeOf(field: Field, body: SweptBody, wish: FlangeWish): Flange {
  const { skinMm, jacketMm, widthMm, thickMm } = wish;
  const { sheared, swept } = body;
  const { grid } = field;
  const step = sheared.spacingMm;
  const boardMm = grid.oz + (grid.firstPlane - 0.5) * grid.spacingMm;
  const segments = outlineOf(valuesOnBoard(sheared, swept, { ...grid, boardMm }), skinMm);
  const region = growRegion(segments, { cellMm: 2 * step });
  const outlineMm = perimeterAt(region, 0);
  if (widthMm === 0) return { rubberMm3: 0, jacketMm3: 0, outlineMm, areaMm2: 0 };
  const coverage = coverageOnBoard(grid, (x, y) => distanceAt(region, x, y), widthMm);
  // The whole slab by its exact area, less what is there already: the grid need not reach as far as the flange.
  const slabMm2 = areaWithin(region, widthMm);
  let rubberThere = 0;
  let jacketThere = 0;
  forEachLow(body, thickMm + jacketMm, (v, place, lowMm, highMm) => {
    const jacketed = fractionAt(sheared, swept, v, skinMm + jacketMm);
    if (jacketed === 0) return;
    const covered = coverage(place[0], place[1]) * (highMm - lowMm);
    if (covered === 0) return;
    const filled = fractionAt(sheared, swept, v, skinMm);
    rubberThere += filled * covered * shareWithin(lowMm, highMm, thickMm);
    jacketThere += jacketed * covered * shareWithin(lowMm, highMm, thickMm + jacketMm);
  });
  const rubberMm3 = Math.max(0, slabMm2 * thickMm - rubberThere * step * step);
  const coverMm3 = slabMm2 * (thickMm + jacketMm) - jacketThere * step * step;
  return { rubberMm3, jacketMm3: coverMm3 - rubberMm3, outlineMm, areaMm2: slabMm2 - areaWithin(region, 0) };
}

/** Share of the stretch from `lowMm` to `highMm` that lies below `topMm`. */
const shareWithin = (lowMm: number, highMm: number, topMm: number): number =>
  Math.min(1, Math.max(0, (topMm - lowMm) / (highMm - lowMm)));

/** Every voxel up to a height over the board, with its place in the grid and the heights it spans there, mm. */
function forEachLow(
  { sheared }: SweptBody,
  topMm: number,
  each: (v: number, place: readonly [number, number, number], lowMm: number, highMm: number) => void,
): void {
  const { nu, nv, nw, spacingMm, height } = sheared;
  if (height === undefined) return;
  const { atZero, perU, perV, perW } = height;
  for (let k = 1; k < nw - 1; k++)
    for (let j = 1; j < nv - 1; j++)
      for (let i = 1; i < nu - 1; i++) {
        const over = atZero + perU * i + perV * j + perW * k;
        if (over <= -1 || over * spacingMm >= topMm) continue;
        const low = Math.max(0, over) * spacingMm;
        each((k * nv + j) * nu + i, placeIn(sheared, i, j, k), low, (over + 1) * spacingMm);
      }
}

/** How much of a voxel's plan lies within the flange, by the distance at grid points and lines between them. */
function coverageOnBoard(
  { nx, ny, ox, oy, spacingMm }: Field['grid'],
  distanceTo: (x: number, y: number) => number,
  widthMm: number,
): (x: number, y: number) => number {
  // Worked out where it is asked for: most of the board is far from the rubber.
  const distances = new Float32Array(nx * ny).fill(NaN);
  const known = (p: number): number => {
    if (Number.isNaN(distances[p]!))
      distances[p] = distanceTo(ox + (p % nx) * spacingMm, oy + Math.floor(p / nx) * spacingMm);
    return distances[p]!;
  };
  return (x, y) => {
    const u = (x - ox) / spacingMm;
    const v = (y - oy) / spacingMm;
    const i = Math.min(nx - 2, Math.max(0, Math.floor(u)));
    const j = Math.min(ny - 2, Math.max(0, Math.floor(v)));
    const [a, b] = [u - i, v - j];
    const p = j * nx + i;
    const distance =
      (1 - a) * (1 - b) * known(p) +
      a * (1 - b) * known(p + 1) +
      (1 - a) * b * known(p + nx) +
      a * b * known(p + nx + 1);
    return Math.min(1, Math.max(0, 0.5 - (distance - widthMm) / spacingMm));
  };
}
