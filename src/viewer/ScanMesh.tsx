import { useEffect, useMemo } from 'react';
import { useThree } from '@react-three/fiber';
import type { CutUniform } from './cutUniform';
import type { Drawable, Plane } from './drawable';
import { makeSurface, setPlane } from './makeSurface';
import type { Pace } from './pace';
import { paintMaterial, weighed, type StepBorders } from './paintMaterial';
import { useCardSize } from './useCardSize';
import { usePaced } from './usePaced';

/** A value at every vertex of the picture, NaN where it is not known, and the borders of its six steps. */
export interface Painted {
  values: Float32Array;
  borders: StepBorders;
}

interface ScanMeshProps {
  picture: Drawable;
  contourUnits: number;
  plane: Plane | undefined;
  cut: CutUniform;
  painted: Painted | undefined;
  pace: Pace;
}

/** The scan as drawn: outline, surface in contour lines or painted, open rims, and where a cut would go. */
export function ScanMesh({ picture, contourUnits, plane, cut, painted, pace }: ScanMeshProps) {
  const invalidate = useThree((state) => state.invalidate);
  const surface = useMemo(() => makeSurface(picture, contourUnits, cut), [picture, contourUnits, cut]);
  const paint = useMemo(
    () => (painted === undefined ? undefined : paintMaterial(painted.borders, cut)),
    [painted, cut],
  );
  useEffect(() => surface.dispose, [surface]);
  useEffect(() => () => paint?.dispose(), [paint]);
  useCardSize(surface.outline);
  useEffect(() => {
    setPlane(surface, plane);
    invalidate();
  }, [surface, plane, invalidate]);
  useEffect(() => {
    if (painted !== undefined) surface.shape.set('weighed', weighed(painted.values), 2);
    invalidate();
  }, [surface, painted, invalidate]);
  const group = usePaced(pace, surface.shape);
  return (
    <>
      <group ref={group}>
        <mesh geometry={surface.shape.fine} material={surface.outline} dispose={null} frustumCulled={false} />
        <mesh
          geometry={surface.shape.fine}
          material={paint ?? surface.contour}
          dispose={null}
          frustumCulled={false}
        />
      </group>
      <lineSegments geometry={surface.rims} material={surface.rimLine} dispose={null} />
    </>
  );
}
