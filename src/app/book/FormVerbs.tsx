/** Writes the form down as a row, or says what it lacks; or leaves it. */
export function FormVerbs({
  lacks,
  write,
  onDone,
}: {
  lacks: string | undefined;
  write: string;
  onDone: () => void;
}) {
  return (
    <div className="chg">
      {lacks === undefined ? (
        <button type="submit" className="act">
          {write}
        </button>
      ) : (
        <span className="note">{lacks}</span>
      )}
      <button type="button" className="act" onClick={onDone}>
        Write none
      </button>
    </div>
  );
}
