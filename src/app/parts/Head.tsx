import type { Dispatch } from 'react';
import type { Piece } from '../../job/piece';
import { gramsText } from '../../units';
import type { PourOnPage } from '../../worker/pour';
import { chosenNow } from '../mold/chosen';
import type { Step } from '../route';
import { pourNow, sizeNow, volumeNow } from '../ticket/now';
import type { Action } from '../ticket/reducer';
import type { Ticket } from '../ticket/state';
import { STEP_NAMES } from '../ticket/steps';
import { castingCode } from '../words/castingCode';
import { totalKg } from '../words/moldFigures';
import { volumeText } from '../words/wayWords';
import { Letter } from './Letter';
import { NameForm } from './NameForm';
import { UndoButtons } from './UndoButtons';

interface HeadProps {
  ticket: Ticket;
  dispatch: Dispatch<Action>;
  at: Step;
  piece: Piece | undefined;
  onRename: (change: (piece: Piece) => Piece) => void;
}

/** Whose ticket it is, which step, and what it has come to so far. */
export function Head({ ticket, dispatch, at, piece, onRename }: HeadProps) {
  return (
    <header className="head">
      <p className="of">
        {piece !== undefined && (
          <>
            <span className="code">{castingCode(piece)}</span> {piece.name}, casting {castingNo(piece)}
          </>
        )}
      </p>
      <h1 tabIndex={-1}>{STEP_NAMES[at]}</h1>
      <div className="do">
        <UndoButtons history={ticket.history} dispatch={dispatch} />
        {piece !== undefined && (
          <NameForm key={`${piece.name} ${piece.code}`} piece={piece} onName={onRename} />
        )}
      </div>
      <p className="sofar">
        <b>So far</b>
        <SoFar ticket={ticket} />
      </p>
    </header>
  );
}

const castingNo = ({ castings, hand }: Piece): number => castings[hand.casting]?.no ?? 1;

function SoFar({ ticket }: { ticket: Ticket }) {
  const known = volumeNow(ticket);
  const pour = pourNow(ticket);
  const volume = known.answer;
  return (
    <>
      {volume !== undefined && <strong>{volumeText(volume.by, volume.volumeCm3).value} cm³</strong>}
      {volume === undefined && <span>{known.state === 'working' ? 'working out …' : 'no volume'}</span>}
      {pour.answer !== undefined ? (
        <Grams pour={pour.answer} />
      ) : pour.state !== 'working' ? (
        <span>no grams</span>
      ) : (
        volume !== undefined && <span>working out the grams …</span>
      )}
      <Silicone ticket={ticket} />
    </>
  );
}

/** Kept in its place while the mold is worked out, which takes longest. */
function Silicone({ ticket }: { ticket: Ticket }) {
  const { state, answer } = chosenNow(ticket);
  if (answer !== undefined) return <span className="nb">{totalKg(answer).value} kg of silicone</span>;
  return state === 'working' && sizeNow(ticket).answer !== undefined ? (
    <span className="nb">… kg of silicone</span>
  ) : null;
}

/** Of all cups. */
function Grams({ pour: { batch, cups } }: { pour: PourOnPage }) {
  const count = cups.cups.length;
  return (
    <>
      <span className="pair">
        <span className="nb">
          <Letter of="A" /> <strong>{gramsText(cups.partAG, batch.stepG)} g</strong>
        </span>
        <span className="nb">
          <Letter of="B" /> <strong>{gramsText(cups.partBG, batch.stepG)} g</strong>
        </span>
      </span>
      <span>
        {gramsText(cups.totalG, batch.stepG)} g {count > 1 ? `in ${count} cups` : 'together'}
      </span>
    </>
  );
}
