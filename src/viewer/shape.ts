import { BufferAttribute, BufferGeometry } from 'three';
import { coarseIndex } from './coarseIndex';
import type { Drawable } from './drawable';

/** One surface, finely and, once it is asked for, coarsely: both on the same vertices. */
export interface Shape {
  fine: BufferGeometry;
  coarse: () => BufferGeometry;
  /** A figure or more to every vertex. */
  set: (name: string, values: Float32Array, each: number) => void;
  dispose: () => void;
}

export function openShape({
  positions,
  normals,
  index,
}: Pick<Drawable, 'positions' | 'normals' | 'index'>): Shape {
  const fine = new BufferGeometry();
  fine.setAttribute('position', new BufferAttribute(positions, 3));
  fine.setAttribute('normal', new BufferAttribute(normals, 3));
  fine.setIndex(new BufferAttribute(index, 1));
  let coarse: BufferGeometry | undefined;
  return {
    fine,
    coarse: () => {
      if (coarse !== undefined) return coarse;
      coarse = new BufferGeometry();
      for (const [name, attribute] of Object.entries(fine.attributes)) coarse.setAttribute(name, attribute);
      coarse.setIndex(new BufferAttribute(coarseIndex(positions, index), 1));
      return coarse;
    },
    set: (name, values, each) => {
      const attribute = new BufferAttribute(values, each);
      fine.setAttribute(name, attribute);
      coarse?.setAttribute(name, attribute);
    },
    dispose: () => {
      fine.dispose();
      coarse?.dispose();
    },
  };
}
