import { useState, type ReactNode } from 'react';
import { numberText } from '../units';
import type { Drawable } from './drawable';
import { Drawing, type DrawingProps } from './Drawing';
import { hasWebGl, mayHaveWebGl } from './hasWebGl';

/** Above this a picture costs more memory than it tells: a choice of ours. */
const MOST_TRIANGLES = 1_500_000;

/**
 * Up to here it is drawn by itself. To set up the graphics and hand a million facets to them holds up the page for longer than the tenth of a second that
 * it may take to answer, so a larger one waits until it is asked for: chosen here, see `npm run trace`.
 */
const MOST_UNASKED = 250_000;

interface PictureCardProps extends Omit<DrawingProps, 'picture' | 'isScaleCurrent'> {
  title?: string;
  picture: Drawable | undefined;
  /** Not so while another is worked out: the picture stands still, and says no length. */
  isScaleCurrent: boolean;
  /** Why there is no picture, or that there will be another. */
  note: string | undefined;
  /** What the picture shows, in words. */
  alternative: string;
  /** What can be chosen of it: above the picture. */
  choices?: ReactNode;
}

/** Whether this browser draws such a scan: only then can it be pointed at. */
export const isDrawn = (picture: { shownTriangles: number } | undefined): boolean =>
  picture !== undefined &&
  picture.shownTriangles <= MOST_TRIANGLES &&
  (picture.shownTriangles > MOST_UNASKED ? mayHaveWebGl() : hasWebGl());

/** The side card: drawn, not rendered; the words and numbers of the ticket never depend on it. */
export function PictureCard({
  title = 'The scan, up as poured',
  picture,
  note,
  alternative,
  choices,
  ...drawing
}: PictureCardProps) {
  const [isFoldedAway, setFoldedAway] = useState(false);
  const [unfoldedFor, setUnfoldedFor] = useState<object | undefined>(undefined);
  const [isAsked, setAsked] = useState(false);
  const asked = drawing.picking?.asked;
  // A row that wants its place seen unfolds the card, and asks for the picture.
  if (asked !== undefined && asked !== unfoldedFor) {
    setUnfoldedFor(asked);
    setFoldedAway(false);
    setAsked(true);
  }
  // Who points at it wants to see it, and asks for it.
  const folded = isFoldedAway && drawing.pointing === undefined;
  const triangles = picture?.shownTriangles ?? 0;
  const tooMany = triangles > MOST_TRIANGLES;
  if (drawing.pointing !== undefined && !isAsked) setAsked(true);
  const waits = !tooMany && triangles > MOST_UNASKED && !isAsked;
  const isDue = !folded && !tooMany && !waits && picture !== undefined;
  return (
    <figure className="card">
      <div className="bar">
        <b>{title}</b>
        <button
          type="button"
          className="act"
          aria-expanded={!folded}
          onClick={() => setFoldedAway(!isFoldedAway)}
        >
          {folded ? 'Unfold' : 'Fold away'}
        </button>
      </div>
      {isDue && !hasWebGl() && (
        <p className="note">
          This browser draws no 3D pictures (WebGL 2 is off). Every number works without it.
        </p>
      )}
      {!folded && tooMany && (
        <p className="note">
          {numberText(triangles)} triangles are too many to draw. All of them are measured.
        </p>
      )}
      {!folded && waits && (
        <>
          <p className="note">
            {numberText(triangles)} triangles are drawn when you ask for it; the page may stand still for a
            moment. All of them are measured.
          </p>
          <button type="button" className="act" onClick={() => setAsked(true)}>
            Draw the picture
          </button>
        </>
      )}
      {isDue && hasWebGl() && (
        <>
          {choices}
          <Drawing picture={picture} {...drawing} />
        </>
      )}
      {!folded && !waits && (!isDue || hasWebGl()) && note !== undefined && <p className="note">{note}</p>}
      <figcaption>{alternative}</figcaption>
    </figure>
  );
}
