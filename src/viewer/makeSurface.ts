import { BufferAttribute, BufferGeometry, type ShaderMaterial } from 'three';
import type { CutUniform } from './cutUniform';
import type { Drawable, Plane } from './drawable';
import { ACCENT } from './inks';
import { openShape, type Shape } from './shape';
import { contourMaterial, outlineMaterial, thinLineMaterial } from './surfaceMaterials';

/** What three needs to draw one scan. `dispose` gives all of it back. */
export interface Surface {
  shape: Shape;
  rims: BufferGeometry;
  contour: ShaderMaterial;
  outline: ShaderMaterial;
  rimLine: ShaderMaterial;
  dispose: () => void;
}

export function makeSurface(drawable: Drawable, contourUnits: number, cut: CutUniform): Surface {
  const rims = new BufferGeometry();
  rims.setAttribute('position', new BufferAttribute(drawable.rims, 3));
  const made = {
    shape: openShape(drawable),
    rims,
    contour: contourMaterial(contourUnits, cut),
    outline: outlineMaterial(cut),
    rimLine: thinLineMaterial(ACCENT, cut),
  };
  return { ...made, dispose: () => Object.values(made).forEach((thing) => thing.dispose()) };
}

/** Where a cut would go, and what it would take; none where there is none. */
export function setPlane({ contour }: Surface, plane: Plane | undefined): void {
  contour.uniforms.planeUnits!.value = plane?.atUnits ?? 0;
  contour.uniforms.takenSide!.value = plane === undefined ? 0 : plane.takes === 'above' ? 1 : -1;
}

/** Lines of a width in pixels follow the size of the card. */
export function setCardSize(
  material: ShaderMaterial,
  { width, height }: { width: number; height: number },
): void {
  material.uniforms.pixel!.value = [2 / width, 2 / height];
}
