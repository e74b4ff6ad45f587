import type { Problem } from '../problem';

/** A scan's file as it came. */
export interface ScanCopy {
  name: string;
  file: ArrayBuffer;
}

/** What the thread that keeps scans is asked. */
export type ScanTask =
  | { do: 'keep'; shop: string; id: string; name: string; file: ArrayBuffer }
  | { do: 'read'; shop: string; id: string };

export type FromScanThread = { problem: Problem } | { copy: ScanCopy } | { done: true };
