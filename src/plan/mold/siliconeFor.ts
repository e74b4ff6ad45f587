import type { Assumption, Estimate } from '../../estimate';
import type { MoldShape } from '../../geometry';
import { finding, good, type Outcome, type Problem } from '../../problem';
import {
  cheapestKits,
  coatMasses,
  needBeyondStock,
  orderInMixes,
  RULES,
  smallestMixG,
  SILICONE_BOUNDS,
  SILICONE_RULES,
  type BeyondStock,
  type Coat,
  type KitPurchase,
  type Method,
  type MixLimits,
  type OrderInMixes,
} from '../../yield';
import { MM3_PER_CM3 } from '../sizeDoubts';
import type { SiliconeWish, WorkWish } from './moldWish';

/** One thing that is poured or brushed at one time. */
export interface Pour {
  name: string;
  volumeCm3: number;
  order: OrderInMixes;
  coat?: Coat;
}

/** All the silicone of one mold: what to mix, pour by pour, and what to buy. */
export interface SiliconeNeed {
  densityKgM3: number;
  pours: Pour[];
  /** Base and catalyst over all pours, as weighed; they add up. */
  totalG: number;
  baseG: number;
  catalystG: number;
  /** As much as the range of the volume takes, with the same waste. */
  rangeG: readonly [number, number];
  /** What the scale can still split. */
  smallestMixG: number;
  stock?: BeyondStock;
  /** Only where kit sizes are known and something is missing. */
  purchase?: KitPurchase;
  assumptions: Assumption[];
  findings: Problem[];
}

/** What the silicone hangs on of a mold. */
type Rubber = Pick<MoldShape, 'key' | 'rubber' | 'rubberMm3' | 'coats'>;

/** Errors: those of `orderInMixes`, `needBeyondStock` and `cheapestKits`. */
export function siliconeFor(
  shape: Rubber,
  rubberCm3: Estimate,
  wish: { silicone: SiliconeWish; work: WorkWish },
): Outcome<SiliconeNeed> {
  const assumptions: Assumption[] = [];
  const material = materialOf(wish.silicone, assumptions);
  const pours: Pour[] = [];
  const known = { ...wish, material };
  for (const step of stepsOf(shape)) {
    const order = orderOf(step, rubberCm3, known);
    if (!order.ok) return order;
    pours.push({ name: step.name, volumeCm3: step.volumeCm3, order: order.value });
  }
  const coats = coatsOf(shape, pours, known);
  if (!coats.ok) return coats;
  const sum = (of: (order: OrderInMixes) => number): number =>
    tidy(pours.reduce((all, { order }) => all + of(order), 0));
  const totalG = sum((o) => o.totalG);
  const need: SiliconeNeed = {
    densityKgM3: material.densityKgM3,
    pours,
    totalG,
    baseG: sum((o) => o.baseG),
    catalystG: sum((o) => o.catalystG),
    rangeG: [
      sum((o) => o.neededG.low),
      Math.max(
        totalG,
        sum((o) => o.neededG.high),
      ),
    ],
    smallestMixG: smallestMixG({ ratio: material.ratio, stepG: pours[0]!.order.stepG }),
    assumptions: [...assumptions, ...onceEach(pours.flatMap(({ order }) => order.assumptions))],
    findings: oncePerCode([...pours.flatMap(({ order }) => order.findings), ...pours.flatMap(ratioFindings)]),
  };
  return withPurchase(need, wish.silicone, material.ratio);
}

interface Material {
  densityKgM3: number;
  ratio: NonNullable<SiliconeWish['ratio']>;
  potLifeMin: number;
}

function materialOf(silicone: SiliconeWish, assumptions: Assumption[]): Material {
  const assume = <T extends number | string>(name: string, value: T, unit: string, basis: string): T => {
    assumptions.push({ name, value, unit, from: 'assumed', basis } as Assumption);
    return value;
  };
  const { density, potLife, basePerCatalyst } = SILICONE_RULES;
  if (silicone.ratio === undefined)
    assume(
      'silicone_ratio',
      `${basePerCatalyst.value}:1 by weight, base to catalyst`,
      '',
      basePerCatalyst.from,
    );
  return {
    densityKgM3:
      silicone.densityKgM3 ?? assume('silicone_density_kg_m3', density.value, 'kg/m3', density.from),
    ratio: silicone.ratio ?? { base: basePerCatalyst.value, catalyst: 1, by: 'mass' },
    potLifeMin: silicone.potLifeMin ?? assume('pot_life_min', potLife.value, 'min', potLife.from),
  };
}

interface Step {
  name: string;
  volumeCm3: number;
  method: Method;
}

/** What is mixed for itself: a coat sets before the next one, a half before the other; fill, flange and keys go on with the last coats. */
function stepsOf(shape: Rubber): Step[] {
  const { coats, rubber, key } = shape;
  const cm3 = (mm3: number): number => mm3 / MM3_PER_CM3;
  if (coats === undefined || coats.length === 0) {
    if (key === 'block')
      return rubber.map(({ name, volumeMm3 }) => ({ name, volumeCm3: cm3(volumeMm3), method: 'pour' }));
    return [{ name: 'pour', volumeCm3: cm3(shape.rubberMm3), method: 'pour' }];
  }
  const rest = rubber
    .filter(({ name }) => name !== 'skin')
    .reduce((sum, { volumeMm3 }) => sum + volumeMm3, 0);
  return [
    ...coats.map(({ volumeMm3 }, n): Step => ({
      name: `coat ${n + 1}`,
      volumeCm3: cm3(volumeMm3),
      method: 'brush',
    })),
    ...(cm3(rest) >= SILICONE_BOUNDS.volumeCm3.low
      ? [{ name: 'fill, flange and keys', volumeCm3: cm3(rest), method: 'brush' as const }]
      : []),
  ];
}

interface Known {
  silicone: SiliconeWish;
  work: WorkWish;
  material: Material;
}

function orderOf(
  step: Step,
  rubberCm3: Estimate,
  { silicone, work, material }: Known,
): Outcome<OrderInMixes> {
  const { value, low, high } = rubberCm3;
  const volumeCm3 = {
    value: step.volumeCm3,
    // Rounding must not lift an end of the range over the value.
    low: Math.min(step.volumeCm3, (step.volumeCm3 * low) / value),
    high: Math.max(step.volumeCm3, (step.volumeCm3 * high) / value),
  };
  const limits: MixLimits = {
    potLifeMin: material.potLifeMin,
    method: step.method,
    degassed: work.degassed ?? false,
    ...(silicone.potLifeAtC === undefined ? {} : { potLifeAtC: silicone.potLifeAtC }),
    ...(work.roomC === undefined ? {} : { roomC: work.roomC }),
    ...(work.containerCm3 === undefined ? {} : { containerCm3: work.containerCm3 }),
  };
  return orderInMixes(
    {
      volumeCm3,
      densityKgM3: material.densityKgM3,
      ratio: material.ratio,
      method: step.method,
      ...(work.wasteShare === undefined ? {} : { wasteShare: work.wasteShare }),
      ...(work.cupLossG === undefined ? {} : { cupLossG: work.cupLossG }),
      ...(work.scaleStepG === undefined ? {} : { scaleStepG: work.scaleStepG }),
    },
    limits,
  );
}

/** Each coat beside its pour. */
function coatsOf({ coats = [] }: Rubber, pours: Pour[], { work, material }: Known): Outcome<true> {
  if (coats.length === 0) return good(true);
  let volumeCm3 = 0;
  const volumesCm3 = coats.map(({ volumeMm3 }) => (volumeCm3 += volumeMm3 / MM3_PER_CM3));
  const masses = coatMasses({
    outerMm: coats.map(({ toMm }) => toMm),
    volumesCm3,
    densityKgM3: material.densityKgM3,
    ...(work.wasteShare === undefined ? {} : { wasteShare: work.wasteShare }),
  });
  if (!masses.ok) return masses;
  masses.value.coats.forEach((coat, n) => (pours[n]!.coat = coat));
  return good(true);
}

function withPurchase(
  need: SiliconeNeed,
  { kits, stock }: SiliconeWish,
  ratio: Material['ratio'],
): Outcome<SiliconeNeed> {
  const mixedKg = need.totalG / 1000;
  const beyond = stock === undefined ? undefined : needBeyondStock({ mixedKg, ratio, stock });
  if (beyond !== undefined && !beyond.ok) return beyond;
  const needKg = beyond?.value.needKg ?? mixedKg;
  const withStock = beyond === undefined ? need : { ...need, stock: beyond.value };
  if (kits === undefined || kits.length === 0) {
    const unknown = finding('KITS_UNKNOWN', 'unknown', { needKg });
    return good({ ...withStock, findings: [...need.findings, ...(needKg > 0 ? [unknown] : [])] });
  }
  const purchase = cheapestKits(kits, needKg);
  if (!purchase.ok) return purchase;
  return good({
    ...withStock,
    ...(needKg > 0 ? { purchase: purchase.value } : {}),
    findings: [...need.findings, ...(needKg > 0 ? purchase.value.findings : [])],
  });
}

/** A mix whose ratio the scale's step bends. */
function ratioFindings({ name, order: { ratioErrorShare, mix, stepG } }: Pour): Problem[] {
  const error = Math.abs(ratioErrorShare);
  if (error <= RULES.ratioLook.value) return [];
  const values = { name, error, baseG: mix.baseG, catalystG: mix.catalystG, stepG };
  return [finding('SILICONE_RATIO_BENT', error > RULES.ratioStop.value ? 'stop' : 'look', values)];
}

const tidy = (grams: number): number => Number(grams.toFixed(9));

function onceEach(assumptions: readonly Assumption[]): Assumption[] {
  return assumptions.filter((one, n) => assumptions.findIndex(({ name }) => name === one.name) === n);
}

/** The worst of each kind once: ten coats below the scale's smallest mix are one matter, told of the smallest. */
function oncePerCode(findings: readonly Problem[]): Problem[] {
  const sorted = [...findings].sort((a, b) => Number(a.values.mixG ?? 0) - Number(b.values.mixG ?? 0));
  return sorted.filter((one, n) => sorted.findIndex(({ code }) => code === one.code) === n);
}
