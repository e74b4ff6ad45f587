import type { Undos } from '../shelf/useUndos';
import { BookTrouble } from './BookTrouble';
import { useDeleteRow } from './useDeleteRow';

/** Deletes a row of the book; the bar above the page takes it back. */
export function DeleteRow({ id, what, undos }: { id: string; what: string; undos: Undos }) {
  const { drop, ...trouble } = useDeleteRow(undos);
  return (
    <>
      <button type="button" className="act" onClick={(event) => drop(event, id, what)}>
        Delete<span className="sr">: {what}</span>
      </button>
      <BookTrouble {...trouble} />
    </>
  );
}
