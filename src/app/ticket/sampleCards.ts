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
    },
  },
];
