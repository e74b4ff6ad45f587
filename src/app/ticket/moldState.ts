import type { FactName } from '../../checks';
import { MOLD_TYPES, moldType, type MoldKey, type MoldType } from '../../geometry';
import { numberText } from '../../units';
import type { SiliconeCard } from '../../yield';
import type { Fields, FieldText, OwnField } from './fields';
import type { MadeField } from './madeFields';

/** What was said about the mold beside what was typed into fields. Left empty: nobody has said so, and a default is assumed. */
export interface Molding {
  type: MoldKey | undefined;
  /** Choices and pulls of the mold types. */
  picks: Partial<Record<MadeField, string>>;
  siliconeName: string;
  /** As typed: "1.1 kg=30, 5.5 kg=130". */
  kits: string;
  /** Materials, each fact in the words of its list, yes or no, a day, or nothing. */
  facts: Partial<Record<FactName, string>>;
  degassed: boolean;
  jacket: string | undefined;
  box: string | undefined;
  pourBy: 'sculpt' | 'cavity' | undefined;
}

export const newMolding = (): Molding => ({
  type: undefined,
  picks: {},
  siliconeName: '',
  kits: '',
  facts: {},
  degassed: false,
  jacket: undefined,
  box: undefined,
  pourBy: undefined,
});

/** The type that the questions below the first are about: the chosen one, else the first of the list. */
export const typeOf = ({ type }: Molding): MoldType => moldType(type ?? MOLD_TYPES[0]!.key);

/** Of the sculpt that was scanned: forgotten with it. */
export const FACTS_OF_SCAN: readonly FactName[] = [
  'sculptSurface',
  'barrierCoat',
  'barrierDryMin',
  'patchTested',
];

/** A card as it would be typed. What it does not say goes blank: nothing of another card stays. */
export function withSilicone(
  molding: Molding,
  fields: Fields,
  card: SiliconeCard,
): { molding: Molding; fields: Fields } {
  const {
    name,
    densityKgM3,
    ratio,
    potLifeMin,
    potLifeAtC,
    linearShrinkShare,
    mixedViscosityPaS,
    cure,
    kits,
  } = card;
  const typed: Partial<Record<OwnField, FieldText>> = {
    siliconeDensity: { text: numberText(densityKgM3 / 1000), unit: 'g/cm3' },
    siliconeBase: { text: numberText(ratio.base), unit: '' },
    siliconeCatalyst: { text: numberText(ratio.catalyst), unit: '' },
    potLife: { text: numberText(potLifeMin), unit: '' },
    potLifeAt: { text: potLifeAtC === undefined ? '' : numberText(potLifeAtC), unit: 'C' },
    viscosity: { text: mixedViscosityPaS === undefined ? '' : numberText(mixedViscosityPaS), unit: '' },
    sheetShrink: {
      text: linearShrinkShare === undefined ? '' : numberText(100 * linearShrinkShare),
      unit: '%',
    },
  };
  const facts = { ...molding.facts, siliconeCure: cure ?? '' };
  return {
    molding: { ...molding, siliconeName: name, facts, kits: kits.map(kitText).join(', ') },
    fields: { ...fields, ...typed },
  };
}

export const kitText = ({ massKg, price }: SiliconeCard['kits'][number]): string =>
  `${numberText(massKg)} kg${price === undefined ? '' : `=${numberText(price)}`}`;
