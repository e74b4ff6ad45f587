import type { CheckedPour, PourRow } from '../../job/book';
import type { Piece } from '../../job/piece';
import { learnDrift, type Drift } from '../../yield';
import { moldWords } from '../shelf/moldWords';
import { pieceOf } from './rowsById';

/** One casting of a mold: which pour it was, and what share of the mix was found again. */
export interface LifeRow {
  no: number;
  place: number;
  foundShare: number;
}

export interface MoldLife {
  key: string;
  /** "Quay Troll head, Brushed skin, 1". */
  name: string;
  /** Pours of it, whether all of it was weighed or not. */
  castings: number;
  rows: LifeRow[];
  drift: Drift;
}

/** Every mold with its pours in their order: found of what was mixed, casting by casting. A pour with a weight missing keeps its place. */
export function moldLives(pours: readonly CheckedPour[], pieces: readonly Piece[]): MoldLife[] {
  const lives = new Map<string, { name: string; pours: CheckedPour[] }>();
  for (const pour of pours) {
    const mold = moldOf(pour.row, pieces);
    if (mold === undefined) continue;
    const known = lives.get(mold.key);
    if (known === undefined) lives.set(mold.key, { name: mold.name, pours: [pour] });
    else known.pours.push(pour);
  }
  return [...lives].map(([key, life]) => {
    const rows = life.pours.flatMap((pour, n) => lifeRow(pour, n + 1));
    const drift = learnDrift(rows.map(({ place, foundShare }) => ({ place, seen: foundShare })));
    return { key, name: life.name, castings: life.pours.length, rows, drift };
  });
}

function lifeRow({ no, row, sound }: CheckedPour, place: number): LifeRow[] {
  const { mixedG, residueG, castingG, trimG } = sound;
  if (row.isLeftOut === true || mixedG === undefined || !(mixedG > 0)) return [];
  if (residueG === undefined || castingG === undefined || trimG === undefined) return [];
  return [{ no, place, foundShare: (residueG + castingG + trimG) / mixedG }];
}

/** The mold of a pour: as the row says, else that of its casting on the piece's ticket. */
export function moldOf(
  { piece: said, mold, casting, no }: PourRow,
  pieces: readonly Piece[],
): { key: string; name: string } | undefined {
  const piece = said === undefined ? undefined : pieceOf(said, pieces);
  if (piece === undefined) return mold === undefined ? undefined : { key: mold, name: mold };
  const ofCasting =
    (casting !== undefined && Object.hasOwn(piece.castings, casting) ? piece.castings[casting] : undefined) ??
    Object.values(piece.castings).find((one) => one.no === no);
  const id = mold ?? ofCasting?.mold;
  if (id === undefined) return undefined;
  const name = Object.hasOwn(piece.molds, id) ? moldWords(piece, id) : id;
  return { key: `${piece.id} ${id}`, name: `${piece.name}, ${name}` };
}
