import { formatLength, numberText } from '../units';
import type { Drawable } from './drawable';
import type { StageLayers } from './Stage';

interface HowToReadProps {
  id: string;
  picture: Drawable;
  mmPerUnit: number | undefined;
  isScaleCurrent: boolean;
  /** Distance of the contour lines, mm or units of the file. */
  contour: number;
  layers: StageLayers;
  hasPlane: boolean;
  isPointing: boolean;
  hasRows: boolean;
}

/** What the lines mean, and the keys of the picture. */
export function HowToRead({ id, picture, layers, hasPlane, isPointing, hasRows, ...scale }: HowToReadProps) {
  const isPainted = layers.painted !== undefined;
  return (
    <p className="note" id={id}>
      {[
        ...(isPainted ? [] : [contourWords(scale)]),
        isPainted ? 'Densely hatched: the back of the surface.' : 'Hatched: the back of the surface.',
        ...(picture.rims.length > 0 ? ['Teal: open edges.'] : []),
        ...(hasPlane ? ['Heavy line and thin hatching: the plane, and what a cut there takes.'] : []),
        ...(hasRows ? ['Dashed boxes and hollow dots: on the far side, or hidden by the piece.'] : []),
        ...(picture.shownTriangles < picture.triangles ? [simplerWords(picture)] : []),
        keyWords(isPointing, hasRows),
      ].join(' ')}
    </p>
  );
}

function contourWords({
  mmPerUnit,
  isScaleCurrent,
  contour,
}: Pick<HowToReadProps, 'mmPerUnit' | 'isScaleCurrent' | 'contour'>): string {
  if (!isScaleCurrent) return 'The distance of the contour lines is being worked out.';
  const inWords = (length: number): string =>
    mmPerUnit === undefined
      ? `${numberText(length)} ${length === 1 ? 'unit' : 'units'}`
      : formatLength(length);
  return `Contour lines every ${inWords(contour)} toward you, heavy every ${inWords(5 * contour)}.`;
}

const simplerWords = ({ shownTriangles, triangles }: Drawable): string =>
  `Drawn with ${numberText(shownTriangles)} of ${numberText(triangles)} triangles; every number is from all of them.`;

const keyWords = (isPointing: boolean, hasRows: boolean): string =>
  isPointing
    ? 'Keys on the picture: arrows move the cross, with Shift finely; Enter sets the point, Escape leaves; + and − zoom, 0 fits, 1 to 6 are the views.'
    : `Keys on the picture: arrows turn it, with Shift they move it, + and − zoom, 0 fits, 1 to 6 are the views${hasRows ? ', n and p go to the next and previous mark' : ''}. A drag turns it, with Shift or two fingers it moves.`;
