import type { LEARN_BOUNDS, RUN_BOUNDS, VOLUME_BOUNDS } from '../yield';

type Named = keyof typeof LEARN_BOUNDS | keyof typeof RUN_BOUNDS | keyof typeof VOLUME_BOUNDS;

/** Names that other lists have words for already. */
type Known =
  | 'cavityCm3'
  | 'freeRiseKgM3'
  | 'gasLossShare'
  | 'gaugeKPa'
  | 'mixedG'
  | 'moldedKgM3'
  | 'openMin'
  | 'packFactor'
  | 'residueG'
  | 'riseS'
  | 'scaleStepG'
  | 'sprueLengthMm'
  | 'sprueMm'
  | 'waterTempC';

/** What the numbers of the book, of a run and of other ways to a volume are called when one of them is refused. */
export const BOOK_INPUT_WORDS: Readonly<Record<Exclude<Named, Known>, string>> = {
  pouredG: 'Mass poured in',
  castingG: 'Casting',
  trimG: 'Trim',
  riserTrimG: 'Trim of the riser',
  filledCm3: 'Volume that was filled',
  scanCm3: 'Volume of the scan',
  uFreeRiseShare: 'Doubt of the free rise',
  uCavityShare: 'Doubt of the cavity',
  shortShare: 'What was missing to full',
  fillChance: 'Wanted chance of filling',

  beforeCm3: 'Level before',
  afterCm3: 'Level after',
  readingCm3: 'Step of the vessel',
  fillWaterG: 'Water',
  tapedLengthMm: 'Length by the tape',
  girthMm: 'Girth',
  tapedHeightMm: 'Height by the tape',
  tapedWidthMm: 'Width by the tape',
  tapedDepthMm: 'Depth by the tape',

  castings: 'Number of castings',
  molds: 'Number of molds',
  partAG: 'Part A of a casting',
  partBG: 'Part B of a casting',
  spareShare: 'Spare castings',
  cupTestG: 'Foam of a cup test',
  foamStockKg: 'Foam in stock',
  turnaroundMin: 'Time between two rounds, beside the wait',
  dayMin: 'Length of a work day',
  moldLife: 'Castings that a mold lasts for',
  moldUsed: 'Castings that the mold has done',
  foamPerKg: 'Price of a kilogram of foam',
  otherPerCasting: 'Other costs of a casting',
};
