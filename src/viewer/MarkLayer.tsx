import { useEffect, useLayoutEffect, useRef } from 'react';
import type { Eye } from './eye';
import type { Mark } from './mark';
import { placeMarks, seatMarks, type MarkSeats } from './placeMarks';

interface MarkLayerProps {
  eye: Eye | undefined;
  marks: readonly Mark[];
  /** The first two marks are joined by a line. */
  joined: boolean;
  picked?: string | undefined;
  /** Where the marks are seen, for who presses one. */
  seatsRef: React.RefObject<MarkSeats | undefined>;
  /** Which marks the piece hides, as far as it was looked up for where the eye is. */
  hiddenRef: React.RefObject<ReadonlySet<string>>;
}

/** Marks of one size at any zoom, over the picture. They follow the eye frame by frame. */
export function MarkLayer({ eye, marks, joined, picked, seatsRef, hiddenRef }: MarkLayerProps) {
  const svg = useRef<SVGSVGElement>(null);
  useLayoutEffect(() => {
    seatsRef.current = svg.current === null ? undefined : seatMarks(svg.current, marks);
    if (eye !== undefined) placeMarks(seatsRef.current, eye, hiddenRef.current);
  }, [eye, marks, seatsRef, hiddenRef]);
  useEffect(
    () => eye?.watch(() => placeMarks(seatsRef.current, eye, hiddenRef.current)),
    [eye, seatsRef, hiddenRef],
  );
  return (
    <svg className="marks" aria-hidden="true" ref={svg}>
      {joined && marks.length > 1 && <line className="joint" />}
      {marks.map((mark) =>
        mark.isRow === true ? (
          <RowMark key={`row ${mark.label}`} mark={mark} isPicked={mark.label === picked} />
        ) : (
          <g key={mark.label}>
            <circle r="5" />
            <text x="13" y="-10">
              {mark.label}
            </text>
          </g>
        ),
      )}
    </svg>
  );
}

function RowMark({ mark: { label, upTo, ringRadius }, isPicked }: { mark: Mark; isPicked: boolean }) {
  const half = halfWidePx(label);
  return (
    <g data-mark={label} data-picked={isPicked || undefined}>
      {upTo !== undefined && <line data-part="rise" />}
      {ringRadius !== undefined && <ellipse data-part="ring" />}
      <line data-part="leader" />
      {/* A dot of 4 px. */}
      <path data-part="dot" d="M-4 0a4 4 0 1 0 8 0a4 4 0 1 0 -8 0" />
      <g data-part="box">
        <rect x={-half} y="-11" width={2 * half} height="22" rx="2" />
        <text>{label}</text>
      </g>
    </g>
  );
}

/** Room for the figures of a label. */
export const halfWidePx = (label: string): number => 7 + 4 * label.length;
