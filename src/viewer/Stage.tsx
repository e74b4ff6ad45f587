import { useEffect, useMemo, useState } from 'react';
import { Canvas, useThree } from '@react-three/fiber';
import type { Cut } from './cut';
import { noCut, setCut, type CutUniform } from './cutUniform';
import { CutFaceMesh } from './CutFaceMesh';
import { CutSheet } from './CutSheet';
import type { Drawable, Plane } from './drawable';
import type { Eye } from './eye';
import { EyeSeat } from './EyeSeat';
import { drawsInSoftware } from './hasWebGl';
import { LevelLines } from './LevelLines';
import { MOST_DPR } from './mostDpr';
import { openPace } from './pace';
import { ScanMesh, type Painted } from './ScanMesh';
import { ShellMesh } from './ShellMesh';
import type { MmSeat, ShownCut, ShownShell } from './shown';
import { useOneByOne } from './useOneByOne';
import type { View } from './views';

/** What is drawn beside the scan itself. One object each as long as it stays the same: another is uploaded anew. */
export interface StageLayers {
  /** Where mm on the placed piece lie in the picture; without it there are no layers in mm. */
  seat?: MmSeat | undefined;
  shells?: readonly ShownShell[] | undefined;
  /** Everything nearer than this is taken away, of scan and shells alike. */
  cut?: Cut | undefined;
  /** What the cut shows, once it is known for this cut. */
  faces?: ShownCut | undefined;
  /** The scan in steps of a value, instead of contour lines. */
  painted?: Painted | undefined;
  /** Lines on the surface, two ends of every piece, in the picture's units. */
  levelEnds?: Float32Array | undefined;
}

interface StageProps {
  picture: Drawable;
  /** Half extents around the middle of the picture of all that is drawn. */
  halfUnits: readonly [number, number, number];
  contourUnits: number;
  plane: Plane | undefined;
  layers: StageLayers;
  onMoved: (pxPerUnit: number, view: View | undefined) => void;
  onEye: (eye: Eye | undefined) => void;
}

/** The drawing surface: orthographic, still until asked. Loaded apart, so that the page does not wait for it. */
export default function Stage({
  picture,
  halfUnits,
  contourUnits,
  plane,
  layers: { seat, shells, cut, faces, painted, levelEnds },
  onMoved,
  onEye,
}: StageProps) {
  const [lost, setLost] = useState(false);
  const cutHere = useMemo(() => noCut(), []);
  const pace = useMemo(() => openPace(drawsInSoftware()), []);
  const around = useOneByOne(shells);
  return (
    <>
      <Canvas
        gl={{ antialias: !drawsInSoftware() }}
        orthographic
        flat
        frameloop="demand"
        dpr={[1, MOST_DPR]}
        aria-hidden="true"
        tabIndex={-1}
      >
        <EyeSeat pace={pace} halfUnits={halfUnits} onMoved={onMoved} onEye={onEye} />
        <CutSeat cut={cut} cutHere={cutHere} />
        <ScanMesh {...{ picture, contourUnits, plane, painted, pace }} cut={cutHere} />
        {plane !== undefined && <CutSheet halfUnits={picture.halfUnits} atUnits={plane.atUnits} />}
        {seat !== undefined &&
          around.map((shell, i) => (
            <ShellMesh key={i} {...{ shell, seat, contourUnits, pace }} cut={cutHere} layer={-i} />
          ))}
        {seat !== undefined && faces !== undefined && <CutFaceMesh cut={faces} seat={seat} />}
        {levelEnds !== undefined && levelEnds.length > 0 && <LevelLines ends={levelEnds} />}
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

/** Tells every shader of the stage where it is cut. */
function CutSeat({ cut, cutHere }: { cut: Cut | undefined; cutHere: CutUniform }) {
  const invalidate = useThree((state) => state.invalidate);
  useEffect(() => {
    setCut(cutHere, cut);
    invalidate();
  }, [cut, cutHere, invalidate]);
  return null;
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
