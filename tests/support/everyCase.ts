import type { Check, FactName, MaterialFacts } from '../../src/checks';
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
};

export const samplesOf = (name: FactName): readonly unknown[] => SAMPLES[name];

/** Every mixture of a check's facts, each fact missing or one of its samples. */
export function everyCase(check: Check): MaterialFacts[] {
  return check.facts.reduce<MaterialFacts[]>(
    (cases, name) =>
      cases.flatMap((facts) => [facts, ...samplesOf(name).map((value) => ({ ...facts, [name]: value }))]),
    [{}],
  );
}
