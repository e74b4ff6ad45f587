import { BufferAttribute, BufferGeometry, LineBasicMaterial, type ShaderMaterial } from 'three';
import { contourMaterial, outlineMaterial } from './contourMaterial';
import type { Drawable } from './drawable';

const ACCENT = '#0B5F62';

/** What three needs to draw one scan. `dispose` gives all of it back. */
export interface Surface {
  shape: BufferGeometry;
  rims: BufferGeometry;
  contour: ShaderMaterial;
  outline: ShaderMaterial;
  rimLine: LineBasicMaterial;
  dispose: () => void;
}

export function makeSurface({ positions, normals, index, rims }: Drawable, contourUnits: number): Surface {
  const shape = new BufferGeometry();
  shape.setAttribute('position', new BufferAttribute(positions, 3));
  shape.setAttribute('normal', new BufferAttribute(normals, 3));
  shape.setIndex(new BufferAttribute(index, 1));
  const rimShape = new BufferGeometry();
  rimShape.setAttribute('position', new BufferAttribute(rims, 3));
  const made = {
    shape,
    rims: rimShape,
    contour: contourMaterial(contourUnits),
    outline: outlineMaterial(),
    rimLine: new LineBasicMaterial({ color: ACCENT }),
  };
  return { ...made, dispose: () => Object.values(made).forEach((thing) => thing.dispose()) };
}

/** The outline is a width in pixels, so it follows the size of the card. */
export function setCardSize({ outline }: Surface, card: { width: number; height: number }): void {
  outline.uniforms.pixel!.value = [2 / card.width, 2 / card.height];
}
