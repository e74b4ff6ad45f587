import type { Samples } from '../field/sampleField';
import type { Vector } from '../measure/planeFrame';

/*
 * A field of distances laid so that a pull runs along one axis of the array: planes across the grid axis nearest to the pull are shifted, each by
 * a fixed amount, so that a line along the pull keeps its place in every plane. Volumes do not change by that (a shear), and shifts are the same all over a
 * plane, so interpolation has constant weights. Cubic weights (Keys 1981, IEEE Trans. ASSP 29:1153) keep a level of curvature 1/R in its place to the
 * fourth order of the spacing; linear ones shrink it by up to step^2 / 8 R in each direction.
 */

/** Values over [plane][row][place], the pull along the planes. Places, rows and planes in steps of the spacing. */
export interface Sheared {
  nu: number;
  nv: number;
  nw: number;
  spacingMm: number;
  values: Float32Array;
  /** Points as far as this are that far or farther. */
  topMm: number;
  /** Grid axes (0 x, 1 y, 2 z) of places, rows and planes. */
  axes: readonly [number, number, number];
  /** Shift of a plane against the one before, in places and rows. */
  slopeU: number;
  slopeV: number;
  /** Grid coordinates of place 0, row 0, plane 0, mm. */
  originMm: readonly [number, number, number];
  /** 1 when the pull runs to higher planes, -1 to lower ones. */
  sense: 1 | -1;
  /** Length of the pull between two planes, mm. */
  stepMm: number;
  /** Height over the base, in steps, is atZero + perU * place + perV * row + perW * plane; -0.5 is the base itself. */
  height: { atZero: number; perU: number; perV: number; perW: number } | undefined;
}

/**
 * @param pull unit vector in the grid's own axes
 * @param every take only every so many grid points (1 takes all): a distance field stays one when it is thinned
 */
export function shear(
  { grid, values, topMm }: Samples,
  { pull, every = 1 }: { pull: Vector; every?: number },
): Sheared {
  const axes = axesFor(pull);
  const [u, v, w] = axes;
  const counts = [grid.nx, grid.ny, grid.nz].map((n) => Math.floor((n - 1 - (every >> 1)) / every) + 1);
  const strides = [1, grid.nx, grid.nx * grid.ny];
  const start = (every >> 1) * (strides[0]! + strides[1]! + strides[2]!);
  const spacingMm = grid.spacingMm * every;
  const slopeU = straight(pull[u]! / pull[w]!);
  const slopeV = straight(pull[v]! / pull[w]!);
  const planes = counts[w]!;
  const firstU = slopeU > 0 ? -Math.ceil(slopeU * (planes - 1)) : 0;
  const firstV = slopeV > 0 ? -Math.ceil(slopeV * (planes - 1)) : 0;
  const nu = counts[u]! + Math.ceil(Math.abs(slopeU) * (planes - 1));
  const nv = counts[v]! + Math.ceil(Math.abs(slopeV) * (planes - 1));
  const sheared = new Float32Array(nu * nv * planes);
  const source = { values, su: strides[u]! * every, sv: strides[v]! * every, nu: counts[u]!, nv: counts[v]! };
  const between = new Float32Array(source.nv * nu);
  for (let k = 0; k < planes; k++) {
    const from = start + k * strides[w]! * every;
    const target = sheared.subarray(k * nu * nv, (k + 1) * nu * nv);
    shiftPlane(
      source,
      from,
      { shiftU: firstU + k * slopeU, shiftV: firstV + k * slopeV, far: topMm },
      between,
      nu,
      nv,
      target,
    );
  }
  const half = every >> 1;
  const origin = [grid.ox, grid.oy, grid.oz].map((o) => o + half * grid.spacingMm);
  origin[u]! += firstU * spacingMm;
  origin[v]! += firstV * spacingMm;
  const { firstPlane } = grid;
  const perAxis = (axis: number, slope: number): number => (axis === 2 ? slope : 0);
  return {
    nu,
    nv,
    nw: planes,
    spacingMm,
    values: sheared,
    topMm,
    axes,
    slopeU,
    slopeV,
    originMm: [origin[0]!, origin[1]!, origin[2]!],
    sense: pull[w]! > 0 ? 1 : -1,
    stepMm: spacingMm / Math.abs(pull[w]!),
    height:
      firstPlane === 0
        ? undefined
        : {
            // In steps of this array: the base lies on the face below plane `firstPlane` of the grid.
            atZero: (half - firstPlane + 0.5) / every - 0.5 + (u === 2 ? firstU : v === 2 ? firstV : 0),
            perU: u === 2 ? 1 : 0,
            perV: v === 2 ? 1 : 0,
            perW: w === 2 ? 1 : perAxis(u, slopeU) + perAxis(v, slopeV),
          },
  };
}

/** The axis nearest to the pull last, so that planes shift by one step at most. */
function axesFor(pull: Vector): readonly [number, number, number] {
  const [x, y, z] = pull.map(Math.abs) as [number, number, number];
  if (z >= x && z >= y) return [0, 1, 2];
  return x >= y ? [1, 2, 0] : [0, 2, 1];
}

/** Rounding of a rotation is no slope. */
const straight = (slope: number): number => (Math.abs(slope) < 1e-9 ? 0 : slope);

interface Source {
  values: Float32Array;
  su: number;
  sv: number;
  nu: number;
  nv: number;
}

/** One plane, first along the places, then along the rows. */
export function shiftPlane(
  { values, su, sv, nu: sourceU, nv: sourceV }: Source,
  from: number,
  { shiftU, shiftV, far }: { shiftU: number; shiftV: number; far: number },
  between: Float32Array,
  nu: number,
  nv: number,
  target: Float32Array,
): void {
  const wholeU = Math.floor(shiftU);
  const [a, b, c, d] = cubicWeights(shiftU - wholeU);
  for (let j = 0; j < sourceV; j++) {
    const row = from + j * sv;
    for (let i = 0; i < nu; i++) {
      const p = i + wholeU;
      let value = far;
      if (p >= 1 && p + 2 < sourceU) {
        const at = row + p * su;
        value = a * values[at - su]! + b * values[at]! + c * values[at + su]! + d * values[at + 2 * su]!;
      } else if (p >= 0 && p < sourceU) value = values[row + p * su]!;
      between[j * nu + i] = value;
    }
  }
  const wholeV = Math.floor(shiftV);
  const [e, f, g, h] = cubicWeights(shiftV - wholeV);
  for (let j = 0; j < nv; j++) {
    const p = j + wholeV;
    const at = p * nu;
    if (p >= 1 && p + 2 < sourceV)
      for (let i = 0; i < nu; i++)
        target[j * nu + i] =
          e * between[at - nu + i]! +
          f * between[at + i]! +
          g * between[at + nu + i]! +
          h * between[at + 2 * nu + i]!;
    else if (p >= 0 && p < sourceV) for (let i = 0; i < nu; i++) target[j * nu + i] = between[at + i]!;
    else target.fill(far, j * nu, (j + 1) * nu);
  }
}

/** Weights of the four values around a place `t` past the second of them. */
export function cubicWeights(t: number): readonly [number, number, number, number] {
  if (t < 1e-9) return [0, 1, 0, 0];
  const t2 = t * t;
  const t3 = t2 * t;
  return [(-t3 + 2 * t2 - t) / 2, (3 * t3 - 5 * t2 + 2) / 2, (-3 * t3 + 4 * t2 + t) / 2, (t3 - t2) / 2];
}
