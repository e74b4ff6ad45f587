import type { ScalarKind } from '../../units';

/** A field that is typed into: what it can hold, and the units offered beside it (the first is the one to start with). */
export interface FieldSpec {
  kind: ScalarKind;
  units: readonly string[];
  allowZero?: true;
  /** A place on an axis, or a height: either side of its zero. */
  isSigned?: true;
  /** A height above the sea, m or ft: far beyond what a sculpt can measure, and to be believed. */
  isHeight?: true;
  /** What stands behind the box where the kind has no units of its own. */
  after?: string;
}
