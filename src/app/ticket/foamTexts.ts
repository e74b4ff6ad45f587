import { sheetOf, type ShopFoam } from '../../job/foamSheet';
import type { FoamCard } from '../../yield';
import { specOf, type Fields, type FieldText, type OwnField } from './fields';
import { FOAM_SOURCES, newFoam, type FoamSaid } from './foamState';
import { typedText } from './typedText';

/** The boxes that a card fills, and what of it stands in each. What it does not say goes blank: nothing of another card stays. */
const BOXES = {
  freeRise: ({ freeRiseKgM3 }) => freeRiseKgM3,
  partsA: ({ ratio }) => ratio.a,
  partsB: ({ ratio }) => ratio.b,
  densityA: ({ partDensities }) => partDensities?.aKgM3,
  densityB: ({ partDensities }) => partDensities?.bKgM3,
  cream: ({ creamS }) => creamS,
  openTime: ({ openMin }) => openMin,
  sheetTemp: ({ timesAtC }) => timesAtC,
  nco: ({ ncoShare }) => ncoShare,
  water: ({ waterShare }) => waterShare,
  priceA: ({ aPerKg }) => aPerKg,
  priceB: ({ bPerKg }) => bPerKg,
} as const satisfies Partial<Record<OwnField, (card: ShopFoam) => number | undefined>>;

export type FoamBox = keyof typeof BOXES;
export const FOAM_BOXES = Object.keys(BOXES) as FoamBox[];

/** Boxes, name and source as the card has them: texts as they would be typed, so that they read back alike. */
export const withFoam = (fields: Fields, card: FoamCard): { fields: Fields; foam: FoamSaid } => ({
  fields: { ...fields, ...foamTexts(card) },
  foam: foamSaid(card),
});

export const foamSaid = ({ name, ratio, freeRiseFrom }: FoamCard): FoamSaid => ({
  name,
  from: FOAM_SOURCES.find((one) => one === freeRiseFrom) ?? newFoam().from,
  by: ratio.by,
  card: { name: name.trim(), a: ratio.a, b: ratio.b, by: ratio.by },
});

export function foamTexts(card: FoamCard): Record<FoamBox, FieldText> {
  const full: ShopFoam = { ...card, ...sheetOf(card) };
  return Object.fromEntries(
    FOAM_BOXES.map((name) => [name, typedText(specOf(name), BOXES[name](full))]),
  ) as Record<FoamBox, FieldText>;
}
