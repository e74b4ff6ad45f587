import type { Vector } from '../measure/planeFrame';
import type { Part } from './demoldParts';

/**
 * Where rubber lies between the casting and the mouth. `hook`: a limb that points to the mouth, as a hanging arm; the rubber lies around its
 * tip and up to where it joins the body. `through`: two limbs that join deeper in, as two legs or a handle; the rubber runs between
 * them from side to side and has to be turned out or cut.
 */
export interface CaughtLimb {
  kind: 'hook' | 'through';
  /** Its tip, or the middle between both just before they join. */
  atMm: Vector;
  joinsAtMm: Vector;
  /** Along the way, from the tip to where it joins; for `through` at least this, from where the shorter of both begins. */
  reachMm: number;
}

/** What hangs together up to a plane, seen from the mouth. */
interface Piece {
  leader?: Piece;
  /** Its part nearest to the mouth. */
  tip: Part;
  isAtMouth: boolean;
  widestMm: number;
}

/**
 * By a sweep from the mouth inward: where two pieces meet, the younger one ends (as in merge trees: Carr, Snoeyink and Axen 2003, Comput.
 * Geom. 24:75); where two ends of one piece meet there is a hole.
 */
export function caughtLimbs(
  planes: readonly Part[][],
  { leastGirthMm, leastReachMm }: { leastGirthMm: number; leastReachMm: number },
): CaughtLimb[] {
  const pieceOf = new Map<Part, Piece>();
  const found: CaughtLimb[] = [];
  planes.forEach((parts, i) => {
    for (const part of parts) {
      const [first, ...others] = part.shallower;
      if (first === undefined) {
        pieceOf.set(part, { tip: part, isAtMouth: i === 0, widestMm: part.girthMm });
        continue;
      }
      for (const other of others) {
        const caught = meet(leaderOf(pieceOf.get(first)!), leaderOf(pieceOf.get(other)!), {
          part,
          first,
          other,
        });
        if (caught.widestMm >= leastGirthMm && caught.limb.reachMm >= leastReachMm) found.push(caught.limb);
      }
      const piece = leaderOf(pieceOf.get(first)!);
      piece.widestMm = Math.max(piece.widestMm, part.girthMm);
      pieceOf.set(part, piece);
    }
  });
  return found.sort((a, b) => b.reachMm - a.reachMm);
}

interface Meeting {
  part: Part;
  first: Part;
  other: Part;
}

function meet(a: Piece, b: Piece, at: Meeting): { limb: CaughtLimb; widestMm: number } {
  const joinsAtMm = at.part.middleMm;
  if (a === b || (a.isAtMouth && b.isAtMouth)) {
    if (a !== b) join(a, b);
    const reachMm = Math.min(...[at.first, at.other].map((part) => at.part.alongMm - beginOf(part).alongMm));
    const widestMm = Math.min(at.first.girthMm, at.other.girthMm);
    return { limb: { kind: 'through', atMm: between(at.first, at.other), joinsAtMm, reachMm }, widestMm };
  }
  const isYoungerB = a.isAtMouth || (!b.isAtMouth && a.tip.alongMm <= b.tip.alongMm);
  const [elder, younger] = isYoungerB ? [a, b] : [b, a];
  const { tip, widestMm } = younger;
  join(elder, younger);
  const reachMm = at.part.alongMm - tip.alongMm;
  return { limb: { kind: 'hook', atMm: tip.middleMm, joinsAtMm, reachMm }, widestMm };
}

function join(elder: Piece, younger: Piece): void {
  younger.leader = elder;
  elder.widestMm = Math.max(elder.widestMm, younger.widestMm);
}

function leaderOf(piece: Piece): Piece {
  let at = piece;
  while (at.leader !== undefined) at = at.leader;
  return at;
}

/** Back towards the mouth as long as it is an outline of its own. */
function beginOf(part: Part): Part {
  let at = part;
  while (at.shallower.length === 1 && at.shallower[0]!.deeper.length === 1) at = at.shallower[0]!;
  return at;
}

const between = ({ middleMm: a }: Part, { middleMm: b }: Part): Vector => [
  (a[0] + b[0]) / 2,
  (a[1] + b[1]) / 2,
  (a[2] + b[2]) / 2,
];
