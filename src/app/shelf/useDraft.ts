import { useState } from 'react';
import type { FieldSpec } from '../ticket/fieldSpec';
import { isCloseTo } from '../ticket/isCloseTo';
import { readSpec, type BoxText } from '../ticket/readSpec';

interface Draft {
  box: BoxText;
  /** What stood there when it was begun, and what was kept of it since: anything else comes from another tab, and goes before it. */
  own: (number | undefined)[];
}

interface DraftBox {
  box: BoxText;
  type: (box: BoxText) => void;
  /** The box is left: one that was emptied is blank from now on, not on the way to another figure. */
  leave: () => void;
}

/**
 * What stands in a box whose value is kept as it is typed. Text that cannot be read stays in the box and is not kept, and what
 * the box says is never written anew under the user's hands.
 */
export function useDraft(
  spec: FieldSpec,
  kept: BoxText,
  onKeep: (box: BoxText | undefined, value: number | undefined) => void,
): DraftBox {
  const [draft, setDraft] = useState<Draft>();
  const keptValue = valueOf(spec, kept);
  const isOwn = draft?.own.some((value) => isCloseTo(value, keptValue)) ?? false;
  if (draft !== undefined && !isOwn) setDraft(undefined);
  const own = isOwn ? (draft?.own ?? []) : [keptValue];
  const box = draft !== undefined && isOwn ? draft.box : kept;
  return {
    box,
    type(typed) {
      const value = valueOf(spec, typed);
      setDraft({ box: typed, own: value === undefined ? own : [...own, value] });
      if (value !== undefined) onKeep(typed, value);
    },
    leave() {
      if (box.text.trim() !== '' || kept.text === '') return;
      setDraft({ box, own: [...own, undefined] });
      onKeep(undefined, undefined);
    },
  };
}

function valueOf(spec: FieldSpec, box: BoxText): number | undefined {
  const read = readSpec(spec, box);
  return read.kind === 'one' ? read.value : undefined;
}
