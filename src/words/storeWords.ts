import type { StoreCode } from '../problem';
import { counted, type Sentence, type Values } from './sentence';

/** What is kept in the browser, and what keeps it from being kept. */
export const STORE_WORDS: Record<StoreCode, (v: Values) => Sentence> = {
  STORE_FULL: (v) => ({
    text: `The last change is not kept: this device has no room left for it (${v.why}).`,
    hint: 'It stays on the ticket while this page is open. Make room on the device, then try again; or back up now: it is in that file too.',
  }),
  STORE_REFUSED: (v) => ({
    text: `Nothing can be kept here: the browser does not let this page store anything (${v.why}).`,
    hint: 'A private window or a setting may be why. Pieces can be worked out all the same, while this page is open; back up before it is closed.',
  }),
  STORE_NEWER: (v) => ({
    text: `What is kept here was written by a newer Risewright than this one (${v.why}).`,
    hint: 'Take the new version, or load the page again. Nothing was changed. What is begun here meanwhile is not kept: back up before the page is closed.',
  }),
  STORE_WAITS: (v) => ({
    text: `The browser has not opened what is kept here (${v.why}).`,
    hint: 'Close other tabs of this page, or wait. Without it pieces can be worked out all the same; nothing of them is kept, but they can be backed up.',
  }),
  STORE_EMPTIED: (v) => ({
    text: `What was kept here is gone: ${counted(v.pieces, 'piece')} when this page was open last, and now nothing. The browser has emptied its store, as it does where its own files were damaged.`,
    hint: `Bring in the last backup${v.lastBackup === undefined ? '; from this browser there is none' : `, of ${String(v.lastBackup)}`}. What is begun here from now on is kept again.`,
  }),
  STORE_LOST: (v) => ({
    text: `The store of this page was shut from outside (${v.why}).`,
    hint: 'Another tab may have a newer version, or the data was cleared. What was said since is not kept. Back up now: the file has all that this page still knows. Then load the page again.',
  }),
  STORE_FAILED: (v) => ({
    text: `The last change is not kept: the browser could not store it (${v.why}).`,
    hint: 'It stays on the ticket while this page is open. Try again; or back up now: it is in that file too.',
  }),
  PIECE_GONE: (v) => ({
    text: `${v.name === undefined || v.name === '' ? 'This piece' : String(v.name)} is not on the Shelf: it was deleted in another tab, or what is kept here cannot be reached.`,
    hint: 'What stands here can be kept once more.',
  }),
  SCAN_GONE: (v) => ({
    text: `The scan of this piece is not on this device${v.name === undefined ? '' : ` (${String(v.name)})`}: it could not be kept, or was cleared.`,
    hint: 'Choose the file again. What was measured on the scan is asked anew; all else that was said is still here.',
  }),
  WORDS_UNREAD: (v) => ({
    text: `${String(v.count)} of the things kept with this piece cannot be read by this version: ${String(v.names)}.`,
    hint: 'They are left blank here; look at them before you pour.',
  }),
};

/** What a backup has not, of what the shop names: it could not be read here. */
export const backedUpWithout = (missing: number): string =>
  `The backup is among your downloads, without ${counted(missing, 'scan or photo', 'scans and photos')} that could not be read here.`;

/** Asked before a ticket is left that is not kept. */
export const LEAVE_UNKEPT =
  'What was said on this ticket last is not kept yet, and is lost when it is left. Leave it all the same?';

/** Said while nothing is kept, on the button that goes on without. */
export const WITHOUT_STORE = 'Work without keeping';

/** In the place of "All is kept.": nothing is, beyond the page. */
export const KEPT_BY_PAGE = 'Kept by this page alone: gone when it is closed.';

/** In the place of where the data is kept. */
export const KEPT_NOWHERE =
  'Kept nowhere: all of it is gone when this page is closed or loaded again. Back up first.';
