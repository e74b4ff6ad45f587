import { Vector4 } from 'three';
import { CUT_NORMALS, type Cut } from './cut';

/** One for all shaders of a stage: none of them is told apart of a cut. */
export interface CutUniform {
  value: Vector4;
}

/** No point lies beyond it. */
export const noCut = (): CutUniform => ({ value: new Vector4(0, 0, 0, 1) });

export function setCut({ value }: CutUniform, cut: Cut | undefined): void {
  if (cut === undefined) value.set(0, 0, 0, 1);
  else value.set(...CUT_NORMALS[cut.axis], cut.at);
}

export const CUT_VERTEX = /* glsl */ `
    varying vec3 placed;
    void tellPlace(vec3 at) { placed = (modelMatrix * vec4(at, 1.0)).xyz; }`;

export const CUT_FRAGMENT = /* glsl */ `
    uniform vec4 cut;
    varying vec3 placed;
    void takeCut() { if (dot(cut.xyz, placed) > cut.w) discard; }`;
