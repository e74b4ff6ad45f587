import type { PourFactName } from '../checks';
import type { FactWords } from './factWord';

/** What a missing fact of the pour is, after "Not checked:", and what to enter for it. */
export const POUR_FACT_WORDS: Readonly<Record<PourFactName, FactWords>> = {
  partAG: { what: 'how much of part A is weighed', enter: 'part A, more than 0 g' },
  partBG: { what: 'how much of part B is weighed', enter: 'part B, more than 0 g' },
  scaleStepG: { what: 'how finely the scale shows', enter: 'step of the scale, 0.001 to 100 g' },
  ratioReversed: {
    what: 'whether A:B is in the order of the data sheet',
    enter: 'the ratio as the data sheet has it, A first',
  },
  ratioReadBack: {
    what: 'whether the ratio was read back',
    enter: 'read back, yes only once grams and drum labels were read aloud and agree',
  },
  packFactor: { what: 'how hard the foam is packed', enter: 'pack factor, molded over free-rise density' },
  liquidCm3: { what: 'how much liquid the cup takes', enter: 'liquid in the cup, more than 0 cm³' },
  cupCm3: { what: 'how large the mixing cup is', enter: 'mixing cup up to its rim, 10 cm³ or more' },
  pourTimeS: { what: 'how long the pour takes', enter: 'time to pour, more than 0 s' },
  pourWindowS: {
    what: 'how long there is to pour',
    enter: 'cream time, as the data sheet says, and the time to mix',
  },
  pourWindowLowS: {
    what: 'how short the time to pour can get',
    enter: 'temperature of the ingredients, and the one that the cream time holds at',
  },
  moldTempC: {
    what: 'how warm the mold is inside',
    enter: 'mold temperature, measured on the inner surface',
  },
  moldWater: {
    what: 'whether water was in the mold and has dried',
    enter: 'water in the mold: none, not confirmed dry or confirmed dry',
  },
  ventCount: { what: 'how many vents the mold has', enter: 'vents, 0 or more' },
  ventMm: { what: 'how wide the vents are', enter: 'width of a vent, 0.1 to 100 mm' },
  openingOpen: {
    what: 'whether the opening lets air out while the foam rises',
    enter: 'opening open or closed with a vented plug, yes or no',
  },
  panelSpanMm: {
    what: 'how wide the flat panels of the jacket are',
    enter: 'widest flat span without rib or board, in mm, 0 if there is none',
  },
  panelLargestMm: {
    what: 'how wide a flat panel may be',
    enter: 'thickness of the jacket and the pack, which decide it',
  },
  panelVerdict: {
    what: 'whether a panel of that thickness bears the pressure',
    enter: 'thickness of the jacket and the pack, which decide it',
  },
  strapBuckleN: {
    what: 'how hard the straps are pulled',
    enter: 'number of straps, and the area that the foam pushes on',
  },
  strapWorkingN: {
    what: 'what a strap bears',
    enter: 'working load of a strap, in N, as its label says',
  },
  coreTempC: {
    what: 'how hot the core gets',
    enter: 'NCO of part A, water in part B and their temperature, as the data sheet says',
  },
  foamOpenedOn: {
    what: 'when the parts of the foam were opened',
    enter: 'foam opened, a day such as 2025-03-31 and not after today, or "not yet"',
  },
  cupTestedToday: {
    what: 'whether a cup of this foam was tested today in this room',
    enter: 'cup test of today, yes or no',
  },
  mixingMethod: { what: 'how the foam is mixed', enter: 'mixing, one of hand, drill, hand then drill' },
  airPressureFrom: {
    what: 'where the air pressure is known from',
    enter: 'pressure of a barometer at the bench, or the height above the sea',
  },
  cardOpenMin: {
    what: 'when this foam can be opened',
    enter: 'time until it may be opened, in min, as the data sheet says',
  },
  plugN: {
    what: 'how hard the foam pushes on plug or lid',
    enter: 'area of the plug or lid, 0 if there is none',
  },
  plugHeld: {
    what: 'whether plug or lid is held',
    enter: 'plug held by clamp, strap or weight, yes or no',
  },
  plugVented: { what: 'whether plug or lid lets air out', enter: 'plug vented, yes or no' },
  shortFillChance: {
    what: 'how likely a short fill is',
    enter: 'cavity, free rise and pack, which decide it',
  },
  castingFireRated: {
    what: 'whether the casting meets the fire rules of the place where it will be',
    enter: 'tested for fire, yes only with a report that the place accepts',
  },
};
