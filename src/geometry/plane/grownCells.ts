import type { WindingRegion } from '../measure/windingRegion';
import { signedDistance, type GrownRegion } from './regionDistance';
import { lineLength, lineShare } from './lineShare';
import type { Nearest, PieceTree } from './nearestPiece';

/*
 * The distance is known exactly wherever it is asked for, so no grid of it is kept: a square around all is quartered, and what is
 * farther from the boundary than its own corners needs no second look. A cell on the boundary counts as cut by a straight line.
 */

/** A corner of a cell may be this share of `cellMm` off the straight line before the cell is split. Chosen here. */
const BEND_SHARE = 0.005;

/**
 * Cells are split down to this share of `cellMm`. Chosen here: at 1/32 perimeters with needles of a degree or slits just open were
 * up to 3.6 % short, now 0.5 %; only such places take longer.
 */
const LEAST_SHARE = 1 / 256;

/** Golden-ratio offset: keeps cells off the round coordinates of modeled parts. */
const OFFSET = 0.3819660113;

/** A square cell of the region grown by `growMm`: its center, side and what is known there. */
export interface Cell {
  u: number;
  v: number;
  sideMm: number;
  /** From the center to the grown boundary, negative inside. */
  distanceMm: number;
}

/** Area and boundary of the region grown by `growMm`. */
export function measureCells(region: GrownRegion, growMm: number): WindingRegion {
  const sum = { areaMm2: 0, perimeterMm: 0 };
  quarter(region, growMm, rootCell(region, growMm), {
    inside: ({ sideMm }) => (sum.areaMm2 += sideMm * sideMm),
    edge: (cell, nearest) => addEdge(region, growMm, cell, nearest, sum),
  });
  return sum;
}

/** Cells of side `cellMm` that the boundary of the region grown by `growMm` may cross. */
export function edgeCells(region: GrownRegion, growMm: number): Cell[] {
  const cells: Cell[] = [];
  quarter(region, growMm, rootCell(region, growMm), {
    inside: () => undefined,
    edge: (cell) => cells.push(cell),
  });
  return cells;
}

interface Visit {
  inside: (cell: Cell) => void;
  edge: (cell: Cell, nearest: Nearest) => void;
}

type Square = Omit<Cell, 'distanceMm'>;

/** `cellMm` times a power of two. */
function rootCell({ tree, cellMm }: GrownRegion, growMm: number): Square {
  if (!Number.isFinite(growMm)) throw new Error(`growRegion: expected a finite distance, got ${growMm}`);
  const [lowU, lowV, highU, highV] = tree.boxes as unknown as [number, number, number, number];
  const around = Math.max(0, growMm) + 2 * cellMm;
  const extent = tree.pieces.length === 0 ? 0 : Math.max(highU - lowU, highV - lowV) + 2 * around;
  let sideMm = cellMm;
  while (sideMm < extent) sideMm *= 2;
  const start = OFFSET * cellMm - around;
  return { u: lowU + start + sideMm / 2, v: lowV + start + sideMm / 2, sideMm };
}

function quarter(region: GrownRegion, growMm: number, square: Square, visit: Visit): void {
  const nearest: Nearest = { piece: -1, squared: 0, du: 0, dv: 0 };
  const { u, v, sideMm } = square;
  const distanceMm = signedDistance(region, u, v, nearest) - growMm;
  const cell = { ...square, distanceMm };
  if (Math.abs(distanceMm) > sideMm * Math.SQRT1_2) {
    if (distanceMm < 0) visit.inside(cell);
  } else if (sideMm > 1.5 * region.cellMm) {
    for (const part of quarters(square)) quarter(region, growMm, part, visit);
  } else visit.edge(cell, nearest);
}

function quarters({ u, v, sideMm }: Square): Square[] {
  const [half, q] = [sideMm / 2, sideMm / 4];
  return [
    { u: u - q, v: v - q, sideMm: half },
    { u: u + q, v: v - q, sideMm: half },
    { u: u - q, v: v + q, sideMm: half },
    { u: u + q, v: v + q, sideMm: half },
  ];
}

/** A cell cut by the straight line that the distance at its center gives; in quarters, where that is too far from the truth. */
function addEdge(
  region: GrownRegion,
  growMm: number,
  cell: Cell,
  nearest: Nearest,
  sum: WindingRegion,
): void {
  const { sideMm, distanceMm } = cell;
  if (Math.abs(distanceMm) > sideMm * Math.SQRT1_2) {
    if (distanceMm < 0) sum.areaMm2 += sideMm * sideMm;
    return;
  }
  const [nu, nv] = outward(region.tree, nearest, distanceMm + growMm < 0);
  if (sideMm > 1.5 * LEAST_SHARE * region.cellMm && isBent(region, growMm, cell, nu, nv)) {
    for (const part of quarters(cell)) {
      const at = { piece: -1, squared: 0, du: 0, dv: 0 };
      addEdge(
        region,
        growMm,
        { ...part, distanceMm: signedDistance(region, part.u, part.v, at) - growMm },
        at,
        sum,
      );
    }
    return;
  }
  sum.areaMm2 += lineShare(distanceMm / sideMm, nu, nv) * sideMm * sideMm;
  sum.perimeterMm += lineLength(distanceMm / sideMm, nu, nv) * sideMm;
}

/** Direction in which the distance grows. On the boundary itself it is that across the piece. */
function outward({ pieces }: PieceTree, nearest: Nearest, isInside: boolean): [number, number] {
  const distance = Math.sqrt(nearest.squared);
  const i = 4 * nearest.piece;
  const [lu, lv] = [pieces[i + 2]! - pieces[i]!, pieces[i + 3]! - pieces[i + 1]!];
  const length = Math.hypot(lu, lv);
  if (distance < ROUNDING * Math.max(Math.abs(pieces[i]!), Math.abs(pieces[i + 1]!), length))
    return [lv / length, -lu / length];
  const sign = isInside ? -1 : 1;
  return [(sign * nearest.du) / distance, (sign * nearest.dv) / distance];
}

/** Differences smaller than this share of the coordinates have no direction. */
const ROUNDING = 1e-12;

function isBent(region: GrownRegion, growMm: number, cell: Cell, nu: number, nv: number): boolean {
  const half = cell.sideMm / 2;
  const nearest: Nearest = { piece: -1, squared: 0, du: 0, dv: 0 };
  return CORNERS.some(([cu, cv]) => {
    const straight = cell.distanceMm + half * (cu * nu + cv * nv);
    const exact = signedDistance(region, cell.u + half * cu, cell.v + half * cv, nearest) - growMm;
    return Math.abs(exact - straight) > BEND_SHARE * region.cellMm;
  });
}

const CORNERS = [
  [-1, -1],
  [1, -1],
  [1, 1],
  [-1, 1],
] as const;
