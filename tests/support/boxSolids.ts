import type { TriangleMesh } from '../../src/geometry';
import { standUpright, columnsThrough, type ColumnGrid } from '../../src/geometry/features/columns';
import type { PourColumns } from '../../src/geometry/features/pourColumns';
import { highestFirst, linkRuns } from '../../src/geometry/features/runLinks';
import { waysBetween } from '../../src/geometry/features/wallBetween';
import { upTo, type Random } from './draws';
import { box, type Vec3 } from './shapes';

/** Solids of whole cells, as a closed surface and as the cells that are filled: both say the same. */
export interface CellSolid {
  mesh: TriangleMesh;
  /** Cells of one, `size` of them along x, y and z. */
  size: number;
  isFull: (x: number, y: number, z: number) => boolean;
}

export interface BoxIn {
  at: Vec3;
  sides: Vec3;
  /** Taken out of what is there already. */
  isCarved?: boolean;
}

export function randomBoxes(random: Random, size: number, count: number): BoxIn[] {
  return Array.from({ length: count }, () => {
    const low = [0, 1, 2].map(() => upTo(random, 0, size - 2));
    const sides = low.map((from) => upTo(random, 1, Math.min(5, size - from)));
    return { at: low as unknown as Vec3, sides: sides as unknown as Vec3 };
  });
}

/** A block with boxes carved out of it and some put back. */
export const carvedBlock = (random: Random, size: number, count: number): BoxIn[] => [
  { at: [0, 0, 0], sides: [size, size, size - 1] },
  ...randomBoxes(random, size, count).map((one) => ({ ...one, isCarved: random() < 0.75 })),
];

export function cellSolid(size: number, boxes: readonly BoxIn[]): CellSolid {
  const cells = new Uint8Array(size ** 3);
  for (const { at, sides, isCarved = false } of boxes)
    for (let z = at[2]; z < at[2] + sides[2]; z++)
      for (let y = at[1]; y < at[1] + sides[1]; y++)
        for (let x = at[0]; x < at[0] + sides[0]; x++) cells[(z * size + y) * size + x] = isCarved ? 0 : 1;
  const isIn = (i: number): boolean => i >= 0 && i < size;
  const isFull = (x: number, y: number, z: number): boolean =>
    isIn(x) && isIn(y) && isIn(z) && cells[(z * size + y) * size + x] === 1;
  return { mesh: surfaceOf(size, isFull), size, isFull };
}

/** Two triangles on every face between a full cell and an empty one, corners shared. */
function surfaceOf(size: number, isFull: CellSolid['isFull']): TriangleMesh {
  const [corners, triangles] = [new Map<string, number>(), [] as number[]];
  const positions: number[] = [];
  const corner = (p: Vec3): number => {
    const key = p.join(' ');
    if (!corners.has(key)) corners.set(key, positions.push(...p) / 3 - 1);
    return corners.get(key)!;
  };
  const cube = box([1, 1, 1]);
  for (let z = 0; z < size; z++)
    for (let y = 0; y < size; y++)
      for (let x = 0; x < size; x++) {
        if (!isFull(x, y, z)) continue;
        FACING.forEach(([dx, dy, dz], face) => {
          if (isFull(x + dx, y + dy, z + dz)) return;
          for (let c = 6 * face; c < 6 * face + 6; c++) {
            const v = 3 * cube.triangles[c]!;
            const [px, py, pz] = [cube.positions[v]!, cube.positions[v + 1]!, cube.positions[v + 2]!];
            triangles.push(corner([x + px, y + py, z + pz]));
          }
        });
      }
  return { positions: Float64Array.from(positions), triangles: Int32Array.from(triangles) };
}

/** Which way the faces of `box` look, in its order. */
const FACING: readonly Vec3[] = [
  [0, 0, -1],
  [0, 0, 1],
  [0, -1, 0],
  [0, 1, 0],
  [-1, 0, 0],
  [1, 0, 0],
];

/** One column through the middle of every cell, rows along x, up along z. `pad` more cells on every side; around the solid from that height up. */
export function columnsInCells(
  { mesh, size }: CellSolid,
  { pad = 0, aroundFromMm }: { pad?: number; aroundFromMm?: number } = {},
): PourColumns {
  const positions = new Float64Array(mesh.positions.length);
  for (let i = 0; i < positions.length; i += 3)
    positions.set([mesh.positions[i + 2]!, mesh.positions[i]!, mesh.positions[i + 1]!], i);
  const body = {
    ...standUpright(mesh, [0, 0, 1]),
    axes: { u: [1, 0, 0] as Vec3, v: [0, 1, 0] as Vec3, up: [0, 0, 1] as Vec3 },
    mesh: { positions, triangles: mesh.triangles },
    ...(aroundFromMm === undefined ? {} : { aroundFromMm }),
  };
  const across = size + 2 * pad;
  const grid: ColumnGrid = { u0: 0.5 - pad, v0: 0.5 - pad, stepMm: 1, columns: across, rows: across };
  const columns = columnsThrough(body, grid);
  const links = linkRuns(columns);
  const { count, lowMm, highMm } = columns;
  const heights = { count, topMm: highMm, bottomMm: lowMm, crossMm2: 1 };
  const ways = waysBetween(body, columns, links);
  return { body, columns, links, order: highestFirst(links), heights, ways };
}

/** Filled up until no two full cells touch over an edge or a corner only: whether those hang together is no question of numbers. */
export function withoutEdgeContacts({ size, isFull }: CellSolid): CellSolid {
  const boxes: BoxIn[] = [];
  const fill = (at: Vec3): number => boxes.push({ at, sides: [1, 1, 1] });
  for (let z = 0; z < size; z++)
    for (let y = 0; y < size; y++) for (let x = 0; x < size; x++) if (isFull(x, y, z)) fill([x, y, z]);
  for (;;) {
    const { isFull: isNow } = cellSolid(size, boxes);
    const before = boxes.length;
    for (let z = 0; z < size; z++)
      for (let y = 0; y < size; y++)
        for (let x = 0; x < size; x++)
          for (const [dx, dy, dz] of ASKEW)
            if (isNow(x, y, z) && isNow(x + dx, y + dy, z + dz) && !isJoined(isNow, [x, y, z], [dx, dy, dz]))
              if (dx !== 0) fill([x + dx, y, z]);
              else fill([x, y + dy, z]);
    if (boxes.length === before) return cellSolid(size, boxes);
  }
}

/** Half of the twenty neighbors that share an edge or a corner with a cell. */
const ASKEW: readonly Vec3[] = [
  [1, 1, 0],
  [1, -1, 0],
  [1, 0, 1],
  [1, 0, -1],
  [0, 1, 1],
  [0, 1, -1],
  [1, 1, 1],
  [1, 1, -1],
  [1, -1, 1],
  [1, -1, -1],
];

/** By full cells of the small block between the two, face to face. */
function isJoined(isFull: CellSolid['isFull'], [x, y, z]: Vec3, [dx, dy, dz]: Vec3): boolean {
  const orders = [
    [0, 1, 2],
    [0, 2, 1],
    [1, 0, 2],
    [1, 2, 0],
    [2, 0, 1],
    [2, 1, 0],
  ];
  return orders.some((order) => {
    const at = [x, y, z];
    return order.every((k) => {
      at[k]! += [dx, dy, dz][k]!;
      return isFull(at[0]!, at[1]!, at[2]!);
    });
  });
}
