import { useEffect, useMemo } from 'react';
import type { CutUniform } from './cutUniform';
import type { Pace } from './pace';
import { openShape } from './shape';
import type { MmSeat, ShownShell } from './shown';
import { contourMaterial, outlineMaterial } from './surfaceMaterials';
import { useCardSize } from './useCardSize';
import { usePaced } from './usePaced';

interface ShellMeshProps {
  shell: ShownShell;
  seat: MmSeat;
  contourUnits: number;
  cut: CutUniform;
  pace: Pace;
  /** Lower is drawn earlier: what is further out hides the others. */
  layer: number;
}

/** The outer face of a part of the mold around the scan. */
export function ShellMesh({
  shell: { surface, tone },
  seat,
  contourUnits,
  cut,
  pace,
  layer,
}: ShellMeshProps) {
  const shape = useMemo(() => openShape(surface), [surface]);
  const contour = useMemo(() => contourMaterial(contourUnits, cut, tone), [contourUnits, cut, tone]);
  const outline = useMemo(() => outlineMaterial(cut), [cut]);
  useEffect(() => () => shape.dispose(), [shape]);
  useEffect(() => () => contour.dispose(), [contour]);
  useEffect(() => () => outline.dispose(), [outline]);
  useCardSize(outline);
  const group = usePaced(pace, shape);
  return (
    <group ref={group} {...placedBy(seat)}>
      <mesh
        geometry={shape.fine}
        material={outline}
        dispose={null}
        frustumCulled={false}
        renderOrder={layer}
      />
      <mesh
        geometry={shape.fine}
        material={contour}
        dispose={null}
        frustumCulled={false}
        renderOrder={layer}
      />
    </group>
  );
}

/** Takes what is drawn in mm on the placed piece to where the picture has it. */
export const placedBy = ({
  mmPerUnit,
  middleUnits: [x, y, z],
}: MmSeat): { scale: number; position: [number, number, number] } => ({
  scale: 1 / mmPerUnit,
  position: [-x, -y, -z],
});
