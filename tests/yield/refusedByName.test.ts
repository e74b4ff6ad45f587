import { describe, expect, it } from 'vitest';
import type { Outcome } from '../../src/problem';
import {
  amountByCoverage,
  coolDown,
  convectiveShare,
  cupTest,
  diffusivityMm2S,
  displacedByLevel,
  effusivity,
  fillFindings,
  freeRiseFromCups,
  heaterMin,
  openingBand,
  openingKeeps,
  openingOffers,
  orderInMixes,
  penetrationMm,
  planRun,
  planStraps,
  pourTimeS,
  pressureAtOpening,
  pullForceN,
  SILICONE_HEAT,
  shrinkFromLengths,
  stepShare,
  tempAtDepthC,
  timeToReachMin,
  waterCapKPa,
} from '../../src/yield';
import type { HeatedBody, HeldFoam, OrderInputs, TimedPour, TrimmedPour, WallInAir } from '../../src/yield';
import { fillBelief } from '../../src/yield/learn/fillPrior';
import { learnFreeRise } from '../../src/yield/learn/freeRise';
import { problemOf, valueOf } from '../support/outcome';

/** What one step passes on to the next is refused there too, and by the name of what was given. */

const body: HeatedBody = {
  ...SILICONE_HEAT,
  ...{ shape: 'slab', thicknessMm: 40, hWM2K: 10, surroundTempC: 50, startTempC: 20 },
};
const pour: TimedPour = {
  ...{ liquidCm3: 1000, withinS: 15, mixPaS: 1, liquidKgM3: 1070 },
  ...{ sprueLengthMm: 50, headMm: 30, vented: true },
};
const head = { sectionCm2: 240, castingCm2: 1650 };
const hold: HeldFoam = {
  ...{ sprueLengthMm: 50, packFactor: 1.3, cavityCm3: 5200, riseS: 120, foamPaS: 50 },
  ...{ idealKPa: 37.7, wantedKPa: 30 },
};
const band = valueOf(openingBand({ ...head, pour }));
const cup = { fullG: 90, cupG: 40, waterG: 500, waterTempC: 20 };
const wall: WallInAir = { wallMm: 8, sides: 1, surroundings: 'still box', airTempC: 20, startTempC: 45 };
const order: Omit<OrderInputs, 'cups'> = {
  volumeCm3: { value: 2000, low: 1900, high: 2100 },
  densityKgM3: 1100,
  ratio: { base: 10, catalyst: 1, by: 'mass' },
  method: 'brush',
};
const trimmed: TrimmedPour = { opening: 'open', packFactor: 1.3, freeRiseKgM3: 100, cavityCm3: 4500 };
const run = { castings: 10, molds: 2, batch: { partAG: 379, partBG: 209 } };
const gas = { mixedG: 900, waterShare: 0.01, gasTempK: 380, cavityCm3: 4500, liquidKgM3: 1070 };

const CALLS: readonly (readonly [what: string, call: () => Outcome<unknown>, input: string])[] = [
  ['cups, one without a mass', () => freeRiseFromCups([cup, { ...cup, fullG: NaN }]), 'fullG'],
  ['a cup test of it', () => cupTest([{ ...cup, fullG: NaN }]), 'fullG'],
  ['a cup of lead', () => cupTest([{ ...cup, fullG: 900 }]), 'freeRiseKgM3'],
  [
    'a lip of Shore A 100',
    () => pullForceN({ shoreA: 100, stretchShare: 1, lipMm: 8, lipGirthMm: 380 }),
    'shoreA',
  ],
  [
    'a lip shrunk to nothing',
    () => pullForceN({ shoreA: 20, stretchShare: -2, lipMm: 8, lipGirthMm: 380 }),
    'stretchShare',
  ],
  ['a belief out of no density', () => fillBelief({ freeRiseKgM3: 0, from: 'data-sheet' }), 'freeRiseKgM3'],
  [
    'a free rise out of a casting of 0 g',
    () => learnFreeRise({ cups: [], pours: [{ outcome: 'short', castingG: 0, filledCm3: 900 }] }),
    'freeRiseKgM3',
  ],
  ['a trimmed pour of no density', () => openingKeeps([{ ...trimmed, freeRiseKgM3: NaN }]), 'freeRiseKgM3'],
  [
    'a coat on no surface',
    () => amountByCoverage({ surfaceCm2: NaN, coverageM2: 5, coats: 1 }),
    'surfaceCm2',
  ],
  ['a length of 0', () => shrinkFromLengths({ sculptMm: 0, moldMm: 1, readingMm: 1 }), 'lengthMm'],
  ['time to pour through 0 mm', () => pourTimeS({ ...pour, sprueMm: 0 }), 'sprueMm'],
  ['a band for a mix of water', () => openingBand({ ...head, pour: { ...pour, mixPaS: 0 } }), 'mixPaS'],
  ['a way out without liquid', () => openingOffers(band, { ...pour, liquidCm3: NaN }), 'liquidCm3'],
  [
    'a way out that holds foam of no viscosity',
    () => openingOffers(band, pour, { hold: { ...hold, foamPaS: NaN } }),
    'foamPaS',
  ],
  ['a plug under no pressure', () => openingOffers(band, pour, { gaugeKPa: NaN }), 'gaugeKPa'],
  [
    'an opening that holds a pressure below 0',
    () => pressureAtOpening({ openingMm: 30, hold: { ...hold, idealKPa: -1 } }),
    'gaugeKPa',
  ],
  ['gas of no mix', () => waterCapKPa({ ...gas, mixedG: NaN }), 'mixedG'],
  ['straps that slide by less than nothing', () => planStraps(500, { strapFriction: -1 }), 'strapFriction'],
  [
    'a run with a kit of 0 kg',
    () =>
      planRun({
        ...run,
        ratio: { a: 100, b: 55, by: 'mass' },
        stock: [{ aKg: 0, bKg: 0 }],
        kits: [{ massKg: 0 }],
      }),
    'kitKg',
  ],
  [
    'mixes of a pot life of 0',
    () => orderInMixes(order, { potLifeMin: 0, method: 'brush', degassed: false }),
    'potLifeMin',
  ],
  [
    'mixes of no volume',
    () =>
      orderInMixes(
        { ...order, volumeCm3: { value: NaN, low: 1900, high: 2100 } },
        { potLifeMin: 20, method: 'brush', degassed: false },
      ),
    'volumeCm3',
  ],
  [
    'a funnel of 0 mm',
    () => fillFindings({ volumeCm3: 900, leftMin: 5, diameterMm: 0, densityKgM3: 1100, viscosityPaS: 20 }),
    'diameterMm',
  ],
  [
    'levels that are none',
    () => displacedByLevel({ medium: 'rice', beforeCm3: -1, afterCm3: 9 }),
    'beforeCm3',
  ],
  ['a wall that cools to no temperature', () => coolDown({ ...wall, toTempC: NaN }), 'targetTempC'],
  [
    'a heater on no mass',
    () => heaterMin({ powerW: 500, massG: NaN, startTempC: 20, targetTempC: 40 }),
    'massG',
  ],
  ['a material of no density', () => diffusivityMm2S({ ...SILICONE_HEAT, densityKgM3: 0 }), 'densityKgM3'],
  ['the same for its draw', () => effusivity({ ...SILICONE_HEAT, conductivityWMK: 0 }), 'conductivityWMK'],
  ['a time before the start', () => stepShare({ depthMm: 5, minutes: -1, diffusivityMm2S: 0.16 }), 'minutes'],
  [
    'under air that does not touch',
    () => convectiveShare({ depthMm: 5, minutes: 1, diffusivityMm2S: 0.16, conductivityWMK: 0.2, hWM2K: 0 }),
    'hWM2K',
  ],
  ['a depth after no time', () => penetrationMm({ minutes: NaN, diffusivityMm2S: 0.16 }), 'minutes'],
  ['a temperature at no time', () => tempAtDepthC(body, { depthMm: 0, minutes: NaN }), 'minutes'],
  ['a time to no temperature', () => timeToReachMin(body, { depthMm: 0, targetTempC: NaN }), 'bodyTempC'],
  ['a time at a depth beyond', () => timeToReachMin(body, { depthMm: 41, targetTempC: 30 }), 'depthMm'],
];

describe('refused by name', () => {
  it.each(CALLS)('%s', (_what, call, input) => {
    const { code, values } = problemOf(call());
    expect(code).toMatch(/^INPUT_(OUT_OF_BOUNDS|NOT_A_NUMBER)$/);
    expect(values.input).toBe(input);
  });
});
