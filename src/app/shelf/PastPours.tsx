import { isRecord } from '../../job/json';
import type { Piece } from '../../job/piece';
import { seenCasting, type SeenCasting } from '../../job/seen';
import { formatMass, gramsText } from '../../units';
import { Letter } from '../parts/Letter';
import { useShop } from '../shop/shopContext';
import { nextCasting } from '../ticket/nextCasting';
import { castingCode } from '../words/castingCode';
import { dayWords } from '../words/dayWords';
import { castingState, mixedOf } from './castingState';
import { moldWords } from './moldWords';

interface PastPoursProps {
  piece: Piece;
  /** Changes the piece: another casting is begun, or taken up. */
  onTake: (change: (piece: Piece) => Piece) => void;
  /** The casting in hand stands in the list as well. */
  isWithHand?: boolean;
}

/** The castings of a piece, the newest first, each as it was last worked out; to begin another like it, or to take it up. */
export function PastPours({ piece, onTake, isWithHand = false }: PastPoursProps) {
  const { view } = useShop();
  const { castings, hand } = piece;
  const ids = Object.keys(castings)
    .filter((id) => isWithHand || id !== hand.casting)
    .sort((one, other) => castings[other]!.no - castings[one]!.no);
  if (ids.length === 0) return <p className="note quiet">No other casting yet.</p>;
  return (
    <ul className="past">
      {ids.map((id) => {
        const code = castingCode(piece, id);
        const { mold } = castings[id]!;
        const mixedG = mixedOf(piece, id, view?.core.book);
        return (
          <li key={id}>
            <p>
              <b className="nb">{code}</b>{' '}
              <span className="quiet">
                {castingState(piece, id, view?.core.book)}
                {mixedG !== undefined && `, ${formatMass(mixedG)} mixed by the Book`}
                {id === hand.casting && ', in hand'}
              </span>
              <br />
              <span className="note">
                {[foamName(piece, id), moldWords(piece, mold)].filter(Boolean).join(', ')}
              </span>
            </p>
            <Figures seen={seenCasting(piece, id, __APP_VERSION__)} />
            <div className="do">
              <button type="button" className="act" onClick={() => onTake((now) => nextCasting(now, id))}>
                Plan a pour like this one<span className="sr">: {code}</span>
              </button>
              {id !== hand.casting && (
                <button
                  type="button"
                  className="act"
                  onClick={() => onTake((now) => ({ ...now, hand: { mold, casting: id } }))}
                >
                  Take it up<span className="sr">: {code}</span>
                </button>
              )}
            </div>
          </li>
        );
      })}
    </ul>
  );
}

/** The same folded away, at the head of a new pour; nothing while there is no other casting. */
export function PastPoursFold({ piece, onTake }: Omit<PastPoursProps, 'isWithHand'>) {
  if (Object.keys(piece.castings).length < 2) return null;
  return (
    <details className="frompast">
      <summary>Start from a past pour</summary>
      <PastPours piece={piece} onTake={onTake} />
    </details>
  );
}

/** Only what still holds: of a casting that was changed since, nothing. */
function Figures({ seen }: { seen: SeenCasting | undefined }) {
  if (seen === undefined) return <p className="note quiet">Grams not worked out as it stands.</p>;
  const grams = (massG: number): string => `${gramsText(massG, seen.stepG)} g`;
  return (
    <p className="figs">
      <span className="nb">
        <Letter of="A" /> {grams(seen.partAG)}
      </span>{' '}
      <span className="nb">
        <Letter of="B" /> {grams(seen.partBG)}
      </span>{' '}
      <span className="nb">{grams(seen.totalG)} together</span>
      <br />
      <span className="note quiet">
        planned at pack {seen.packFactor.toFixed(2)}, worked out {dayWords(seen.day)}
      </span>
    </p>
  );
}

function foamName({ castings }: Piece, id: string): string {
  const foam = castings[id]?.choices.foam;
  return isRecord(foam) && typeof foam.name === 'string' ? foam.name : '';
}
