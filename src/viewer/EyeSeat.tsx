import { useEffect, useRef } from 'react';
import { useThree } from '@react-three/fiber';
import type { OrthographicCamera } from 'three';
import { openEye, type Eye } from './eye';
import type { View } from './views';

interface EyeSeatProps {
  halfUnits: readonly [number, number, number];
  onMoved: (pxPerUnit: number, view: View | undefined) => void;
  /** Hands the eye to the buttons and keys outside of the canvas. */
  onEye: (eye: Eye | undefined) => void;
}

/** Opens the eye with the canvas and keeps the piece framed when it or the card changes. */
export function EyeSeat({ halfUnits, onMoved, onEye }: EyeSeatProps) {
  const camera = useThree((state) => state.camera) as OrthographicCamera;
  const canvas = useThree((state) => state.gl.domElement);
  const { width, height } = useThree((state) => state.size);
  const invalidate = useThree((state) => state.invalidate);
  const eye = useRef<Eye | undefined>(undefined);
  useEffect(() => {
    const opened = openEye({ camera, canvas, onMoved, draw: () => invalidate() });
    eye.current = opened;
    onEye(opened);
    return () => {
      opened.close();
      onEye(undefined);
    };
  }, [camera, canvas, invalidate, onMoved, onEye]);
  // Also when the eye itself is a new one: hence the first four.
  useEffect(
    () => eye.current?.frame(halfUnits, { width, height }),
    [camera, canvas, onMoved, onEye, halfUnits, width, height],
  );
  return null;
}
