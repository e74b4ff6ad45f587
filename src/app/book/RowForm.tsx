import type { ReactNode } from 'react';
import { isThere, newRow, type BookRow, type RowDraft } from '../../job/book';
import { withRow } from '../../job/book/changeRows';
import { KeepForm } from '../parts/KeepForm';
import { BookTrouble } from './BookTrouble';
import { useBookChange } from './useBookChange';

interface RowFormProps {
  /** "cup test": of what it is a row. */
  of: string;
  draft: RowDraft;
  rows: readonly BookRow[];
  /** What a row cannot do without; undefined once it is there. */
  lacks: string | undefined;
  onDone: () => void;
  children: ReactNode;
}

/** A row of the Book that is filled in; the same row twice is not written. */
export function RowForm({ of, draft, rows, lacks, onDone, children }: RowFormProps) {
  const { change, isBusy, ...trouble } = useBookChange();
  const row = newRow(draft, rows);
  const isKnown = isThere(row, rows) !== undefined;
  return (
    <KeepForm
      label={`A ${of}`}
      lacks={isKnown ? `That very ${of} is in the Book already.` : lacks}
      isBusy={isBusy}
      keep={`Write the ${of} in the Book`}
      leave="Write none"
      onKeep={() => change((now) => withRow(now, row), onDone)}
      onLeave={onDone}
      trouble={<BookTrouble {...trouble} />}
    >
      {children}
    </KeepForm>
  );
}
