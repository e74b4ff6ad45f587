import { useEffect, useMemo, useRef, useState } from 'react';
import { withRows, type BookRow, type ColumnMap } from '../../job/book';
import { counted } from '../../words/sentence';
import { Choices } from '../parts/Choices';
import { Complaint } from '../parts/Complaint';
import { FindingsTable } from '../parts/FindingsTable';
import { BookTrouble } from './BookTrouble';
import { ColumnTable } from './ColumnTable';
import { listIn, type ListIn } from './listIn';
import { PreviewTable } from './PreviewTable';
import type { OpenBook } from './useBook';
import { useBookChange } from './useBookChange';

/** A list that was chosen: its columns, its first rows, what cannot be taken. Nothing is written before it is said. */
export function BringIn({ book, file, onDone }: { book: OpenBook; file: File; onDone: () => void }) {
  const panel = useRef<HTMLDivElement>(null);
  const text = useText(file);
  const [columns, setColumns] = useState<ColumnMap>({});
  const [kind, setKind] = useState<BookRow['kind']>();
  const list = useMemo(
    () => (text === undefined || text.isBad ? undefined : listIn(text.text, { columns, kind }, book.rows)),
    [text, columns, kind, book.rows],
  );
  const isRead = text !== undefined;
  useEffect(() => {
    if (isRead) panel.current?.focus();
  }, [isRead]);
  return (
    <div className="ask wide" ref={panel} tabIndex={-1}>
      <p>
        <b>{file.name}</b> {text === undefined ? 'is being read …' : 'Nothing of it is written yet.'}
      </p>
      {text?.isBad === true && (
        <p role="alert">
          It is not UTF-8 text. Save it as comma-separated values in UTF-8, and choose it again.
        </p>
      )}
      {list !== undefined && (
        <>
          <ColumnTable
            heads={list.heads}
            onColumn={(head, to) => setColumns((now) => ({ ...now, [head]: to }))}
          />
          {'problem' in list ? (
            <Complaint problem={list.problem} />
          ) : (
            <Read list={list} kind={kind} onKind={setKind} onDone={onDone} />
          )}
        </>
      )}
      <div className="chg">
        <button type="button" className="act" onClick={onDone}>
          Leave the list
        </button>
      </div>
    </div>
  );
}

interface ReadProps {
  list: ListIn;
  kind: BookRow['kind'] | undefined;
  onKind: (kind: BookRow['kind']) => void;
  onDone: () => void;
}

function Read({ list, kind, onKind, onDone }: ReadProps) {
  const { change, isBusy, ...trouble } = useBookChange();
  const { read, sorted, troubles, leftOut } = list;
  const { fresh, there, twice } = sorted;
  return (
    <>
      {(read.kindAssumed || kind !== undefined) && (
        <Choices
          legend="No column says what the rows are. They are"
          name="listKind"
          value={kind ?? 'pour'}
          assumed={kind === undefined}
          options={[
            { value: 'pour', label: 'pours' },
            { value: 'cup', label: 'cup tests' },
            { value: 'fill', label: 'water fills' },
          ]}
          onChoose={onKind}
        />
      )}
      <p className="count" role="status">
        {[
          `${counted(fresh.length, 'row')} to write`,
          ...(there > 0 ? [`${counted(there, 'row')} in the Book already, word for word`] : []),
          ...(twice > 0
            ? [`${counted(twice, 'row')} twice in the list: give it a number or a day if it is another one`]
            : []),
          ...(leftOut > 0 ? [`${counted(leftOut, 'row')} that cannot be taken`] : []),
        ].join(', ')}
        .
      </p>
      {fresh.length > 0 && <PreviewTable rows={fresh} />}
      {troubles.length > 0 && (
        <FindingsTable findings={troubles} caption="What cannot be taken, by its row: the heads are row 1." />
      )}
      <div className="chg">
        {fresh.length > 0 && (
          <button
            type="button"
            className="act"
            disabled={isBusy}
            onClick={() => change((now) => withRows(now, fresh), onDone)}
          >
            Write {counted(fresh.length, 'row')} in the Book
            {leftOut > 0 && `, leave out ${leftOut}`}
          </button>
        )}
      </div>
      <BookTrouble {...trouble} />
    </>
  );
}

/** The file as text; `isBad` where it is not UTF-8. */
function useText(file: File): { text: string; isBad: boolean } | undefined {
  const [text, setText] = useState<{ text: string; isBad: boolean }>();
  useEffect(() => {
    let isOver = false;
    void file.arrayBuffer().then((bytes) => {
      if (isOver) return;
      try {
        setText({ text: new TextDecoder('utf-8', { fatal: true }).decode(bytes), isBad: false });
      } catch {
        setText({ text: '', isBad: true });
      }
    });
    return () => {
      isOver = true;
    };
  }, [file]);
  return text;
}
