import type { Lattice } from './boardLayers';

/** Place (three numbers, mm) and unit normal (three) of the last `placeInCell`. */
export const NET = new Float64Array(6);

/** Steps toward the level; the second one has little left to do. */
const ROUNDS = 2;

/**
 * Bends of squared distances along an axis, by the square of the step: from a point or along a normal it is 2, along a flat 0, around a hollow less than that.
 * Beyond these there is a crease and no curve, which is not to be followed. Chosen here.
 */
const [LEAST_BEND, MOST_BEND] = [-1, 2.2];

/** Squared distances (plain ones, where some are none) at the corners over the level, corner bits x, y, z. */
const OVER = new Float64Array(8);
const BEND = new Float64Array(3);
/** Place in the cell, 0 to 1, and the slope there a cell. */
const AT = new Float64Array(3);
const SLOPE = new Float64Array(3);

/**
 * The vertex of cell (i, j, k), into NET: from the mean of where the level cuts the cell's edges onto the level itself. Between its corners the squared distance
 * is interpolated, linear with a bend along each axis: that is exact for the distance from a point, an edge and a face, where distances themselves lie up to
 * step^2 / 4 R off. On the board it only moves along it; under the body it is the middle of the cell.
 */
export function placeInCell(lattice: Lattice, levelMm: number, i: number, j: number, k: number): void {
  const { nx, ny, spacingMm, ox, oy, heights } = lattice;
  const corner = (k * ny + j) * nx + i;
  const tall = heights[k + 1]! - heights[k]!;
  const isOnBoard = tall === 0;
  AT.fill(0.5);
  if (!lookAtCorners(lattice, levelMm, corner, isOnBoard)) {
    SLOPE[0] = SLOPE[1] = 0;
    SLOPE[2] = -1;
  } else {
    toMeanCrossing();
    for (let round = 0; round < ROUNDS; round++) {
      bendNear(lattice, corner, isOnBoard);
      stepToLevel();
    }
    slopeAt();
  }
  NET[0] = ox + (i + AT[0]!) * spacingMm;
  NET[1] = oy + (j + AT[1]!) * spacingMm;
  NET[2] = heights[k]! + AT[2]! * tall;
  setNormal(isOnBoard ? spacingMm : tall, spacingMm);
}

/** All corners are of the body's own outside: then their squares are interpolated. */
let isSquared = false;

/** False where all of them are inside: under the body. There nothing is below the board, and the values on it count for both. */
function lookAtCorners(
  { nx, ny, values }: Lattice,
  levelMm: number,
  corner: number,
  isOnBoard: boolean,
): boolean {
  const plane = nx * ny;
  isSquared = levelMm > 0;
  for (let c = 0; c < 8; c++) {
    const up = isOnBoard || (c & 4) !== 0 ? plane : 0;
    OVER[c] = values[corner + (c & 1) + (c & 2 ? nx : 0) + up]!;
    if (OVER[c]! <= 0) isSquared = false;
  }
  let outside = 0;
  for (let c = 0; c < 8; c++) {
    const far = OVER[c]!;
    // As the marks of inside and outside have it, to the last bit.
    OVER[c] = isSquared ? (far - levelMm) * (far + levelMm) : far - levelMm;
    if (far > levelMm) outside++;
  }
  return outside > 0;
}

function setNormal(tall: number, wide: number): void {
  const z = (SLOPE[2]! * wide) / tall;
  const length = Math.hypot(SLOPE[0]!, SLOPE[1]!, z) || 1;
  NET[3] = SLOPE[0]! / length;
  NET[4] = SLOPE[1]! / length;
  NET[5] = z / length;
}

/** Mean of the places where the twelve edges cross the level, into AT. */
function toMeanCrossing(): void {
  let count = 0;
  let x = 0;
  let y = 0;
  let z = 0;
  for (let c = 0; c < 8; c++)
    for (let axis = 0; axis < 3; axis++) {
      const bit = 1 << axis;
      if ((c & bit) !== 0) continue;
      const from = OVER[c]!;
      const to = OVER[c | bit]!;
      if (from <= 0 === to <= 0) continue;
      const t = from / (from - to);
      count++;
      x += axis === 0 ? t : c & 1;
      y += axis === 1 ? t : (c >> 1) & 1;
      z += axis === 2 ? t : (c >> 2) & 1;
    }
  AT[0] = x / count;
  AT[1] = y / count;
  AT[2] = z / count;
}

/** Second differences, a cell's length apart, at the corner of the cell nearest to AT, into BEND; 0 across a crease. */
function bendNear(
  { nx, ny, values, spacingMm, evenFrom }: Lattice,
  corner: number,
  isOnBoard: boolean,
): void {
  BEND.fill(0);
  if (!isSquared) return;
  const plane = nx * ny;
  const up = isOnBoard || AT[2]! > 0.5 ? plane : 0;
  const v = corner + (AT[0]! > 0.5 ? 1 : 0) + (AT[1]! > 0.5 ? nx : 0) + up;
  setBend(0, values[v]!, values[v - 1]!, values[v + 1]!, spacingMm);
  setBend(1, values[v]!, values[v - nx]!, values[v + nx]!, spacingMm);
  if (isOnBoard) return;
  // Upright: at the first layer over the board, half a step up, for what is below it too.
  const k = Math.max(Math.floor(v / plane), evenFrom - 1);
  const w = (v % plane) + k * plane;
  const isFirst = evenFrom > 1 && k === evenFrom - 1;
  setBend(2, values[w]!, values[w - plane]!, values[w + plane]!, spacingMm, isFirst);
  if (corner < k * plane && isFirst) BEND[2]! /= 4;
}

/** @param isHalf the value before is half a step away, not a step */
function setBend(
  axis: number,
  here: number,
  before: number,
  after: number,
  step: number,
  isHalf = false,
): void {
  if (before <= 0 || after <= 0) return;
  const rise = after * after - here * here;
  const fall = before * before - here * here;
  const bend = isHalf ? (4 / 3) * (rise + 2 * fall) : rise + fall;
  const share = bend / (step * step);
  if (share > LEAST_BEND && share < MOST_BEND) BEND[axis] = bend;
}

/** Slope at AT, into SLOPE. */
function slopeAt(): void {
  const x = AT[0]!;
  const y = AT[1]!;
  const z = AT[2]!;
  SLOPE[0] =
    (1 - z) * ((1 - y) * (OVER[1]! - OVER[0]!) + y * (OVER[3]! - OVER[2]!)) +
    z * ((1 - y) * (OVER[5]! - OVER[4]!) + y * (OVER[7]! - OVER[6]!));
  SLOPE[1] =
    (1 - z) * ((1 - x) * (OVER[2]! - OVER[0]!) + x * (OVER[3]! - OVER[1]!)) +
    z * ((1 - x) * (OVER[6]! - OVER[4]!) + x * (OVER[7]! - OVER[5]!));
  SLOPE[2] =
    (1 - y) * ((1 - x) * (OVER[4]! - OVER[0]!) + x * (OVER[5]! - OVER[1]!)) +
    y * ((1 - x) * (OVER[6]! - OVER[2]!) + x * (OVER[7]! - OVER[3]!));
  for (let axis = 0; axis < 3; axis++) SLOPE[axis]! -= ((1 - 2 * AT[axis]!) * BEND[axis]!) / 2;
}

/** One step from AT along the slope onto the level, kept within the cell. */
function stepToLevel(): void {
  slopeAt();
  const x = AT[0]!;
  const y = AT[1]!;
  const z = AT[2]!;
  const low = (1 - y) * ((1 - x) * OVER[0]! + x * OVER[1]!) + y * ((1 - x) * OVER[2]! + x * OVER[3]!);
  const high = (1 - y) * ((1 - x) * OVER[4]! + x * OVER[5]!) + y * ((1 - x) * OVER[6]! + x * OVER[7]!);
  let over = (1 - z) * low + z * high;
  for (let axis = 0; axis < 3; axis++) over -= (AT[axis]! * (1 - AT[axis]!) * BEND[axis]!) / 2;
  const length2 = SLOPE[0]! ** 2 + SLOPE[1]! ** 2 + SLOPE[2]! ** 2;
  if (length2 === 0) return;
  for (let axis = 0; axis < 3; axis++)
    AT[axis] = Math.min(1, Math.max(0, AT[axis]! - (over * SLOPE[axis]!) / length2));
}
