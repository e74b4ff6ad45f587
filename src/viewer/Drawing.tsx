import { lazy, Suspense, useCallback, useState, type KeyboardEvent } from 'react';
import { formatLength, numberText } from '../units';
import type { Drawable } from './drawable';
import type { Eye } from './eye';
import { oneTwoFive } from './oneTwoFive';
import { ScaleBar } from './ScaleBar';
import { TURN_STEP_RAD, VIEWS, ZOOM_STEP, type View } from './views';

/** Loaded apart: the page does not wait for three. */
const Stage = lazy(() => import('./Stage'));

/** The picture, its scale bar, and a button and a key for everything a drag can do. */
export function Drawing({
  picture,
  mmPerUnit,
  isScaleCurrent,
}: {
  picture: Drawable;
  mmPerUnit: number | undefined;
  isScaleCurrent: boolean;
}) {
  const [eye, setEye] = useState<Eye | undefined>(undefined);
  const [at, setAt] = useState<{ pxPerUnit: number; view: View | undefined }>({
    pxPerUnit: 0,
    view: VIEWS[0],
  });
  const perUnit = mmPerUnit ?? 1;
  const onMoved = useCallback((pxPerUnit: number, view: View | undefined) => setAt({ pxPerUnit, view }), []);
  const contour = oneTwoFive((Math.max(...picture.halfUnits) * perUnit) / 12);
  const inWords = (length: number): string =>
    mmPerUnit === undefined
      ? `${numberText(length)} ${length === 1 ? 'unit' : 'units'}`
      : formatLength(length);
  return (
    <>
      <div
        className="stage"
        data-picture
        tabIndex={0}
        role="group"
        aria-label="Picture of the scan"
        aria-describedby="picture-keys"
        onKeyDown={(event) => onKey(event, eye)}
      >
        <Suspense fallback={<p className="note">The picture is being drawn.</p>}>
          <Stage picture={picture} contourUnits={contour / perUnit} onEye={setEye} onMoved={onMoved} />
        </Suspense>
      </div>
      {at.pxPerUnit > 0 && (
        <ScaleBar pxPerUnit={at.pxPerUnit} mmPerUnit={mmPerUnit} isCurrent={isScaleCurrent} />
      )}
      <div className="views" role="group" aria-label="Straight views">
        {VIEWS.map((view) => (
          <button
            key={view.key}
            type="button"
            className="act"
            aria-pressed={at.view === view}
            onClick={() => eye?.look(view)}
          >
            {view.word}
          </button>
        ))}
      </div>
      <div className="moves" role="group" aria-label="Turn and zoom">
        {MOVES.map(({ word, move }) => (
          <button key={word} type="button" className="act" onClick={() => eye !== undefined && move(eye)}>
            {word}
          </button>
        ))}
      </div>
      <p className="note" id="picture-keys">
        {isScaleCurrent
          ? `Contour lines every ${inWords(contour)} toward you, heavy every ${inWords(5 * contour)}.`
          : 'The distance of the contour lines is being worked out.'}{' '}
        Hatched: the back of the surface.
        {picture.rims.length > 0 && ' Teal: open edges.'} Keys on the picture: arrows turn it, + and − zoom, 0
        fits, 1 to 6 are the views.
      </p>
    </>
  );
}

const MOVES: readonly { word: string; keys: readonly string[]; move: (eye: Eye) => void }[] = [
  { word: 'Turn left', keys: ['ArrowLeft'], move: (eye) => eye.turn({ sideRad: TURN_STEP_RAD, upRad: 0 }) },
  {
    word: 'Turn right',
    keys: ['ArrowRight'],
    move: (eye) => eye.turn({ sideRad: -TURN_STEP_RAD, upRad: 0 }),
  },
  { word: 'Higher', keys: ['ArrowUp'], move: (eye) => eye.turn({ sideRad: 0, upRad: TURN_STEP_RAD }) },
  { word: 'Lower', keys: ['ArrowDown'], move: (eye) => eye.turn({ sideRad: 0, upRad: -TURN_STEP_RAD }) },
  { word: 'Closer', keys: ['+', '='], move: (eye) => eye.zoom(ZOOM_STEP) },
  { word: 'Farther', keys: ['-', '_'], move: (eye) => eye.zoom(1 / ZOOM_STEP) },
  { word: 'Fit', keys: ['0'], move: (eye) => eye.fit() },
];

function onKey(event: KeyboardEvent, eye: Eye | undefined): void {
  if (eye === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
  const move = MOVES.find(({ keys }) => keys.includes(event.key))?.move;
  const view = VIEWS[Number(event.key) - 1];
  if (move === undefined && view === undefined) return;
  event.preventDefault();
  if (move !== undefined) move(eye);
  else if (view !== undefined) eye.look(view);
}
