import { useEffect, useMemo } from 'react';
import { BufferAttribute, BufferGeometry, LineBasicMaterial } from 'three';
import { INK } from './inks';

/** How far the outline of the plane stands out beyond the piece. Chosen here. */
const BEYOND = 1.15;

/** A level plane through the piece, as an outline round it: a line from the straight views. */
export function CutSheet({
  halfUnits: [halfWide, halfDeep],
  atUnits,
}: {
  halfUnits: readonly [number, number, number];
  atUnits: number;
}) {
  const { shape, line } = useMemo(() => makeSheet(), []);
  useEffect(
    () => () => {
      shape.dispose();
      line.dispose();
    },
    [shape, line],
  );
  return (
    <lineLoop
      geometry={shape}
      material={line}
      position={[0, 0, atUnits]}
      scale={[BEYOND * halfWide, BEYOND * halfDeep, 1]}
      dispose={null}
    />
  );
}

function makeSheet(): { shape: BufferGeometry; line: LineBasicMaterial } {
  const shape = new BufferGeometry();
  const corners = Float32Array.from([-1, -1, 0, 1, -1, 0, 1, 1, 0, -1, 1, 0]);
  shape.setAttribute('position', new BufferAttribute(corners, 3));
  return { shape, line: new LineBasicMaterial({ color: INK }) };
}
