import { CORNERS, EDGES, LOOPS, UPPER_FACE } from './cell-loops.mjs';

/** Vertex kinds: on the curved surface, on the edge of the base, inside the base. */
export const FREE = 0;
export const RIM = 1;
export const BASE = 2;

/**
 * A quad mesh round the solid {field < 0 and z > 0}: one vertex per sheet of surface in a cell of a cubic
 * grid, one quad per grid edge whose ends differ. Grid corners lie at z = (k - 1/2) h, so the lowest mixed
 * cells straddle z = 0; their vertices are put at exactly z = 0: the base comes out flat with a sharp rim.
 *
 * Each cell sheet is a closed loop of cut edges (cell-loops.mjs), so each vertex has one fan of quads. An
 * edge of the mesh can still be used by four quads where two cells share a chequered face and both join its
 * sheets (rare); boundaryLoops() then throws, and another hMm is the cure. Marching tetrahedra have no such
 * case but make more triangles on the same grid (common knowledge, not measured here).
 *
 * @param field distance function, mm
 * @param hMm grid step
 * @param reach {x, y: [low, high], z}: box that holds the solid, mm; x is taken symmetric about 0
 * @returns {points: number[] (xyz), kinds: number[], quads: number[][] (outward)}
 */
export function dualGrid({ field, hMm, reach }) {
  const grid = makeGrid(hMm, reach);
  const values = sample(field, grid);
  const cells = placeVertices(values, grid);
  return { points: cells.points, kinds: cells.kinds, quads: makeQuads(values, grid, cells) };
}

function makeGrid(hMm, reach) {
  const halfX = Math.ceil(reach.x / hMm) + 1;
  const lowY = Math.floor(reach.y[0] / hMm) - 1;
  const highY = Math.ceil(reach.y[1] / hMm) + 1;
  const size = [2 * halfX + 1, highY - lowY + 1, Math.ceil(reach.z / hMm) + 3];
  const stride = [1, size[0], size[0] * size[1]];
  return { hMm, size, stride, origin: [-halfX * hMm, lowY * hMm, -hMm / 2] };
}

function sample(field, { hMm, size, origin }) {
  const values = new Float64Array(size[0] * size[1] * size[2]).fill(hMm);
  // The layer k = 0 lies below the cut and keeps its fill: outside.
  for (let k = 1; k < size[2]; k += 1) {
    for (let j = 0; j < size[1]; j += 1) {
      for (let i = 0; i < size[0]; i += 1) {
        const v = field(origin[0] + i * hMm, origin[1] + j * hMm, origin[2] + k * hMm);
        const onWall = i === 0 || j === 0 || i === size[0] - 1 || j === size[1] - 1 || k === size[2] - 1;
        if (v < 0 && onWall) throw new Error('dualGrid: expected the solid inside reach, got it at the wall');
        values[i + size[0] * (j + size[1] * k)] = v;
      }
    }
  }
  return values;
}

function placeVertices(values, grid) {
  const { size, stride } = grid;
  const [first, masks] = [new Int32Array(values.length), new Uint8Array(values.length)];
  const cells = { points: [], kinds: [], first, masks };
  for (let k = 0; k < size[2] - 1; k += 1) {
    for (let j = 0; j < size[1] - 1; j += 1) {
      for (let i = 0; i < size[0] - 1; i += 1) {
        const at = i + j * stride[1] + k * stride[2];
        let mask = 0;
        for (let n = 0; n < 8; n += 1) if (values[at + cornerOffset(n, stride)] < 0) mask |= 1 << n;
        cells.masks[at] = mask;
        cells.first[at] = cells.kinds.length;
        for (let loop = 0; loop < LOOPS[mask].count; loop += 1) {
          const corner = CORNERS.map((_, n) => values[at + cornerOffset(n, stride)]);
          cells.points.push(...startPoint({ corner, loop, mask, cell: [i, j, k], grid }));
          cells.kinds.push(k > 0 ? FREE : mask === UPPER_FACE ? BASE : RIM);
        }
      }
    }
  }
  return cells;
}

// The mean of the loop's cuts; in the lowest layer only the upper edges tell of the field.
function startPoint({ corner, loop, mask, cell, grid }) {
  const sum = [0, 0, 0];
  let count = 0;
  EDGES.forEach(({ from, to }, edge) => {
    if (LOOPS[mask].loopOf[edge] !== loop || (cell[2] === 0 && !(from & 4))) return;
    const t = corner[from] / (corner[from] - corner[to]);
    for (let a = 0; a < 3; a += 1) sum[a] += CORNERS[from][a] + t * (CORNERS[to][a] - CORNERS[from][a]);
    count += 1;
  });
  const inCell = count === 0 ? [0.5, 0.5, 0.5] : sum.map((s) => s / count);
  const point = inCell.map((s, a) => grid.origin[a] + (cell[a] + s) * grid.hMm);
  return cell[2] === 0 ? [point[0], point[1], 0] : point;
}

function makeQuads(values, { stride }, cells) {
  const quads = [];
  EDGES.forEach(({ axis, from }) => {
    if (from !== 0) return;
    const [b, c] = [(axis + 1) % 3, (axis + 2) % 3];
    // The four cells round a grid edge, anticlockwise seen from its far end, each with its own name for it.
    const around = [
      [1, 1],
      [0, 1],
      [0, 0],
      [1, 0],
    ].map(([db, dc]) => ({
      shift: db * stride[b] + dc * stride[c],
      edge: EDGES.findIndex((e) => e.axis === axis && e.from === (db << b) + (dc << c)),
    }));
    for (let at = 0; at + stride[axis] < values.length; at += 1) {
      const startsInside = values[at] < 0;
      // A step off the end of a row lands on the next row; both ends are outside there, so nothing differs.
      if (startsInside === values[at + stride[axis]] < 0) continue;
      const quad = around.map((cell) => {
        const home = at - cell.shift;
        return cells.first[home] + LOOPS[cells.masks[home]].loopOf[cell.edge];
      });
      quads.push(startsInside ? quad : quad.reverse());
    }
  });
  return quads;
}

function cornerOffset(n, stride) {
  return (n & 1) + ((n >> 1) & 1) * stride[1] + ((n >> 2) & 1) * stride[2];
}
