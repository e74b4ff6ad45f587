import type { StoreCode } from '../problem';
import type { Sentence, Values } from './sentence';

/** What is kept in the browser, and what keeps it from being kept. */
export const STORE_WORDS: Record<StoreCode, (v: Values) => Sentence> = {
  STORE_FULL: (v) => ({
    text: `The last change is not kept: this device has no room left for it (${v.why}).`,
    hint: 'It stays on the ticket while this page is open. Make room on the device, then try again; or back up now.',
  }),
  STORE_REFUSED: (v) => ({
    text: `Nothing can be kept here: the browser does not let this page store anything (${v.why}).`,
    hint: 'A private window or a setting may be why. All else works; back up before the page is closed.',
  }),
  STORE_NEWER: (v) => ({
    text: `What is kept here was written by a newer Risewright than this one (${v.why}).`,
    hint: 'Take the new version, or load the page again. Nothing was changed.',
  }),
  STORE_LOST: (v) => ({
    text: `The store of this page was shut from outside (${v.why}).`,
    hint: 'Another tab may have a newer version, or the data was cleared. Back up now, then load the page again.',
  }),
  STORE_FAILED: (v) => ({
    text: `The last change is not kept: the browser could not store it (${v.why}).`,
    hint: 'It stays on the ticket while this page is open. Try again; or back up now.',
  }),
  PIECE_GONE: (v) => ({
    text: `${v.name === undefined || v.name === '' ? 'This piece' : String(v.name)} is no longer on the Shelf: it was deleted in another tab.`,
    hint: 'It can be kept once more as it stands here.',
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
