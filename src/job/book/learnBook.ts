import {
  findConfounded,
  learnResidue,
  nextPour,
  type Confounding,
  type KeptByOpening,
  type NextPour,
  type NextPourInputs,
  type ResidueLine,
} from '../../yield';
import type { BookRow } from './bookRow';
import { checkedPours, type CheckedPour, type ShopFacts } from './checkedPours';
import { residueRows, triedPours } from './evidence';
import { learnFoam, type LearnedFoam } from './learnFoam';
import { learnedKeeps } from './learnedKeeps';
import { soundOnly, type LeftOut } from './soundOnly';

/** What is wanted of the book: of one foam, for one piece, in such a room; all of it where nothing is said. */
export interface LearnWish extends Omit<NextPourInputs, 'pours'> {
  foam?: string;
  roomC?: number;
  /** Of filling, for the batches. */
  chance?: number;
}

export interface LearnedBook {
  /** All of them, those that were left out as well. */
  pours: CheckedPour[];
  residue: ResidueLine;
  foams: LearnedFoam[];
  /** How much of the overpack stays in, by the opening. */
  keeps: KeptByOpening[];
  confounding: Confounding;
  /** Of the foam that was asked for, or of the last pour. */
  next?: NextPour & { foam?: string };
  leftOut: LeftOut[];
  chance: number;
}

/** Chosen here: the upper end of a range that holds 9 times of 10. */
export const LEARN_CHANCE = 0.95;

/** Everything that the book teaches. Nothing is learned from a field that is to be asked about, nor from a pour that was left out. */
export function learnBook(rows: readonly BookRow[], shop: ShopFacts, wish: LearnWish = {}): LearnedBook {
  const { foam, roomC, chance = LEARN_CHANCE, ...ask } = wish;
  const all = checkedPours(rows, shop);
  const pours = all.filter(({ row }) => row.isLeftOut !== true);
  const stays = soundOnly(residueRows(pours), 'residue', (row) => learnResidue([row]));
  const learned = learnResidue(stays.used);
  if (!learned.ok) throw new Error(`learnBook: sound rows refused with ${learned.problem.code}`);
  const residue = learned.value;
  const wanted = pours.filter(({ sound }) => foam === undefined || sound.foam === foam);
  const foams = foamsOf(rows)
    .filter((name) => foam === undefined || name === foam)
    .map((name) =>
      learnFoam({
        foam: name,
        card: shop.foams.find((card) => card.name === name),
        rows,
        pours: pours.filter(({ sound }) => sound.foam === name),
        residue,
        roomC,
        chance,
      }),
    );
  const next = nextOf(wanted, ask);
  const keeps = learnedKeeps(pours, rows, foams);
  return {
    pours: all,
    residue,
    foams,
    keeps: keeps.keeps,
    confounding: findConfounded(triedPours(wanted)),
    ...(next === undefined ? {} : { next }),
    leftOut: [...stays.leftOut, ...foams.flatMap(({ leftOut }) => leftOut), ...keeps.leftOut],
    chance,
  };
}

/** Of the foam of the last pour, as a change tells nothing across foams. */
function nextOf(pours: readonly CheckedPour[], ask: Omit<NextPourInputs, 'pours'>): LearnedBook['next'] {
  const ofPiece = pours.filter(({ sound }) => ask.piece === undefined || sound.piece === ask.piece);
  const last = ofPiece.at(-1) ?? pours.at(-1);
  if (last === undefined) return undefined;
  const { foam } = last.sound;
  const next = nextPour({ ...ask, pours: triedPours(pours.filter(({ sound }) => sound.foam === foam)) });
  return foam === undefined ? next : { ...next, foam };
}

const foamsOf = (rows: readonly BookRow[]): string[] => [
  ...new Set(rows.flatMap((row) => (row.kind === 'fill' || row.foam === undefined ? [] : [row.foam]))),
];
