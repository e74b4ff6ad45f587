import { useEffect, useState } from 'react';
import { Canvas, useThree } from '@react-three/fiber';
import type { Drawable } from './drawable';
import type { Eye } from './eye';
import { EyeSeat } from './EyeSeat';
import { ScanMesh } from './ScanMesh';
import type { View } from './views';

interface StageProps {
  picture: Drawable;
  contourUnits: number;
  onMoved: (pxPerUnit: number, view: View | undefined) => void;
  onEye: (eye: Eye | undefined) => void;
}

/** The drawing surface: orthographic, still until asked. Loaded apart, so that the page does not wait for it. */
export default function Stage({ picture, contourUnits, onMoved, onEye }: StageProps) {
  const [lost, setLost] = useState(false);
  return (
    <>
      <Canvas orthographic flat frameloop="demand" dpr={[1, 2]} aria-hidden="true" tabIndex={-1}>
        <EyeSeat halfUnits={picture.halfUnits} onMoved={onMoved} onEye={onEye} />
        <ScanMesh picture={picture} contourUnits={contourUnits} />
        <LossWatch onLost={setLost} />
      </Canvas>
      {lost && (
        <p className="lost" role="status">
          The graphics were lost; the picture comes back by itself. The numbers do not need it.
        </p>
      )}
    </>
  );
}

/** A lost context is told of, and drawn again when it is back: three restores what it had uploaded. */
function LossWatch({ onLost }: { onLost: (lost: boolean) => void }) {
  const canvas = useThree((state) => state.gl.domElement);
  const invalidate = useThree((state) => state.invalidate);
  useEffect(() => {
    const lost = (event: Event): void => {
      event.preventDefault();
      onLost(true);
    };
    const restored = (): void => {
      onLost(false);
      invalidate();
    };
    canvas.addEventListener('webglcontextlost', lost);
    canvas.addEventListener('webglcontextrestored', restored);
    return () => {
      canvas.removeEventListener('webglcontextlost', lost);
      canvas.removeEventListener('webglcontextrestored', restored);
    };
  }, [canvas, invalidate, onLost]);
  return null;
}
