import type { TriangleMesh } from '../triangleMesh';
import { nextCorner, OPEN, rootOf, type EdgePairs } from './edges';

/** Edges of caps, by number: from which vertex to which, beside which triangle. */
export interface DirectedEdges {
  from: number[];
  to: number[];
  triangle: number[];
}

/** The reverse of every uncancelled edge: the direction the cap must take to cancel it. */
export function uncancelledEdges(mesh: TriangleMesh, pairs: EdgePairs, flip: Uint8Array): DirectedEdges {
  const { triangles } = mesh;
  const edges: DirectedEdges = { from: [], to: [], triangle: [] };
  const startOf = (h: number): number =>
    flip[(h / 3) | 0] === 1 ? triangles[nextCorner(h)]! : triangles[h]!;
  const endOf = (h: number): number => (flip[(h / 3) | 0] === 1 ? triangles[h]! : triangles[nextCorner(h)]!);
  const addReverse = (h: number): void => {
    edges.from.push(endOf(h));
    edges.to.push(startOf(h));
    edges.triangle.push((h / 3) | 0);
  };
  const anyPairOff = pairs.conflictCount > 0;
  for (let h = 0; h < triangles.length; h++) {
    const g = pairs.mate[h]!;
    if (g === OPEN || (anyPairOff && g > h && startOf(h) === startOf(g))) addReverse(h);
    if (anyPairOff && g > h && startOf(h) === startOf(g)) addReverse(g);
  }
  for (let i = 0; i < pairs.shared.length; i += pairs.shared[i]! + 1) {
    const group = pairs.shared.slice(i + 1, i + 1 + pairs.shared[i]!);
    const low = Math.min(startOf(group[0]!), endOf(group[0]!));
    for (const own of byPiece(group, pairs)) {
      const up = own.filter((h) => startOf(h) === low);
      const down = own.filter((h) => startOf(h) !== low);
      const extra = up.length > down.length ? up.slice(down.length) : down.slice(up.length);
      extra.forEach(addReverse);
    }
  }
  return edges;
}

/** Piece by piece: what one piece leaves over is its own boundary, whatever another does along the same edge. */
function byPiece(group: readonly number[], { pieceRoot }: EdgePairs): number[][] {
  const own = new Map<number, number[]>();
  for (const h of group) {
    const root = rootOf(pieceRoot, (h / 3) | 0);
    const list = own.get(root);
    if (list === undefined) own.set(root, [h]);
    else list.push(h);
  }
  return [...own.values()];
}
