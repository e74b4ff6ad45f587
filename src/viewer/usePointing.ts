import { useEffect, useRef, useState, type KeyboardEvent, type PointerEvent, type RefObject } from 'react';
import type { Ray } from '../geometry';
import type { Eye } from './eye';
import type { Px } from './px';

/** What pointing at the picture is for. */
export interface Pointing {
  onPoint: (ray: Ray) => void;
  onLeave: () => void;
}

/** A press that moves further than this turns the piece. Chosen here. */
const CLICK_PX = 5;

/** So far a key moves the cross: 10 px, with Shift 1 px. */
const KEY_PX = 10;

export interface PointingHands {
  cross: Px | undefined;
  onPointerDown: (event: PointerEvent) => void;
  onPointerUp: (event: PointerEvent) => void;
  /** True where the key was one of pointing. */
  onKey: (event: KeyboardEvent) => boolean;
}

/** Points at the picture: with a click that does not drag, or with a cross that the arrow keys move and Enter sets. */
export function usePointing(
  stage: RefObject<HTMLElement | null>,
  eye: Eye | undefined,
  pointing: Pointing | undefined,
  /** A press that does not drag, while nothing is pointed at. */
  onPress: (px: Px) => void,
): PointingHands {
  const [cross, setCross] = useState<Px | undefined>(undefined);
  const down = useRef<Px | undefined>(undefined);
  const isPointing = pointing !== undefined;
  useEffect(() => {
    if (!isPointing) return;
    stage.current?.focus();
    return () => setCross(undefined);
  }, [isPointing, stage]);

  const onPointerDown = (event: PointerEvent): void => {
    down.current = event.isPrimary && event.button === 0 ? { x: event.clientX, y: event.clientY } : undefined;
  };
  const onPointerUp = (event: PointerEvent): void => {
    const from = down.current;
    down.current = undefined;
    const box = stage.current?.getBoundingClientRect();
    if (eye === undefined || from === undefined || box === undefined) return;
    if (Math.hypot(event.clientX - from.x, event.clientY - from.y) > CLICK_PX) return;
    const at = { x: event.clientX - box.left, y: event.clientY - box.top };
    if (pointing === undefined) return onPress(at);
    setCross(undefined);
    pointing.onPoint(eye.rayAt(at));
  };
  const onKey = (event: KeyboardEvent): boolean => {
    const box = stage.current;
    if (pointing === undefined || eye === undefined || box === null) return false;
    const middle = { x: box.clientWidth / 2, y: box.clientHeight / 2 };
    const by = ARROWS[event.key];
    if (event.key === 'Escape') pointing.onLeave();
    else if (event.key === 'Enter' || event.key === ' ') pointing.onPoint(eye.rayAt(cross ?? middle));
    else if (by === undefined) return false;
    else setCross(movedBy(cross ?? middle, by, event.shiftKey ? 1 : KEY_PX, box));
    event.preventDefault();
    return true;
  };
  return { cross: isPointing ? cross : undefined, onPointerDown, onPointerUp, onKey };
}

const ARROWS: Readonly<Record<string, Px>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};

/** It stays on the picture. */
const movedBy = ({ x, y }: Px, by: Px, step: number, { clientWidth, clientHeight }: HTMLElement): Px => ({
  x: Math.max(0, Math.min(clientWidth, x + step * by.x)),
  y: Math.max(0, Math.min(clientHeight, y + step * by.y)),
});
