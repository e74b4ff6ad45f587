import type { LadderOfType, LevelFill, OpeningPlan } from '../../plan';
import type { Piece } from '../../job/piece';
import type { Problem } from '../../problem';
import type { PourOnPage } from '../../worker/pour';
import type {
  CutFaces,
  CutPlane,
  MoldOfType,
  Opened,
  Paint,
  Picture,
  Shells,
  Sized,
} from '../../worker/protocol';
import type { KeptSource } from './keptSource';
import { localDay } from './localDay';
import { NO_HISTORY, type History } from './history';
import { newWords, type Words } from './words';

/** What the engine is at, or last said, about one request. Whether that is still what stands on the ticket: see `now`. */
export interface Job<T> {
  state: 'idle' | 'running' | 'answered' | 'refused' | 'cancelled' | 'failed';
  /** What was asked, to the letter: an answer holds only for this. */
  key?: string;
  answer?: T;
  /** The answer before, while a new one is worked out. For a picture to stand still on; no number of it is shown. */
  before?: T;
  problem?: Problem;
  /** Of a fault of ours. */
  message?: string;
  /** 0..1, where the engine tells. */
  share?: number;
}

export interface OpenScan {
  /** Counts the scans of this ticket: a file of the same name is another scan. */
  no: number;
  source: KeptSource;
  opened: Opened;
}

/** What of the molds is looked at. Not kept: it is of the screen, not of the piece. */
export interface Looking {
  ladder: boolean;
  shells: boolean;
  thickness: boolean;
  /** Where the mold is cut open in the picture; undefined: it is shown whole. */
  plane: CutPlane | undefined;
}

/** All of the ticket: what was said, and what the engine answered. */
export interface Ticket extends Words {
  scan: OpenScan | undefined;
  /** The file that is read, or was read last. */
  reading: Job<never> & { source?: KeptSource };
  size: Job<Sized>;
  pour: Job<PourOnPage>;
  mold: Job<MoldOfType[]>;
  opening: Job<OpeningPlan>;
  bestUp: Job<LevelFill[]>;
  picture: Job<Picture>;
  ladder: Job<LadderOfType[]>;
  shells: Job<Shells>;
  cutFaces: Job<CutFaces>;
  paint: Job<Paint>;
  looking: Looking;
  /** The day the ticket was begun, as YYYY-MM-DD: checks of age are made for it. */
  today: string;
  /** Counts the wishes to measure again after a cancel or a fault. */
  attempt: number;
  /** A key was pressed and the field has not stood still since: nothing is asked yet. */
  typing: boolean;
  /** Something was done since the last file was opened or refused: that is no longer the news. */
  movedOn: boolean;
  /** How many scans were read so far: each gets the next number. */
  scanNo: number;
  history: History;
  /** The piece as it was kept when these words were said: what differs from it is to be kept. */
  base: Piece | undefined;
}

export const newTicket = (): Ticket => ({
  ...newWords(),
  scan: undefined,
  reading: { state: 'idle' },
  size: { state: 'idle' },
  pour: { state: 'idle' },
  mold: { state: 'idle' },
  opening: { state: 'idle' },
  bestUp: { state: 'idle' },
  picture: { state: 'idle' },
  ladder: { state: 'idle' },
  shells: { state: 'idle' },
  cutFaces: { state: 'idle' },
  paint: { state: 'idle' },
  looking: { ladder: false, shells: false, thickness: false, plane: undefined },
  today: localDay(new Date()),
  attempt: 0,
  typing: false,
  movedOn: false,
  scanNo: 0,
  history: NO_HISTORY,
  base: undefined,
});
