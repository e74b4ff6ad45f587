import { useEffect, useRef } from 'react';
import type { PlotKit } from './loadPlot';
import { useNear } from './useNear';
import { usePlot } from './usePlot';
import { useWidth } from './useWidth';

/** Draws at a width, in pixels: the words keep their size on every screen. */
export type Draw = (kit: PlotKit, widthPx: number) => Element;

/** The picture of a chart, drawn anew for each width; `alt` says in words what is in it. */
export function DrawnChart({ draw, alt }: { draw: Draw; alt: string }) {
  const ref = useRef<HTMLDivElement>(null);
  const isNear = useNear(ref);
  const widthPx = useWidth(ref);
  const kit = usePlot(isNear);
  useEffect(() => {
    if (typeof kit === 'string' || widthPx === undefined) return;
    ref.current?.replaceChildren(picture(draw(kit, widthPx), alt));
  }, [kit, widthPx, draw, alt]);
  return (
    <>
      <div className="plot" ref={ref} />
      {kit === 'failed' && (
        <p className="note">
          The chart cannot be drawn: what draws it was not kept on this device, and it could not be fetched.
          The table has all of it.
        </p>
      )}
    </>
  );
}

/**
 * The page allows no style element: Plot's own is taken out before the drawing is put in, and charts.css stands in for it. The drawing is one
 * picture with one text; names of its groups ("dot", "rule") tell nobody anything.
 */
function picture(drawn: Element, alt: string): Element {
  drawn.querySelectorAll('style').forEach((style) => style.remove());
  drawn.querySelectorAll('[aria-label]').forEach((group) => group.removeAttribute('aria-label'));
  drawn.setAttribute('role', 'img');
  drawn.setAttribute('aria-label', alt);
  return drawn;
}
