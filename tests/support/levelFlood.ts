/*
 * What a level that sinks through cells shuts in, by brute force: for every layer anew, which cells at it and over it hang together. Cells touch over a face,
 * or side by side over an edge that is upright: two columns are neighbors also across a corner, and have to overlap in height.
 */

export interface Cells {
  across: number;
  tall: number;
  /** Number of the cell, or -1 where there is none. Layer z, from below. */
  isCell: (x: number, y: number, z: number) => boolean;
}

/** A cell, and so the level that lies on it, lets air out. */
export interface OpenCell {
  x: number;
  y: number;
  z: number;
}

export interface FloodedPocket {
  saddle: number;
  cells: number;
  /** Numbers of them, from 0: rows of a layer, layers from below. */
  numbers: readonly number[];
}

export interface Flooded {
  pockets: FloodedPocket[];
  /** Cells that hang together and with no open one. */
  apart: number[];
}

export function floodByLevels(cells: Cells, open: readonly OpenCell[]): Flooded {
  const { tall } = cells;
  const openAt = new Set(open.map((one) => numberOf(cells, one)));
  const found: Flooded = { pockets: [], apart: [] };
  let shut: number[][] = [];
  for (let level = tall - 1; level >= 0; level--) {
    const parts = partsFrom(cells, level);
    const isOpen = (part: readonly number[]): boolean => part.some((cell) => openAt.has(cell));
    const partOf = new Map<number, number>();
    parts.forEach((part, n) => part.forEach((cell) => partOf.set(cell, n)));
    for (const pocket of shut)
      if (isOpen(parts[partOf.get(pocket[0]!)!]!))
        found.pockets.push({ saddle: level + 1, cells: pocket.length, numbers: pocket });
    shut = parts.filter((part) => !isOpen(part));
  }
  found.apart = shut.map((part) => part.length);
  return found;
}

const numberOf = ({ across }: Cells, { x, y, z }: OpenCell): number => (z * across + y) * across + x;

/** Cells from a layer up that hang together. */
function partsFrom(cells: Cells, low: number): number[][] {
  return partsOf(cells, (z) => z >= low);
}

/** Cells below a layer that hang together, and with one that is told: where liquid runs to that is let in there. */
export function cellsBelow(cells: Cells, brim: number, from: OpenCell): number[] {
  const inlet = numberOf(cells, from);
  return partsOf(cells, (z) => z < brim).find((part) => part.includes(inlet)) ?? [];
}

function partsOf(cells: Cells, isIn: (z: number) => boolean): number[][] {
  const { across, tall, isCell } = cells;
  const seen = new Set<number>();
  const parts: number[][] = [];
  for (let z = 0; z < tall; z++)
    for (let y = 0; y < across; y++)
      for (let x = 0; x < across; x++) {
        const first = numberOf(cells, { x, y, z });
        if (!isIn(z) || !isCell(x, y, z) || seen.has(first)) continue;
        seen.add(first);
        const part = [first];
        for (let at = 0; at < part.length; at++) {
          const cx = part[at]! % across;
          const cy = Math.floor(part[at]! / across) % across;
          const cz = Math.floor(part[at]! / across / across);
          for (const [dx, dy, dz] of TOUCHING) {
            const next = { x: cx + dx, y: cy + dy, z: cz + dz };
            if (next.x < 0 || next.y < 0 || next.z < 0) continue;
            if (next.x >= across || next.y >= across || next.z >= tall) continue;
            if (!isIn(next.z) || !isCell(next.x, next.y, next.z)) continue;
            const number = numberOf(cells, next);
            if (seen.has(number)) continue;
            seen.add(number);
            part.push(number);
          }
        }
        parts.push(part);
      }
  return parts;
}

const TOUCHING = [
  [0, 0, 1],
  [0, 0, -1],
  [1, 0, 0],
  [-1, 0, 0],
  [0, 1, 0],
  [0, -1, 0],
  [1, 1, 0],
  [1, -1, 0],
  [-1, 1, 0],
  [-1, -1, 0],
] as const;
