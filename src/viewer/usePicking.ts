import { useEffect, useRef, type KeyboardEvent, type RefObject } from 'react';
import type { Eye } from './eye';
import type { Px } from './px';
import type { Mark, Picking } from './mark';
import { markAt, markBeside } from './markAt';
import type { MarkSeats } from './placeMarks';

export interface PickingHands {
  seatsRef: RefObject<MarkSeats | undefined>;
  onPress: (px: Px) => void;
  /** True where the key was one of picking. */
  onPickKey: (event: KeyboardEvent) => boolean;
}

/** Picks numbered marks by a press or by n and p, and turns the eye to the one that a row asks for. */
export function usePicking(
  stage: RefObject<HTMLElement | null>,
  eye: Eye | undefined,
  marks: readonly Mark[],
  picking: Picking | undefined,
): PickingHands {
  const seatsRef = useRef<MarkSeats | undefined>(undefined);
  const done = useRef<Picking['asked']>(undefined);
  const { asked } = picking ?? {};
  useEffect(() => {
    if (eye === undefined || asked === undefined || asked === done.current) return;
    done.current = asked;
    stage.current?.scrollIntoView({ block: 'nearest' });
    faceMark(
      eye,
      marks.find(({ label, isRow }) => isRow === true && label === asked.label),
    );
  }, [stage, eye, asked, marks]);
  const onPress = (px: Px): void => {
    if (picking === undefined || seatsRef.current === undefined) return;
    const mark = markAt(marks, seatsRef.current.labels, px);
    if (mark !== undefined) picking.onPick(mark.label);
  };
  const onPickKey = (event: KeyboardEvent): boolean => {
    const step = STEPS[event.key];
    if (picking === undefined || step === undefined) return false;
    if (event.ctrlKey || event.metaKey || event.altKey) return false;
    const mark = markBeside(marks, picking.picked, step);
    if (mark === undefined) return false;
    event.preventDefault();
    picking.onPick(mark.label);
    if (eye !== undefined) faceMark(eye, mark);
    return true;
  };
  return { seatsRef, onPress, onPickKey };
}

const STEPS: Readonly<Record<string, 1 | -1>> = { n: 1, p: -1 };

/** A place whose side is not known is shown as the eye stands. */
const faceMark = (eye: Eye, mark: Mark | undefined): void => {
  if (mark?.normal !== undefined) eye.face(mark.normal);
};
