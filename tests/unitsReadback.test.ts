import { describe, expect, it } from 'vitest';
import {
  formatArea,
  formatDensity,
  formatGrams,
  formatLength,
  formatMass,
  formatQuantity,
  formatShare,
  formatVolume,
  formatVolumeRange,
  G_PER_OZ,
  KG_M3_PER_LB_FT3,
  readQuantity,
} from '../src/units';
import { expectClose } from './support/close';
import { lcg } from './support/lcg';

describe('readback in both systems', () => {
  it.each([
    [formatLength(264), '264 mm (10.39 in)'],
    [formatVolume(300), '300 cm³ (10.1 fl oz)'],
    [formatDensity(6 * KG_M3_PER_LB_FT3), '96.1 kg/m³ (6.00 lb/ft³)'],
    [formatMass(500), '500 g (1 lb 1.6 oz)'],
    [formatMass(453.59), '453.6 g (1 lb)'],
    // By hand: 27217 lb are 12 345 423.5 g, and the 254.5 g left are 8.98 oz.
    [formatMass(12345678), '12\u202f345\u202f678 g (27\u202f217 lb 9 oz)'],
    [formatMass(30, 'us'), '1.1 oz'],
    [formatLength(264, 'metric'), '264 mm'],
    [formatQuantity('temperature', 22.2222), '22.2 °C (72 °F)'],
    [formatQuantity('temperatureDifference', 5), '5 K (9 °F of difference)'],
    [formatShare(0.01), '1 %'],
    [formatGrams(37.9, 0.1), '37.9 g'],
    [formatGrams(379, 1), '379 g'],
    // An ounce scale: 23 x 28.349523125 g, and 13.5 oz on a scale of half ounces.
    [formatGrams(23 * G_PER_OZ, G_PER_OZ), '652.0 g (23 oz)'],
    [formatGrams(13.5 * G_PER_OZ, G_PER_OZ / 2), '382.7 g (13.5 oz)'],
    [formatMass(0.1), '0.1 g (0.004 oz)'],
    [formatDensity(1100), '1\u202f100 kg/m³ (68.67 lb/ft³)'],
  ])('%s', (ours, wanted) => expect(ours).toBe(wanted));

  it('reads its own metric form back as the same value (law, seed 7)', () => {
    const random = lcg(7);
    for (let round = 0; round < 300; round += 1) {
      const massG = Number((10 ** (1 + 5 * random())).toPrecision(4));
      const read = readQuantity(formatMass(massG, 'metric'), 'mass');
      expectClose(read.kind === 'one' ? read.value : Number.NaN, massG, 5e-3, `seed 7, round ${round}`);
    }
  });
});

/** 1 gal = 3785.411784 cm3, 1 fl oz = 29.5735 cm3, 1 sq in = 6.4516 cm2 (NIST SP 811); the figures by hand. */
describe('ranges and areas', () => {
  it.each([
    [formatVolumeRange(4372.8, 4479.7), '4\u202f372.8 to 4\u202f479.7 cm³ (1.1552 to 1.1834 gal)'],
    [formatVolumeRange(4372.8, 4479.7, 'us'), '1.1552 to 1.1834 gal'],
    [formatVolumeRange(295.735, 591.47, 'us'), '10 to 20 fl oz'],
    [formatVolumeRange(0, 591.47, 'metric'), '0 to 591.47 cm³'],
    [formatArea(64.516), '64.52 cm² (10 sq in)'],
    [formatArea(64.516, 'us'), '10 sq in'],
    [formatArea(1234.56, 'metric'), '1\u202f235 cm²'],
  ])('%s', (ours, wanted) => expect(ours).toBe(wanted));
});
