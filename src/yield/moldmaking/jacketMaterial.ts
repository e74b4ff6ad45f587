import { good } from '../../problem';
import type { Outcome } from '../../problem';
import type { Rule } from '../rules';
import { checkBounds } from './checkBounds';
import { MOLDMAKING_BOUNDS } from './rules';
import type { MoldmakingInput } from './rules';

/** What geometry says of a jacket: solid volume, its face on the rubber and its outer face, nominal thickness. */
export interface JacketShape {
  jacketCm3: number;
  jacketInnerCm2: number;
  jacketOuterCm2: number;
  jacketMm: number;
}

/** Something to weigh out or cut: a mass, a volume or an area, whichever it is bought and measured by. */
export interface JacketItem {
  name: string;
  massG?: number;
  volumeMl?: number;
  areaCm2?: number;
}

/** Cautions by key; the words for them are the words' business. */
export type JacketCaution =
  'plaster-heat' | 'plaster-dust' | 'polyester-styrene' | 'polyester-catalyst' | 'glass-dust' | 'putty-skin';

export interface JacketAmounts {
  material: string;
  items: JacketItem[];
  /** As laid, before it sets and dries. */
  wetMassG: number;
  dryMassG: number;
  /** What it becomes: whole layers can be thicker than what was asked. */
  thicknessMm: number;
  layers?: number;
  cautions: JacketCaution[];
}

/** A number the user may set. `isDerived`: it follows from the thickness unless it is set. */
export interface JacketParameter {
  key: MoldmakingInput;
  title: string;
  rule: Rule;
  isDerived?: true;
}

/** Values by parameter key; what is left out takes its default. */
export type JacketSettings = Readonly<Partial<Record<string, number>>>;

/** A material of rigid jackets: one file and one line in `JACKET_MATERIALS`. */
export interface JacketMaterial {
  key: string;
  title: string;
  /** Usual thickness, for the shape. */
  thickness: Rule;
  parameters: readonly JacketParameter[];
  build: (shape: JacketShape, settings?: JacketSettings) => Outcome<JacketAmounts>;
}

/**
 * The shape checked, and every parameter with its value: set, or its default. A derived one that was not set is absent.
 * A setting that this material does not have is our mistake and throws.
 */
export function settleJacket(
  shape: JacketShape,
  parameters: readonly JacketParameter[],
  settings: JacketSettings,
): Outcome<Partial<Record<MoldmakingInput, number>>> {
  const unknown = Object.keys(settings).find((key) => !parameters.some((known) => known.key === key));
  if (unknown !== undefined) throw new Error(`settleJacket: expected a parameter's key, got ${unknown}`);
  const settled: Partial<Record<MoldmakingInput, number>> = {};
  for (const { key, rule, isDerived } of parameters) {
    const value = settings[key] ?? (isDerived ? undefined : rule.value);
    if (value !== undefined) settled[key] = value;
  }
  const { jacketCm3, jacketInnerCm2, jacketOuterCm2, jacketMm } = shape;
  const checked = checkBounds({ jacketCm3, jacketInnerCm2, jacketOuterCm2, jacketMm, ...settled });
  return checked.ok ? good(settled) : checked;
}

/** Whole layers: as many as were set, or the fewest that reach the thickness. */
export function layersFor({
  layers,
  thicknessMm,
  layerMm,
}: {
  layers: number | undefined;
  thicknessMm: number;
  layerMm: number;
}): Outcome<number> {
  // A thickness of exactly n layers must not become n + 1 by a rounding in the last digit.
  const whole = Math.max(MOLDMAKING_BOUNDS.layers.low, Math.ceil((layers ?? thicknessMm / layerMm) - 1e-9));
  const checked = checkBounds({ layers: whole });
  return checked.ok ? good(whole) : checked;
}

/** Mean of the inner and the outer face, cm2: layers lie from one to the other. */
export const meanFaceCm2 = ({ jacketInnerCm2, jacketOuterCm2 }: JacketShape): number =>
  (jacketInnerCm2 + jacketOuterCm2) / 2;
