import { Color, DoubleSide, ShaderMaterial } from 'three';
import { CUT_FRAGMENT, CUT_VERTEX, type CutUniform } from './cutUniform';
import { INK, LINE, PAPER, SHEET, STEP_COLORS } from './inks';

/** Borders between the six steps, mm, rising. */
export type StepBorders = readonly [number, number, number, number, number];

/**
 * A value at every vertex in six steps with lines between them: paper between dark steps, ink between light ones, so that each line stands out on both of
 * its sides. `weighed` holds value times known, and known (1 or 0): what is known of a triangle is never mixed with what is not.
 */
export const paintMaterial = (borders: StepBorders, cut: CutUniform): ShaderMaterial =>
  new ShaderMaterial({
    side: DoubleSide,
    polygonOffset: true,
    polygonOffsetFactor: 1,
    polygonOffsetUnits: 1,
    uniforms: {
      cut,
      borders: { value: [...borders] },
      steps: { value: STEP_COLORS.map((color) => new Color(color)) },
      ink: { value: new Color(INK) },
      line: { value: new Color(LINE) },
      paper: { value: new Color(PAPER) },
      sheet: { value: new Color(SHEET) },
    },
    vertexShader: `
    ${CUT_VERTEX}
    attribute vec2 weighed;
    varying vec2 told;
    void main() {
      tellPlace(position);
      told = weighed;
      gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
    }`,
    fragmentShader: `
    ${CUT_FRAGMENT}
    uniform float borders[5];
    uniform vec3 steps[6];
    uniform vec3 ink, line, paper, sheet;
    varying vec2 told;
    void main() {
      takeCut();
      float known = told.y;
      float value = told.x / max(known, 1e-6);
      float slope = max(fwidth(value), 1e-6);
      vec3 color = steps[0];
      for (int i = 0; i < 5; i++) color = value >= borders[i] ? steps[i + 1] : color;
      for (int i = 0; i < 5; i++) {
        float px = abs(value - borders[i]) / slope;
        float drawn = (1.0 - smoothstep(0.5, 1.3, px)) * (1.0 - smoothstep(0.05, 0.2, slope / borders[i]));
        color = mix(color, i < 3 ? paper : ink, drawn);
      }
      float hatch = step(0.8, fract((gl_FragCoord.x + gl_FragCoord.y) / 8.0));
      if (known < 0.5) color = mix(sheet, line, hatch);
      if (!gl_FrontFacing) color = mix(sheet, line, step(0.55, fract((gl_FragCoord.x - gl_FragCoord.y) / 6.0)));
      gl_FragColor = linearToOutputTexel(vec4(color, 1.0));
    }`,
  });

/** Two figures a vertex for `paintMaterial`; NaN is not known. */
export function weighed(values: Float32Array): Float32Array {
  const pairs = new Float32Array(2 * values.length);
  for (let v = 0; v < values.length; v++) {
    const value = values[v]!;
    if (Number.isNaN(value)) continue;
    pairs[2 * v] = value;
    pairs[2 * v + 1] = 1;
  }
  return pairs;
}
