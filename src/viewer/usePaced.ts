import { useEffect, useRef, type RefObject } from 'react';
import { useThree } from '@react-three/fiber';
import type { Group, Mesh } from 'three';
import type { Pace } from './pace';
import type { Shape } from './shape';

/** The meshes of a group are drawn coarsely while the pace asks for it. No state: it changes within a drag. */
export function usePaced(pace: Pace, shape: Shape): RefObject<Group | null> {
  const group = useRef<Group>(null);
  const invalidate = useThree((state) => state.invalidate);
  useEffect(
    () =>
      pace.watch((isCoarse) => {
        for (const child of group.current?.children ?? [])
          (child as Mesh).geometry = isCoarse ? shape.coarse() : shape.fine;
        invalidate();
      }),
    [pace, shape, invalidate],
  );
  return group;
}
