import type { UpAxis } from '../../geometry';
import type { Along, FileUnit, LevelFill, OpeningPlan } from '../../plan';
import type { Problem } from '../../problem';
import type { PourOnPage } from '../../worker/pour';
import type { MoldOfType, Opened, Picture, Sized } from '../../worker/protocol';
import type { ScanSource } from '../../worker/engine';
import { blankFields, type Fields } from './fields';
import { newMolding, type Molding } from './moldState';
import { newPouring, type Pouring } from './pourState';
import { newVenting, type Venting } from './ventingState';

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
  source: ScanSource;
  opened: Opened;
}

export type CutChoice = { by: 'floor'; atUnits: number } | { by: 'height' };

/** All of the ticket: what was said, and what the engine answered. */
export interface Ticket {
  fields: Fields;
  scan: OpenScan | undefined;
  up: { axis: UpAxis; confirmed: boolean };
  scaleWay: 'tape' | 'unit';
  along: Along;
  fileUnit: FileUnit | undefined;
  cut: CutChoice | undefined;
  keep: 'above' | 'below';
  foam: { name: string; from: 'data-sheet' | 'cup-test'; by: 'mass' | 'volume'; sample: string | undefined };
  molding: Molding;
  pouring: Pouring;
  venting: Venting;
  /** The file that is read, or was read last. */
  reading: Job<never> & { source?: ScanSource };
  size: Job<Sized>;
  pour: Job<PourOnPage>;
  mold: Job<MoldOfType[]>;
  opening: Job<OpeningPlan>;
  bestUp: Job<LevelFill[]>;
  picture: Job<Picture>;
  /** The day the ticket was begun, as YYYY-MM-DD: checks of age are made for it. */
  today: string;
  /** Counts the wishes to measure again after a cancel or a fault. */
  attempt: number;
  /** A key was pressed and the field has not stood still since: nothing is asked yet. */
  typing: boolean;
  /** Something was done since the last file was opened or refused: that is no longer the news. */
  movedOn: boolean;
}

export const newTicket = (): Ticket => ({
  fields: blankFields(),
  scan: undefined,
  up: { axis: '+z', confirmed: false },
  scaleWay: 'tape',
  along: 'tall',
  fileUnit: undefined,
  cut: undefined,
  keep: 'above',
  foam: { name: '', from: 'data-sheet', by: 'mass', sample: undefined },
  molding: newMolding(),
  pouring: newPouring(),
  venting: newVenting(),
  reading: { state: 'idle' },
  size: { state: 'idle' },
  pour: { state: 'idle' },
  mold: { state: 'idle' },
  opening: { state: 'idle' },
  bestUp: { state: 'idle' },
  picture: { state: 'idle' },
  today: localDay(new Date()),
  attempt: 0,
  typing: false,
  movedOn: false,
});

/** The day on the user's own calendar. */
const localDay = (date: Date): string =>
  [date.getFullYear(), date.getMonth() + 1, date.getDate()].map((n) => String(n).padStart(2, '0')).join('-');
