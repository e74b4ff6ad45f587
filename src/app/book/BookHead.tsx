import { useState } from 'react';
import { bookCsv } from '../../job/book';
import { counted } from '../../words/sentence';
import { FileButton } from '../parts/FileButton';
import { saveFile } from '../shop/saveFile';
import { shortHeadline, stillWords } from '../words/bookNext';
import { baseOf } from './baseOf';
import type { BookProps } from './bookProps';
import { BringIn } from './BringIn';
import type { LearnedNow } from './useLearned';

interface BookHeadProps extends Omit<BookProps, 'no'> {
  now: LearnedNow;
  isAll: boolean;
  /** Of a ticket: the piece's own pours, or all. */
  onAll: (() => void) | undefined;
}

/** How much is in it, the one change in a line, and the ways in and out as a list. */
export function BookHead({ book, now, isAll, onAll }: BookHeadProps) {
  const [file, setFile] = useState<File>();
  const { pours, all, piece, rows } = book;
  const shown =
    piece === undefined ? rows : rows.filter((row) => row.kind === 'cup' || row.piece === piece.id);
  return (
    <div className="bookhead">
      <p className="of">
        {piece === undefined
          ? `${counted(all.length, 'pour')} on ${counted(new Set(all.map(({ row }) => row.piece)).size, 'piece')}`
          : `${counted(pours.length, 'pour')} of ${piece.name}, ${all.length} in the Book`}
      </p>
      <ChangeNext now={now} />
      <div className="chg">
        {onAll !== undefined && (
          <button type="button" className="act" aria-pressed={isAll} onClick={onAll}>
            {isAll ? 'This piece alone' : 'All pieces'}
          </button>
        )}
        {shown.length > 0 && (
          <button type="button" className="act" onClick={() => save(bookCsv(shown), piece?.code)}>
            Save as CSV<span className="sr">: the Book</span>
          </button>
        )}
        <FileButton label="Bring in a list" accept=".csv,.txt,.tsv,text/csv" onFile={setFile} />
      </div>
      {file !== undefined && (
        <BringIn
          key={`${file.name} ${file.lastModified}`}
          book={book}
          file={file}
          onDone={() => setFile(undefined)}
        />
      )}
    </div>
  );
}

/** Spreadsheets read a file as UTF-8 by this mark at its start. */
const UTF8_MARK = '\ufeff';

function save(csv: string, code: string | undefined): void {
  const name = code === undefined || code.trim() === '' ? 'book' : `book-${code.trim().toLowerCase()}`;
  saveFile(new Blob([UTF8_MARK, csv], { type: 'text/csv;charset=utf-8' }), `${name}.csv`);
}

function ChangeNext({ now }: { now: LearnedNow }) {
  if (now.state !== 'answered' || now.learned.next?.change === undefined) return null;
  const { learned } = now;
  const { change } = now.learned.next;
  const still = stillWords(change.factor, baseOf(learned, change));
  return (
    <p className="sofar">
      <b>Change next</b> <strong>{shortHeadline(change)}</strong>{' '}
      <span>{[still, 'why: see question 3'].filter(Boolean).join('; ')}</span>
    </p>
  );
}
