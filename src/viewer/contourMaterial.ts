import { BackSide, Color, DoubleSide, ShaderMaterial } from 'three';

/* Ink on paper: contour lines towards the eye, the back of the surface hatched, and an outline from a hull pushed out. */

const INK = '#1C1B19';
const LINE = '#6B675F';
const SHEET = '#FFFFFF';
const WELL = '#F1EFE8';

/** Surface with a contour line every `stepUnits` of depth, every fifth heavy. */
export const contourMaterial = (stepUnits: number): ShaderMaterial =>
  new ShaderMaterial({
    side: DoubleSide,
    polygonOffset: true,
    polygonOffsetFactor: 1,
    polygonOffsetUnits: 1,
    uniforms: {
      stepUnits: { value: stepUnits },
      ink: { value: new Color(INK) },
      line: { value: new Color(LINE) },
      sheet: { value: new Color(SHEET) },
      well: { value: new Color(WELL) },
    },
    vertexShader: `
    varying vec3 facing;
    varying float depthUnits;
    void main() {
      vec4 seen = modelViewMatrix * vec4(position, 1.0);
      depthUnits = seen.z - (modelViewMatrix * vec4(0.0, 0.0, 0.0, 1.0)).z;
      facing = normalMatrix * normal;
      gl_Position = projectionMatrix * seen;
    }`,
    fragmentShader: `
    uniform float stepUnits;
    uniform vec3 ink, line, sheet, well;
    varying vec3 facing;
    varying float depthUnits;
    /* 1 on a line of this spacing; none on a level face, and none where lines would run together. */
    float lineAt(float h, float halfPx) {
      float slope = fwidth(h);
      if (slope < 1e-5) return 0.0;
      float px = abs(fract(h - 0.5) - 0.5) / slope;
      return (1.0 - smoothstep(halfPx, halfPx + 0.9, px)) * (1.0 - smoothstep(0.25, 0.5, slope));
    }
    void main() {
      if (!gl_FrontFacing) {
        float hatch = step(0.75, fract((gl_FragCoord.x + gl_FragCoord.y) / 8.0));
        gl_FragColor = linearToOutputTexel(vec4(mix(well, line, hatch), 1.0));
        return;
      }
      float towards = abs(normalize(facing).z);
      vec3 color = mix(well, sheet, smoothstep(0.0, 0.9, towards));
      float h = depthUnits / stepUnits + 0.37;
      color = mix(color, line, 0.75 * lineAt(h, 0.15));
      color = mix(color, ink, lineAt(h / 5.0, 0.55));
      gl_FragColor = linearToOutputTexel(vec4(color, 1.0));
    }`,
  });

/** The back half of the surface pushed out by a pixel or two: what shows past the surface is its outline. */
export const outlineMaterial = (): ShaderMaterial =>
  new ShaderMaterial({
    side: BackSide,
    uniforms: { ink: { value: new Color(INK) }, pixel: { value: [1, 1] } },
    vertexShader: `
    uniform vec2 pixel;
    void main() {
      gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
      vec2 out2 = (normalMatrix * normal).xy;
      gl_Position.xy += 1.7 * pixel * out2 / max(length(out2), 1e-4) * gl_Position.w;
    }`,
    fragmentShader: `
    uniform vec3 ink;
    void main() { gl_FragColor = linearToOutputTexel(vec4(ink, 1.0)); }`,
  });
