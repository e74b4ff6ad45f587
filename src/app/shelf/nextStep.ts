import { isRecord } from '../../job/json';
import type { Piece } from '../../job/piece';
import { seenCasting, seenSculpt } from '../../job/seen';
import type { Step } from '../route';
import { castingCode } from '../words/castingCode';
import { castingState } from './castingState';
import { wayVolumeWords } from './wayVolume';

/** What is to be done next with a piece. `plan`: a new casting is begun first. */
export interface NextStep {
  words: string;
  at: Step;
  plan?: true;
}

export function nextStep(piece: Piece, book: unknown): NextStep {
  const { casting, mold } = piece.hand;
  const code = castingCode(piece);
  const state = castingState(piece, casting, book);
  if (state === 'poured') return { words: 'Plan the next pour', at: 'batch', plan: true };
  if (state === 'ready') return { words: `Pour ${code}`, at: 'bench' };
  const isScanned = seenSculpt(piece, __APP_VERSION__)?.size !== undefined;
  if (!isScanned && wayVolumeWords(piece) === undefined) return { words: 'Measure it', at: 'measure' };
  if (seenCasting(piece, casting, __APP_VERSION__) !== undefined)
    return { words: `Make ${code} ready`, at: 'batch' };
  // Without a scan there is nothing of a mold to plan here.
  return isScanned && typeKey(piece, mold) === undefined
    ? { words: 'Choose the mold', at: 'mold' }
    : { words: `Plan ${code}`, at: 'batch' };
}

/** The type that was chosen for a mold, by its key. */
export function typeKey({ molds }: Piece, mold: string): string | undefined {
  const molding = molds[mold]?.choices.molding;
  return isRecord(molding) && typeof molding.type === 'string' ? molding.type : undefined;
}
