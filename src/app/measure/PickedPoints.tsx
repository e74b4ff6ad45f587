import type { Vector } from '../../geometry';
import { amount } from '../../words/sentence';
import { PICK_BUTTON } from './pickButton';
import type { PointHand } from './pointHand';

/** The points in words: the picture is not needed to read them. */
export function PickedPoints({ points, hand }: { points: readonly Vector[]; hand: PointHand }) {
  const [one, other] = points;
  return (
    <>
      {points.length > 0 && (
        <ul className="points">
          {points.map((at, n) => (
            <li key={n}>
              <b>Point {n + 1}:</b> x {amount(at[0])}, y {amount(at[1])}, z {amount(at[2])}
            </li>
          ))}
          {one !== undefined && other !== undefined && (
            <li>
              {amount(Math.hypot(...one.map((x, k) => x - other[k]!)))} apart; all in units of the file, on
              its own axes.
            </li>
          )}
        </ul>
      )}
      {hand.canPoint ? (
        <div className="chg">
          <button
            type="button"
            className="act"
            id={PICK_BUTTON}
            aria-pressed={hand.isPointing}
            onClick={hand.isPointing ? hand.onLeave : hand.onStart}
          >
            {hand.isPointing
              ? 'Stop picking'
              : points.length < 2
                ? 'Pick two points on the picture'
                : 'Pick two other points'}
          </button>
        </div>
      ) : (
        <p className="note">There is no picture to point at now. Tape a side instead.</p>
      )}
    </>
  );
}
