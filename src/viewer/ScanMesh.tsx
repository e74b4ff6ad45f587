import { useEffect, useMemo } from 'react';
import { useThree } from '@react-three/fiber';
import type { Drawable } from './drawable';
import { makeSurface, setCardSize } from './makeSurface';

/** The scan as drawn: outline, surface, open rims. */
export function ScanMesh({ picture, contourUnits }: { picture: Drawable; contourUnits: number }) {
  const { width, height } = useThree((state) => state.size);
  const invalidate = useThree((state) => state.invalidate);
  const surface = useMemo(() => makeSurface(picture, contourUnits), [picture, contourUnits]);
  useEffect(() => surface.dispose, [surface]);
  useEffect(() => {
    setCardSize(surface, { width, height });
    invalidate();
  }, [surface, width, height, invalidate]);
  return (
    <>
      <mesh geometry={surface.shape} material={surface.outline} dispose={null} />
      <mesh geometry={surface.shape} material={surface.contour} dispose={null} />
      <lineSegments geometry={surface.rims} material={surface.rimLine} dispose={null} />
    </>
  );
}
