import { useId, useState } from 'react';
import type { Piece } from '../../job/piece';

/** Name and short code of a piece, changed when both are as they should be. */
export function NameForm({
  piece,
  onName,
}: {
  piece: Piece;
  onName: (change: (piece: Piece) => Piece) => void;
}) {
  const [name, setName] = useState(piece.name);
  const [code, setCode] = useState(piece.code);
  const isBlank = name.trim() === '';
  const isSame = name.trim() === piece.name && code.trim() === piece.code;
  return (
    <details className="name">
      <summary>Name it</summary>
      <form
        className="fields"
        onSubmit={(event) => {
          event.preventDefault();
          if (!isBlank) onName((now) => ({ ...now, name: name.trim(), code: code.trim() }));
        }}
      >
        <TextBox label="Name of the piece" text={name} onText={setName} />
        <TextBox label="Short code, before the number of a casting" text={code} onText={setCode} />
        <div className="chg">
          {isBlank ? (
            <span className="note">A piece needs a name.</span>
          ) : (
            <button type="submit" className="act" disabled={isSame}>
              Use this name
            </button>
          )}
        </div>
      </form>
    </details>
  );
}

function TextBox({ label, text, onText }: { label: string; text: string; onText: (text: string) => void }) {
  const id = useId();
  return (
    <div className="qty">
      <label htmlFor={id}>{label}</label>
      <div className="in">
        <input
          id={id}
          className="w"
          type="text"
          autoComplete="off"
          value={text}
          onChange={(e) => onText(e.target.value)}
        />
      </div>
    </div>
  );
}
