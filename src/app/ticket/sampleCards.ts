import type { OwnField } from './fields';

/** A card of the invented sample shop: no real product. Texts as they would be typed, so that they read back alike. */
export interface SampleCard {
  key: string;
  name: string;
  by: 'mass' | 'volume';
  texts: Partial<Record<OwnField, { text: string; unit: string }>>;
}

export const SAMPLE_CARDS: readonly SampleCard[] = [
  {
    key: 'light',
    name: 'Sample Foam Light',
    by: 'mass',
    texts: {
      freeRise: { text: '6.0', unit: 'lb/ft3' },
      partsA: { text: '100', unit: '' },
      partsB: { text: '55', unit: '' },
      densityA: { text: '1.10', unit: 'g/mL' },
      densityB: { text: '1.20', unit: 'g/mL' },
      cream: { text: '40', unit: '' },
      openTime: { text: '25', unit: '' },
      sheetTemp: { text: '', unit: 'C' },
      nco: { text: '', unit: '%' },
      water: { text: '', unit: '%' },
    },
  },
  {
    key: 'firm',
    name: 'Sample Foam Firm',
    by: 'mass',
    texts: {
      freeRise: { text: '12.0', unit: 'lb/ft3' },
      partsA: { text: '38', unit: '' },
      partsB: { text: '100', unit: '' },
      densityA: { text: '', unit: 'g/mL' },
      densityB: { text: '', unit: 'g/mL' },
      cream: { text: '50', unit: '' },
      openTime: { text: '35', unit: '' },
      sheetTemp: { text: '', unit: 'C' },
      nco: { text: '', unit: '%' },
      water: { text: '', unit: '%' },
    },
  },
];
