import { useEffect, useRef, type RefObject } from 'react';
import type { Vector } from '../geometry';
import type { Cut } from './cut';
import type { Drawable } from './drawable';
import type { Eye } from './eye';
import { isHidden } from './isHidden';
import type { Mark } from './mark';

/** The eye rests after this long without a turn: then it is looked up, mark by mark, what the piece hides. Chosen here. */
const REST_MS = 150;

interface HiddenOptions {
  eye: Eye | undefined;
  picture: Drawable;
  marks: readonly Mark[];
  cut: Cut | undefined;
}

/** Labels of the marks that the piece stands before. Changed in place, no state: it follows the eye. Only a turn matters, since nothing gets smaller with distance. */
export function useHidden({ eye, picture, marks, cut }: HiddenOptions): RefObject<Set<string>> {
  const hidden = useRef(new Set<string>());
  useEffect(() => {
    if (eye === undefined) return;
    const labels = hidden.current;
    let timer: ReturnType<typeof setTimeout> | undefined;
    let toEye: Vector = [NaN, NaN, NaN];
    const look = (i: number): void => {
      const mark = marks[i];
      if (mark === undefined) return eye.framed();
      if (mark.isRow === true && isHidden(picture, { at: mark.at, normal: mark.normal, toEye }, cut))
        labels.add(mark.label);
      timer = setTimeout(() => look(i + 1));
    };
    const onFrame = (): void => {
      const now = AXES.map((axis) => eye.towards(axis)) as unknown as Vector;
      if (now.every((c, k) => c === toEye[k])) return;
      toEye = now;
      labels.clear();
      clearTimeout(timer);
      timer = setTimeout(() => look(0), REST_MS);
    };
    onFrame();
    const stop = eye.watch(onFrame);
    return () => {
      stop();
      clearTimeout(timer);
    };
  }, [eye, picture, marks, cut]);
  return hidden;
}

const AXES: readonly Vector[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];
