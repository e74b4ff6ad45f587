import {
  lazy,
  Suspense,
  useCallback,
  useId,
  useRef,
  useState,
  type KeyboardEvent,
  type ReactNode,
} from 'react';
import type { Vector } from '../geometry';
import type { Drawable, Plane } from './drawable';
import type { Eye } from './eye';
import { EyeButtons } from './EyeButtons';
import { HowToRead } from './HowToRead';
import type { Mark, Picking } from './mark';
import { MarkLayer } from './MarkLayer';
import { moveOf } from './moves';
import { oneTwoFive } from './oneTwoFive';
import { ScaleBar } from './ScaleBar';
import type { StageLayers } from './Stage';
import { UpArrow } from './UpArrow';
import { useHidden } from './useHidden';
import { usePicking } from './usePicking';
import { usePointing, type Pointing } from './usePointing';
import { VIEWS, type View } from './views';

/** Loaded apart: the page does not wait for three. */
const Stage = lazy(() => import('./Stage'));

export interface DrawingProps {
  picture: Drawable;
  mmPerUnit: number | undefined;
  isScaleCurrent: boolean;
  /** What it is a picture of, for who does not see it. */
  label?: string;
  /** Places on the picture; the first two are `joined` by a line. One object as long as they stay. */
  marks?: readonly Mark[] | undefined;
  joined?: boolean | undefined;
  plane?: Plane | undefined;
  pointing?: Pointing | undefined;
  picking?: Picking | undefined;
  layers?: StageLayers | undefined;
  /** Half extents of all that is drawn, where that is more than the scan. */
  halfUnits?: readonly [number, number, number] | undefined;
  /** Which way is up when poured, where that is not the picture's up. */
  up?: Vector | undefined;
  /** Hands the eye to the card around it. */
  onEye?: ((eye: Eye | undefined) => void) | undefined;
  /** What pointing is for, and what came of it: below the picture, which must not move under the pointer. */
  prompt?: ReactNode;
  /** What the colors mean: right below the picture. */
  legend?: ReactNode;
}

const NO_MARKS: readonly Mark[] = [];
const NO_LAYERS: StageLayers = {};

/** The picture, its scale bar, and a button and a key for everything a drag can do. */
export function Drawing({
  picture,
  mmPerUnit,
  isScaleCurrent,
  label = 'Picture of the scan',
  marks = NO_MARKS,
  joined = false,
  plane,
  pointing,
  picking,
  layers = NO_LAYERS,
  halfUnits = picture.halfUnits,
  up,
  onEye,
  prompt,
  legend,
}: DrawingProps) {
  const stage = useRef<HTMLDivElement>(null);
  const [eye, setEye] = useState<Eye | undefined>(undefined);
  const [at, setAt] = useState<{ pxPerUnit: number; view: View | undefined }>({
    pxPerUnit: 0,
    view: VIEWS[0],
  });
  const keysId = useId();
  const onMoved = useCallback((pxPerUnit: number, view: View | undefined) => setAt({ pxPerUnit, view }), []);
  const onOpened = useCallback(
    (opened: Eye | undefined) => {
      setEye(opened);
      onEye?.(opened);
    },
    [onEye],
  );
  const { seatsRef, onPress, onPickKey } = usePicking(stage, eye, marks, picking);
  const { cross, onPointerDown, onPointerUp, onKey } = usePointing(stage, eye, pointing, onPress);
  const hiddenRef = useHidden({ eye, picture, marks, cut: layers.cut });
  const contour = oneTwoFive((Math.max(...halfUnits) * (mmPerUnit ?? 1)) / 12);
  return (
    <>
      <div
        className={pointing === undefined ? 'stage' : 'stage pointing'}
        data-picture
        ref={stage}
        tabIndex={0}
        role="group"
        aria-label={label}
        aria-describedby={keysId}
        onKeyDown={(event) => onKey(event) || onPickKey(event) || onEyeKey(event, eye)}
        onPointerDown={onPointerDown}
        onPointerUp={onPointerUp}
      >
        <Suspense fallback={<p className="note">The picture is being drawn.</p>}>
          <Stage
            {...{ picture, halfUnits, plane, layers, onMoved }}
            contourUnits={contour / (mmPerUnit ?? 1)}
            onEye={onOpened}
          />
        </Suspense>
        <MarkLayer {...{ eye, marks, joined, seatsRef, hiddenRef }} picked={picking?.picked} />
        {up !== undefined && <UpArrow eye={eye} up={up} />}
        {cross !== undefined && (
          <svg className="marks cross" aria-hidden="true">
            <path d={`M${cross.x - 16} ${cross.y}h32M${cross.x} ${cross.y - 16}v32`} />
          </svg>
        )}
      </div>
      {prompt}
      {at.pxPerUnit > 0 && (
        <ScaleBar pxPerUnit={at.pxPerUnit} mmPerUnit={mmPerUnit} isCurrent={isScaleCurrent} />
      )}
      {legend}
      <EyeButtons eye={eye} view={at.view} />
      <HowToRead
        {...{ picture, mmPerUnit, isScaleCurrent, contour, layers }}
        id={keysId}
        hasPlane={plane !== undefined}
        isPointing={pointing !== undefined}
        hasRows={marks.some(({ isRow }) => isRow === true)}
      />
    </>
  );
}

function onEyeKey(event: KeyboardEvent, eye: Eye | undefined): void {
  if (eye === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
  const move = moveOf(event.key, event.shiftKey)?.move;
  const view = VIEWS[Number(event.key) - 1];
  if (move === undefined && view === undefined) return;
  event.preventDefault();
  if (move !== undefined) move(eye);
  else if (view !== undefined) eye.look(view);
}
