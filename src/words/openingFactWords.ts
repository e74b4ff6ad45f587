import type { OpeningFactName } from '../checks';
import type { FactWords } from './factWord';

const MEASURE = 'a scan that can be measured';
const ELONGATION = 'elongation at break, 20 to 1500 %, as the data sheet of the silicone says';

/** What a missing fact of opening or demolding is, after "Not checked:", and what to enter for it. */
export const OPENING_FACT_WORDS: Readonly<Record<OpeningFactName, FactWords>> = {
  openingMm: { what: 'how wide the pour opening is', enter: 'diameter of the opening, 1 to 300 mm' },
  openingLeastMm: {
    what: 'how wide it must be to pour in time',
    enter: 'foam, cream time and viscosity of the mix, as the data sheet says',
  },
  openingMostMm: {
    what: 'how wide it may be',
    enter: 'where the opening is, on a scan that can be measured',
  },
  openingShare: {
    what: 'how much of the section the opening takes',
    enter: 'where the opening is, on a scan that can be measured',
  },
  trappedCm3: {
    what: 'how much air stays in high spots',
    enter: 'which way up the mold is poured, opening and vents',
  },
  trapLeftCm3: {
    what: 'how much air stays after the advised vents',
    enter: 'which way up the mold is poured, opening and vents',
  },
  flatCeilingCm2: { what: 'how much of the ceiling is level', enter: 'which way up the mold is poured' },
  pouredLiquidCm3: { what: 'how much liquid is poured', enter: 'foam and pack, which decide the batch' },
  holdCm3: {
    what: 'how much liquid the mold holds as it stands',
    enter: 'which way up the mold is poured, opening and vents',
  },
  castingThinnestMm: { what: 'how thin the casting gets', enter: MEASURE },
  rubberThinnestMm: { what: 'how thin the rubber gets between two parts', enter: MEASURE },
  slenderness: { what: 'how slender ears and fingers are', enter: MEASURE },
  demoldStretch: {
    what: 'how far the rubber must stretch',
    enter:
      'a flat end that the casting is pulled out by (cut the scan there), or that the rubber around the opening stays on',
  },
  elongationAtBreak: {
    what: 'how far the rubber stretches before it breaks',
    enter: ELONGATION,
  },
  slitMm: {
    what: 'how long a slit would have to be',
    enter: ELONGATION,
  },
};
