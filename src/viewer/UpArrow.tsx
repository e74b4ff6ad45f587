import { useEffect, useRef } from 'react';
import type { Vector } from '../geometry';
import type { Eye } from './eye';
import type { Px } from './px';

/** Nearer to the line of sight than this, an arrow says nothing. */
const END_ON = 0.96;

/** Which way is up when poured, where that is not the picture's own up: an arrow in ink, with its words in the page. */
export function UpArrow({ eye, up }: { eye: Eye | undefined; up: Vector }) {
  const arrow = useRef<SVGGElement>(null);
  const words = useRef<HTMLSpanElement>(null);
  useEffect(() => {
    if (eye === undefined) return;
    const [zero, tip]: [Px, Px] = [
      { x: 0, y: 0 },
      { x: 0, y: 0 },
    ];
    const onFrame = (): void => {
      eye.seen([0, 0, 0], zero);
      eye.seen(up, tip);
      const towards = eye.towards(up);
      const turnDegrees = (Math.atan2(tip.y - zero.y, tip.x - zero.x) * 180) / Math.PI + 90;
      arrow.current?.setAttribute('transform', `rotate(${turnDegrees})`);
      arrow.current?.toggleAttribute('hidden', Math.abs(towards) > END_ON);
      const text =
        Math.abs(towards) <= END_ON
          ? 'up when poured'
          : towards > 0
            ? 'up when poured: toward you'
            : 'up when poured: away from you';
      if (words.current !== null && words.current.textContent !== text) words.current.textContent = text;
    };
    onFrame();
    return eye.watch(onFrame);
  }, [eye, up]);
  return (
    <p className="uparrow">
      <svg viewBox="-16 -16 32 32" aria-hidden="true">
        <g ref={arrow}>
          <path d="M0 14V-12M-6 -5L0 -13L6 -5" />
        </g>
      </svg>
      <span ref={words}>up when poured</span>
    </p>
  );
}
