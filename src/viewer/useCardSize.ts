import { useEffect } from 'react';
import { useThree } from '@react-three/fiber';
import type { ShaderMaterial } from 'three';
import { setCardSize } from './makeSurface';

/** Keeps lines of a width in pixels as wide as they are meant, whatever the card measures. */
export function useCardSize(material: ShaderMaterial): void {
  const { width, height } = useThree((state) => state.size);
  const invalidate = useThree((state) => state.invalidate);
  useEffect(() => {
    setCardSize(material, { width, height });
    invalidate();
  }, [material, width, height, invalidate]);
}
