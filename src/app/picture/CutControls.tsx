import type { CutPlane } from '../../worker/protocol';
import { CUT_WAYS, cutRange, cutWords, planeAt, type BoxMm, type CutWay } from './cutControls';

interface CutControlsProps {
  plane: CutPlane | undefined;
  /** Of the sculpt, and of all that is drawn. */
  sculpt: BoxMm;
  box: BoxMm;
  onPlane: (plane: CutPlane | undefined) => void;
  onWay: (way: CutWay) => void;
}

/** Buttons move the plane by so many steps of the slider. */
const PRESS_STEPS = 10;

/** Where the picture is cut open: three ways, a slider, and the same in words. */
export function CutControls({ plane, sculpt, box, onPlane, onWay }: CutControlsProps) {
  return (
    <div className="cutting">
      <div className="ways" role="group" aria-label="Cut open">
        {CUT_WAYS.map((way) => (
          <button
            key={way.axis}
            type="button"
            className="act"
            aria-pressed={plane?.axis === way.axis}
            onClick={() => onWay(way)}
          >
            {way.word}
          </button>
        ))}
        <button
          type="button"
          className="act"
          aria-pressed={plane === undefined}
          onClick={() => onPlane(undefined)}
        >
          Show it whole
        </button>
      </div>
      {plane !== undefined && <CutSlide {...{ plane, sculpt, box, onPlane }} />}
    </div>
  );
}

function CutSlide({
  plane,
  sculpt,
  box,
  onPlane,
}: Omit<CutControlsProps, 'plane' | 'onWay'> & { plane: CutPlane }) {
  const { mostMm, stepMm, depthMm } = cutRange(plane, box);
  const words = cutWords(plane, sculpt);
  const to = (mm: number): void => onPlane(planeAt(plane.axis, Math.min(mostMm, Math.max(0, mm)), box));
  return (
    <>
      <div className="slide">
        <button type="button" className="act" onClick={() => to(depthMm - PRESS_STEPS * stepMm)}>
          Shallower
        </button>
        <input
          type="range"
          aria-label="Depth of the cut"
          aria-valuetext={words}
          min={0}
          max={mostMm}
          step={stepMm}
          value={depthMm}
          onChange={(event) => to(Number(event.target.value))}
        />
        <button type="button" className="act" onClick={() => to(depthMm + PRESS_STEPS * stepMm)}>
          Deeper
        </button>
      </div>
      <p className="note">The cut is {words}.</p>
    </>
  );
}
