import { useEffect, useRef } from 'react';
import { counted } from '../../words/sentence';
import { MarkShape } from '../parts/StatusMark';
import { BackUpButton } from '../shop/BackUpButton';
import { useShop } from '../shop/shopContext';
import { shopContents } from './shopContents';
import type { Restore, RestoreVerbs } from './useRestore';

/** What becomes of a backup that was chosen, asked in place; and what came of it. */
export function RestorePanel({ restore, take, leave }: RestoreVerbs) {
  const panel = useRef<HTMLDivElement>(null);
  const { state } = restore;
  // The file may have been chosen at the other end of the page.
  useEffect(() => {
    if (state === 'asked' || state === 'refused' || state === 'done') panel.current?.focus();
  }, [state]);
  return (
    <div className="restore" ref={panel} tabIndex={-1}>
      <p className="told" role="status">
        {restore.state === 'reading' && `${restore.file} is being read …`}
        {restore.state === 'working' && `${restore.file} is being brought in …`}
      </p>
      {restore.state === 'refused' && (
        <div className="complaint" role="alert">
          <MarkShape mark="stop" />
          <p>
            <b>{restore.sentence.text}</b> <span>{restore.sentence.hint}</span>
          </p>
        </div>
      )}
      {restore.state === 'done' && <Came {...restore} leave={leave} />}
      {restore.state === 'asked' && <Asked {...restore} take={take} leave={leave} />}
    </div>
  );
}

type Of<State extends Restore['state']> = Extract<Restore, { state: State }>;

const Came = ({ file, came, leave }: Of<'done'> & Pick<RestoreVerbs, 'leave'>) => (
  <div className="ask">
    <p>
      <b>
        Brought in from {file}: {counted(came.pieces, 'piece')} and {counted(came.cards, 'card')}.
      </b>
    </p>
    {came.rows > 0 && <p>{counted(came.rows, 'row')} of the Book came along.</p>}
    {came.left.length > 0 && <p>Left as they stand here: {came.left.join(', ')}.</p>}
    <div className="chg">
      <button type="button" className="act" onClick={leave}>
        Done
      </button>
    </div>
  </div>
);

function Asked({ file, told, take, leave }: Of<'asked'> & Pick<RestoreVerbs, 'take' | 'leave'>) {
  const { view } = useShop();
  if (view === undefined) return null;
  return (
    <div className="ask">
      <p>
        <b>
          {file} is a backup{told.name === '' ? '' : ` of ${told.name}`}: {counted(told.pieces, 'piece')},{' '}
          {counted(told.scans, 'scan')} and {counted(told.cards, 'card')}.
        </b>{' '}
        {told.rows > 0 && `Its Book has ${counted(told.rows, 'row')}. `}
        Here stand {shopContents(view)}. Nothing has been changed yet.
      </p>
      <div className="chg">
        <button type="button" className="act" onClick={() => take('beside')}>
          Put it beside what is here
        </button>
        <button type="button" className="act" onClick={() => take('replace')}>
          Replace all that is here
        </button>
        <button type="button" className="act" onClick={leave}>
          Leave it
        </button>
      </div>
      <p className="note">
        Beside: a piece, a card or a row of the Book that stands here already stays as it is here. Replaced:
        what is here is gone, and only a backup brings it back.
      </p>
      <div className="chg">
        <BackUpButton />
      </div>
    </div>
  );
}
