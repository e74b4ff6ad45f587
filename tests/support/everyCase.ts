import type { Check, CheckFacts, FactName } from '../../src/checks';
import { CHOICES } from '../../src/checks';

/** Values of each fact that lie on both sides of every limit. A choice takes all of its words. */
const SAMPLES: Readonly<Record<FactName, readonly unknown[]>> = {
  ...CHOICES,
  barrierCoat: [false, true],
  barrierDryMin: [0, 29, 30, 600],
  patchTested: [false, true],
  siliconeOpenedOn: ['not yet', '2025-05-01', '2024-10-10', '2024-06-10', '2023-01-01'],
  moldMadeOn: ['not yet', '2025-05-01', '2024-06-11', '2024-06-10', '2020-06-11', '2015-01-01'],
  today: ['2025-06-10', '2025-12-31'],
  thickestMm: [3, 25, 25.1, 80],
  willPaint: [false, true],
  paintIsFlexible: [false, true],
  pigmentShare: [0, 0.02, 0.021, 0.05, 0.051, 1],
  partAG: [1, 20, 400],
  partBG: [2, 50, 1000],
  scaleStepG: [0.1, 1, 5],
  ratioReversed: [false, true],
  ratioReadBack: [false, true],
  packFactor: [0.9, 1, 1.09, 1.1, 1.6, 1.61, 2, 2.01, 3],
  liquidCm3: [100, 500, 900],
  cupCm3: [300, 1000, 1500, 2700],
  pourTimeS: [5, 8, 12, 12.1, 60],
  pourWindowS: [12, 20],
  pourWindowLowS: [0, 8, 12],
  moldTempC: [-5, 15.6, 20, 26.9, 27, 32.2, 45, 45.1, 50, 50.1, 60, 60.1, 110],
  ventCount: [0, 1, 6],
  ventMm: [0.5, 1.5, 3, 3.1],
  openingOpen: [false, true],
  panelSpanMm: [0, 100, 150, 151, 400],
  panelLargestMm: [90, 150],
  strapBuckleN: [0, 200, 201, 3000],
  strapWorkingN: [200, 2500],
  coreTempC: [60, 140, 140.1, 160, 160.1, 200],
  foamOpenedOn: ['not yet', '2025-05-01', '2024-10-10', '2024-06-10', '2023-01-01'],
  cupTestedToday: [false, true],
  cardOpenMin: [5, 20, 30, 60, 61],
  plugN: [0, 3, 1800],
  plugHeld: [false, true],
  plugVented: [false, true],
  shortFillChance: [0, 0.01, 0.011, 0.1, 0.11, 0.9],
  castingFireRated: [false, true],
  openingMm: [10, 25, 45, 70],
  openingLeastMm: [8, 20.3, 50],
  openingMostMm: [0, 15, 39.4],
  openingShare: [0.02, 0.1, 0.11],
  trappedCm3: [0, 0.19, 0.2, 30],
  trapLeftCm3: [0, 0.19, 0.2, 1, 1.1, 12],
  flatCeilingCm2: [0, 1, 1.1, 40],
  pouredLiquidCm3: [300, 900],
  holdCm3: [0, 300, 899.9, 5000],
  castingThinnestMm: [0, 5.9, 6, 9.9, 10, 40],
  rubberThinnestMm: [0, 2.9, 3, 12],
  slenderness: [0.5, 5, 5.1, 12],
  demoldStretch: [-0.3, 0, 0.221, 0.5, 1.133, 4],
  elongationAtBreak: [1.4, 3, 6.8],
  slitMm: [0, 33.1],
};

export const samplesOf = (name: FactName): readonly unknown[] => SAMPLES[name];

/** Every mixture of a check's facts, each fact missing or one of its samples. */
export function everyCase(check: Check): CheckFacts[] {
  return check.facts.reduce<CheckFacts[]>(
    (cases, name) =>
      cases.flatMap((facts) => [facts, ...samplesOf(name).map((value) => ({ ...facts, [name]: value }))]),
    [{}],
  );
}
