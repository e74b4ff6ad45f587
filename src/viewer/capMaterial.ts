import { Color, DoubleSide, ShaderMaterial } from 'three';
import { LINE, SHEET } from './inks';

/** What a cut shows of a part: sculpt (the foam to be) thinly hatched, silicone solid, a stiff jacket hatched the other way. */
export type CapLook = 'sculpt' | 'silicone' | 'stiff';

const FILLS: Readonly<Record<CapLook, string>> = {
  sculpt: 'mix(sheet, line, 0.55 * step(0.88, fract((gl_FragCoord.x - gl_FragCoord.y) / (11.0 * ratio))))',
  silicone: 'line',
  stiff: 'mix(sheet, line, step(0.7, fract((gl_FragCoord.x + gl_FragCoord.y) / (7.0 * ratio))))',
};

/** The fill of a cut face. They all lie in one plane, each next one inside of the one before: the inner ones are drawn nearer. */
export const capMaterial = (look: CapLook, nearer: number): ShaderMaterial =>
  new ShaderMaterial({
    side: DoubleSide,
    polygonOffset: true,
    polygonOffsetFactor: -2 * nearer,
    polygonOffsetUnits: -2 * nearer,
    uniforms: {
      line: { value: new Color(LINE) },
      sheet: { value: new Color(SHEET) },
      ratio: { value: 1 },
    },
    vertexShader: `
    void main() { gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0); }`,
    fragmentShader: `
    uniform vec3 line, sheet;
    uniform float ratio;
    void main() { gl_FragColor = linearToOutputTexel(vec4(${FILLS[look]}, 1.0)); }`,
  });
