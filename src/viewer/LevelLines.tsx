import { useEffect, useMemo } from 'react';
import { lineMaterial, lineShape } from './inkLines';
import { useCardSize } from './useCardSize';

/** Lines on the surface, two ends of every piece in the picture's units: the levels to which air stays. */
export function LevelLines({ ends }: { ends: Float32Array }) {
  const shape = useMemo(() => lineShape(ends), [ends]);
  const ink = useMemo(() => lineMaterial(2), []);
  useEffect(() => () => shape.dispose(), [shape]);
  useEffect(() => () => ink.dispose(), [ink]);
  useCardSize(ink);
  return <mesh geometry={shape} material={ink} dispose={null} frustumCulled={false} />;
}
