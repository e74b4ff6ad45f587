import type { ShopFoam } from './foamSheet';
import { SHOP_SCHEMA, type Shop } from './shop';

/** Kilograms per cubic meter in one pound per cubic foot, exact: 0.45359237 / 0.3048^3. */
const PCF = 0.45359237 / 0.3048 ** 3;

const SAMPLE_FOAMS: ShopFoam[] = [
  {
    name: 'Sample Foam Light',
    freeRiseKgM3: 6 * PCF,
    freeRiseFrom: 'data-sheet',
    ratio: { a: 100, b: 55, by: 'mass' },
    partDensities: { aKgM3: 1100, bKgM3: 1200 },
    creamS: 40,
    riseS: 150,
    openMin: 25,
    timesAtC: 23,
    kits: [{ massKg: 2 }],
  },
  {
    name: 'Sample Foam Firm',
    freeRiseKgM3: 12 * PCF,
    freeRiseFrom: 'data-sheet',
    ratio: { a: 38, b: 100, by: 'mass' },
    creamS: 50,
    openMin: 35,
    timesAtC: 23,
    kits: [{ massKg: 3 }],
  },
];

/** An invented two-person shop to try things with. Nothing in it is a fact about any material. */
export const SAMPLE_SHOP: Shop = {
  schema: SHOP_SCHEMA,
  name: 'Wrack Lane Puppet Works (invented)',
  foams: SAMPLE_FOAMS,
  silicones: [
    {
      name: 'Sample Silicone 25',
      cure: 'condensation',
      densityKgM3: 1180,
      ratio: { base: 10, catalyst: 1, by: 'mass' },
      potLifeMin: 25,
      linearShrinkShare: 0.002,
      kits: [
        { massKg: 1.1, price: 30 },
        { massKg: 5.5, price: 130 },
      ],
    },
  ],
  stock: [
    { card: 'Sample Foam Light', lot: 'L-07', aKg: 2.0, bKg: 1.1, openedMonths: 9 },
    { card: 'Sample Foam Firm', aKg: 0.7, bKg: 1.7 },
    { card: 'Sample Silicone 25', baseKg: 6.0, catalystKg: 0.6 },
  ],
  scale: { stepG: 1, maxG: 5000 },
  pieces: {},
  scans: {},
};
