import { useState } from 'react';
import type { Drawable } from './drawable';
import { Drawing } from './Drawing';
import { hasWebGl } from './hasWebGl';

/** Above this a picture costs more memory than it tells: a choice of ours. */
const MOST_TRIANGLES = 1_500_000;

interface PictureCardProps {
  picture: Drawable | undefined;
  mmPerUnit: number | undefined;
  /** Not so while another is worked out: the picture stands still, and says no length. */
  isScaleCurrent: boolean;
  /** Why there is no picture, or that there will be another. */
  note: string | undefined;
  /** What the picture shows, in words. */
  alternative: string;
}

/** The side card: drawn, not rendered; the words and numbers of the ticket never depend on it. */
export function PictureCard({ picture, mmPerUnit, isScaleCurrent, note, alternative }: PictureCardProps) {
  const [folded, setFolded] = useState(false);
  const tooMany = picture !== undefined && picture.triangles > MOST_TRIANGLES;
  return (
    <figure className="card">
      <div className="bar">
        <b>The scan, up as poured</b>
        <button type="button" className="act" aria-expanded={!folded} onClick={() => setFolded(!folded)}>
          {folded ? 'Unfold' : 'Fold away'}
        </button>
      </div>
      {!folded && !hasWebGl() && (
        <p className="note">
          This browser draws no 3D pictures (WebGL 2 is off). Every number works without it.
        </p>
      )}
      {!folded && tooMany && (
        <p className="note">{picture.triangles} triangles are too many to draw. All of them are measured.</p>
      )}
      {!folded && hasWebGl() && !tooMany && picture !== undefined && (
        <Drawing picture={picture} mmPerUnit={mmPerUnit} isScaleCurrent={isScaleCurrent} />
      )}
      {!folded && hasWebGl() && note !== undefined && <p className="note">{note}</p>}
      <figcaption>{alternative}</figcaption>
    </figure>
  );
}
