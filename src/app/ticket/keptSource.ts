import type { ScanSource } from '../../worker/engine';

/** A scan's file, and the name it is kept under in this browser, where it is. */
export interface KeptSource extends ScanSource {
  id?: string;
  /** It is there already. */
  isKept?: true;
}
