import { useEffect, useRef } from 'react';
import { useFrame, useThree } from '@react-three/fiber';
import type { OrthographicCamera } from 'three';
import { openEye, type Eye } from './eye';
import { MOST_DPR } from './mostDpr';
import type { Pace } from './pace';
import type { View } from './views';

/** So many pixels are drawn in time without graphics hardware. Chosen here. */
const COARSE_PIXELS = 90_000;

const dprOf = (isCoarse: boolean, cardPixels: number): number =>
  isCoarse
    ? Math.min(1, Math.sqrt(COARSE_PIXELS / cardPixels))
    : Math.max(1, Math.min(window.devicePixelRatio, MOST_DPR));

interface EyeSeatProps {
  pace: Pace;
  halfUnits: readonly [number, number, number];
  onMoved: (pxPerUnit: number, view: View | undefined) => void;
  /** Hands the eye to the buttons and keys outside of the canvas. */
  onEye: (eye: Eye | undefined) => void;
}

/** Opens the eye with the canvas and keeps the piece framed when it or the card changes. */
export function EyeSeat({ pace, halfUnits, onMoved, onEye }: EyeSeatProps) {
  const camera = useThree((state) => state.camera) as OrthographicCamera;
  const canvas = useThree((state) => state.gl.domElement);
  const { width, height } = useThree((state) => state.size);
  const invalidate = useThree((state) => state.invalidate);
  const setDpr = useThree((state) => state.setDpr);
  const eye = useRef<Eye | undefined>(undefined);
  useEffect(() => {
    const opened = openEye({
      camera,
      canvas,
      onMoved,
      draw: () => invalidate(),
      onDrag: pace.dragging,
    });
    eye.current = opened;
    onEye(opened);
    return () => {
      opened.close();
      onEye(undefined);
    };
  }, [camera, canvas, invalidate, pace, onMoved, onEye]);
  useEffect(
    () => pace.watch((isCoarse) => setDpr(dprOf(isCoarse, width * height))),
    [pace, setDpr, width, height],
  );
  // Also when the eye itself is a new one: hence the first five.
  useEffect(
    () => eye.current?.frame(halfUnits, { width, height }),
    [camera, canvas, pace, onMoved, onEye, halfUnits, width, height],
  );
  useFrame(() => eye.current?.framed());
  return null;
}
