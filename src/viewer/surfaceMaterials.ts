import { BackSide, Color, DoubleSide, ShaderMaterial } from 'three';
import { CUT_FRAGMENT, CUT_VERTEX, type CutUniform } from './cutUniform';
import { INK, LINE, SHEET, WELL } from './inks';

/* Ink on paper: contour lines towards the eye, the back of the surface hatched, and an outline from a hull pushed out. */

/** 1 on a line of this spacing; none on a level face, and none where lines would run together. */
export const LINE_AT = /* glsl */ `
    float lineAt(float h, float halfPx) {
      float slope = fwidth(h);
      if (slope < 1e-5) return 0.0;
      float px = abs(fract(h - 0.5) - 0.5) / slope;
      return (1.0 - smoothstep(halfPx, halfPx + 0.9, px)) * (1.0 - smoothstep(0.25, 0.5, slope));
    }`;

/** How dark a body is drawn: the sculpt is paper, silicone is grayer than a stiff jacket. */
const TONES = { sculpt: 0, stiff: 0.06, silicone: 0.3 } as const;
export type Tone = keyof typeof TONES;

/** Surface with a contour line every `stepUnits` of depth, every fifth heavy. */
export const contourMaterial = (stepUnits: number, cut: CutUniform, tone: Tone = 'sculpt'): ShaderMaterial =>
  new ShaderMaterial({
    side: DoubleSide,
    polygonOffset: true,
    polygonOffsetFactor: 1,
    polygonOffsetUnits: 1,
    uniforms: {
      cut,
      stepUnits: { value: stepUnits },
      planeUnits: { value: 0 },
      takenSide: { value: 0 },
      tone: { value: TONES[tone] },
      ink: { value: new Color(INK) },
      line: { value: new Color(LINE) },
      sheet: { value: new Color(SHEET) },
      well: { value: new Color(WELL) },
    },
    vertexShader: `
    ${CUT_VERTEX}
    varying vec3 facing;
    varying float depthUnits;
    varying float upUnits;
    void main() {
      tellPlace(position);
      upUnits = position.z;
      vec4 seen = modelViewMatrix * vec4(position, 1.0);
      depthUnits = seen.z - (viewMatrix * vec4(0.0, 0.0, 0.0, 1.0)).z;
      facing = normalMatrix * normal;
      gl_Position = projectionMatrix * seen;
    }`,
    fragmentShader: `
    ${CUT_FRAGMENT}
    ${LINE_AT}
    uniform float stepUnits, tone;
    /* Height of a cut; above it is taken (1), below it (-1), or there is none (0). */
    uniform float planeUnits, takenSide;
    uniform vec3 ink, line, sheet, well;
    varying vec3 facing;
    varying float depthUnits;
    varying float upUnits;
    /* What a cut would take is hatched thinly, and the cut is a line on the surface. */
    vec3 withPlane(vec3 color) {
      if (takenSide == 0.0) return color;
      float over = takenSide * (upUnits - planeUnits);
      float hatch = step(0.82, fract((gl_FragCoord.x - gl_FragCoord.y) / 7.0));
      vec3 taken = over > 0.0 ? mix(mix(color, well, 0.7), line, 0.8 * hatch) : color;
      float px = abs(over) / max(fwidth(upUnits), 1e-6);
      return mix(taken, ink, 1.0 - smoothstep(0.8, 1.8, px));
    }
    void main() {
      takeCut();
      if (!gl_FrontFacing) {
        float hatch = step(0.75, fract((gl_FragCoord.x + gl_FragCoord.y) / 8.0));
        gl_FragColor = linearToOutputTexel(vec4(withPlane(mix(well, line, hatch)), 1.0));
        return;
      }
      float towards = abs(normalize(facing).z);
      vec3 color = mix(mix(well, sheet, smoothstep(0.0, 0.9, towards)), line, tone);
      float h = depthUnits / stepUnits + 0.37;
      color = mix(color, line, 0.75 * lineAt(h, 0.15));
      color = mix(color, ink, lineAt(h / 5.0, 0.55));
      gl_FragColor = linearToOutputTexel(vec4(withPlane(color), 1.0));
    }`,
  });

/** The back half of the surface pushed out by a pixel or two: what shows past the surface is its outline. Behind everything at its place, so that an open inside stays hatched. */
export const outlineMaterial = (cut: CutUniform): ShaderMaterial =>
  new ShaderMaterial({
    side: BackSide,
    polygonOffset: true,
    polygonOffsetFactor: 3,
    polygonOffsetUnits: 3,
    uniforms: { cut, ink: { value: new Color(INK) }, pixel: { value: [1, 1] } },
    vertexShader: `
    ${CUT_VERTEX}
    uniform vec2 pixel;
    void main() {
      tellPlace(position);
      gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
      vec2 out2 = (normalMatrix * normal).xy;
      gl_Position.xy += 1.7 * pixel * out2 / max(length(out2), 1e-4) * gl_Position.w;
    }`,
    fragmentShader: `
    ${CUT_FRAGMENT}
    uniform vec3 ink;
    void main() {
      takeCut();
      gl_FragColor = linearToOutputTexel(vec4(ink, 1.0));
    }`,
  });

/** Thin lines in one color that a cut takes away with the surface they are on. */
export const thinLineMaterial = (color: string, cut: CutUniform): ShaderMaterial =>
  new ShaderMaterial({
    uniforms: { cut, color: { value: new Color(color) } },
    vertexShader: `
    ${CUT_VERTEX}
    void main() {
      tellPlace(position);
      gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
    }`,
    fragmentShader: `
    ${CUT_FRAGMENT}
    uniform vec3 color;
    void main() {
      takeCut();
      gl_FragColor = linearToOutputTexel(vec4(color, 1.0));
    }`,
  });
