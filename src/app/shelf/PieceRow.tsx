import { lazy, Suspense, type MouseEvent } from 'react';
import type { Piece } from '../../job/piece';
import { seenSculpt } from '../../job/seen';
import { Link } from '../parts/Link';
import { NameForm } from '../parts/NameForm';
import type { Step } from '../route';
import { nextCasting, nextMold } from '../ticket/nextCasting';
import type { Nav } from '../useRoute';
import { castingCode } from '../words/castingCode';
import { castingsWords } from './castingState';
import { moldNote, moldWords } from './moldWords';
import { nextStep } from './nextStep';
import { OutlineDrawing } from './OutlineDrawing';
import { extentsWords, volumeWords } from './sizeWords';
import { wayVolumeWords } from './wayVolume';

const PastPours = lazy(() => import('./PastPours').then((loaded) => ({ default: loaded.PastPours })));

/** What a row may do with its piece. */
export interface RowVerbs {
  /** Keeps a change of it. */
  onChange: (piece: Piece, change: (piece: Piece) => Piece) => void;
  /** Keeps a change and goes to its ticket. */
  onTake: (piece: Piece, change: (piece: Piece) => Piece, at: Step) => void;
  onDelete: (piece: Piece, event: MouseEvent) => void;
}

interface PieceRowProps extends RowVerbs {
  nav: Nav;
  piece: Piece;
  /** The pours that the shop has written down. */
  book: unknown;
  /** Its next step is the one solid button of the screen. */
  isFirst: boolean;
}

export function PieceRow({ nav, piece, book, isFirst, ...verbs }: PieceRowProps) {
  const seen = seenSculpt(piece, __APP_VERSION__);
  const next = nextStep(piece, book);
  const { molds } = piece;
  return (
    <li className="piece">
      <div className="pic">
        <OutlineDrawing outline={seen?.outline} name={piece.name} />
      </div>
      <div className="what">
        <h2>
          <Link nav={nav} to={{ at: next.at, piece: piece.id }}>
            {piece.name}
          </Link>
        </h2>
        <p className="note quiet">
          {seen?.size === undefined ? (
            (wayVolumeWords(piece) ?? 'not worked out yet')
          ) : (
            <>
              <span className="nb">{extentsWords(seen.size)}</span>
              <br />
              {volumeWords(seen.size)}
            </>
          )}
        </p>
      </div>
      <dl>
        <dt>{Object.keys(molds).length === 1 ? 'Mold' : 'Molds'}</dt>
        {Object.entries(molds).map(([id]) => (
          <dd key={id}>
            {moldWords(piece, id)} <span className="note quiet">{moldNote(piece, id)}</span>
          </dd>
        ))}
      </dl>
      <dl>
        <dt>Castings</dt>
        <dd>{castingsWords(piece, book)}</dd>
        <dd className="note quiet">in hand: {castingCode(piece)}</dd>
      </dl>
      <div className="go">
        {next.plan === true ? (
          <button
            type="button"
            className={isFirst ? 'btn' : 'act'}
            onClick={() => verbs.onTake(piece, (now) => nextCasting(now, now.hand.casting), 'batch')}
          >
            {next.words}
            <Of piece={piece} />
          </button>
        ) : (
          <Link nav={nav} to={{ at: next.at, piece: piece.id }} className={isFirst ? 'btn' : 'act'}>
            {next.words}
            <Of piece={piece} />
          </Link>
        )}
      </div>
      <div className="chg">
        {next.plan !== true && (
          <button
            type="button"
            className="act"
            onClick={() => verbs.onTake(piece, (now) => nextCasting(now, now.hand.casting), 'batch')}
          >
            Plan another pour
            <Of piece={piece} />
          </button>
        )}
        <button type="button" className="act" onClick={() => verbs.onTake(piece, nextMold, 'mold')}>
          Another mold
          <Of piece={piece} />
        </button>
        <NameForm
          key={`${piece.name} ${piece.code}`}
          piece={piece}
          onName={(change) => verbs.onChange(piece, change)}
        />
        <details>
          <summary>
            Castings <span className="sr">of {piece.name}</span>
          </summary>
          <Suspense fallback={<p className="note">Loading …</p>}>
            <PastPours piece={piece} isWithHand onTake={(change) => verbs.onTake(piece, change, 'batch')} />
          </Suspense>
        </details>
        <button type="button" className="act" onClick={(event) => verbs.onDelete(piece, event)}>
          Delete
          <Of piece={piece} />
        </button>
      </div>
    </li>
  );
}

/** Of what, for who does not see the row. */
const Of = ({ piece }: { piece: Piece }) => <span className="sr">: {piece.name}</span>;
