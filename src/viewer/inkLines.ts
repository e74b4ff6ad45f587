import { BufferAttribute, BufferGeometry, Color, DoubleSide, ShaderMaterial } from 'three';
import { INK } from './inks';

/** Lines of one width on the screen; WebGL itself draws them one pixel wide at most. `ends` holds two ends of every piece. */
export function lineShape(ends: Float32Array): BufferGeometry {
  const pieces = ends.length / 6;
  const [from, to] = [new Float32Array(12 * pieces), new Float32Array(12 * pieces)];
  const corner = new Float32Array(8 * pieces);
  const index = new Uint32Array(6 * pieces);
  for (let i = 0; i < pieces; i++) {
    for (let c = 0; c < 4; c++) {
      from.set(ends.subarray(6 * i, 6 * i + 3), 12 * i + 3 * c);
      to.set(ends.subarray(6 * i + 3, 6 * i + 6), 12 * i + 3 * c);
    }
    corner.set([0, -1, 1, -1, 1, 1, 0, 1], 8 * i);
    index.set([4 * i, 4 * i + 1, 4 * i + 2, 4 * i, 4 * i + 2, 4 * i + 3], 6 * i);
  }
  const shape = new BufferGeometry();
  shape.setAttribute('position', new BufferAttribute(from, 3));
  shape.setAttribute('to', new BufferAttribute(to, 3));
  shape.setAttribute('corner', new BufferAttribute(corner, 2));
  shape.setIndex(new BufferAttribute(index, 1));
  return shape;
}

/** Drawn a touch nearer than the surface that they lie on. */
export const lineMaterial = (widthPx: number): ShaderMaterial =>
  new ShaderMaterial({
    side: DoubleSide,
    polygonOffset: true,
    polygonOffsetFactor: -12,
    polygonOffsetUnits: -12,
    uniforms: { ink: { value: new Color(INK) }, pixel: { value: [1, 1] }, widthPx: { value: widthPx } },
    vertexShader: `
    attribute vec3 to;
    attribute vec2 corner;
    uniform vec2 pixel;
    uniform float widthPx;
    void main() {
      vec4 a = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
      vec4 b = projectionMatrix * modelViewMatrix * vec4(to, 1.0);
      vec2 along = (b.xy - a.xy) / pixel;
      along = length(along) < 1e-6 ? vec2(1.0, 0.0) : normalize(along);
      gl_Position = mix(a, b, corner.x);
      vec2 px = 0.5 * widthPx * (corner.y * vec2(-along.y, along.x) + (2.0 * corner.x - 1.0) * along);
      gl_Position.xy += px * pixel;
    }`,
    fragmentShader: `
    uniform vec3 ink;
    void main() { gl_FragColor = linearToOutputTexel(vec4(ink, 1.0)); }`,
  });
