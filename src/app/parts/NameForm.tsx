import { useState } from 'react';
import type { Piece } from '../../job/piece';
import { TextField } from './TextField';

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
        <TextField label="Name of the piece" text={name} onText={setName} />
        <TextField label="Short code, before the number of a casting" text={code} onText={setCode} />
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
