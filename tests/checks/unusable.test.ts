import { describe, expect, it } from 'vitest';
import { CHECKS, runCheck, type CheckFacts, type FactName } from '../../src/checks';
import type { CheckCode, Problem } from '../../src/problem';

const ask = (code: CheckCode, facts: CheckFacts): Problem =>
  runCheck(
    CHECKS.find((check) => check.code === code)!,
    facts,
  );

describe('a fact that cannot be used', () => {
  it.each<[CheckCode, FactName, unknown, CheckFacts]>([
    ['SHELF_LIFE', 'siliconeOpenedOn', '2025-02-29', { today: '2025-06-10' }],
    ['SHELF_LIFE', 'siliconeOpenedOn', '10.3.2025', { today: '2025-06-10' }],
    ['SHELF_LIFE', 'siliconeOpenedOn', '2025-06-11', { today: '2025-06-10' }],
    ['SHELF_LIFE', 'today', 'yesterday', { siliconeOpenedOn: '2025-01-01' }],
    ['MOLD_LIFE', 'moldMadeOn', '2026-01-01', { siliconeCure: 'condensation', today: '2025-06-10' }],
    ['THICK_CONDENSATION', 'thickestMm', Number.NaN, { siliconeCure: 'condensation' }],
    ['THICK_CONDENSATION', 'thickestMm', 0, { siliconeCure: 'condensation' }],
    ['PIGMENT', 'pigmentShare', 2, { pigmentKind: 'other' }],
    ['PIGMENT', 'pigmentShare', -0.01, { pigmentKind: 'other' }],
    ['PIGMENT', 'pigmentKind', 'glitter', { pigmentShare: 0.01 }],
    ['GLOVES', 'siliconeCure', 'tin', { gloves: 'nitrile' }],
    ['GLOVES', 'gloves', 'toString', { siliconeCure: 'addition' }],
    ['PAINT_FLEX', 'willPaint', 'no', { paintIsFlexible: true }],
    ['SCALE_STEP', 'scaleStepG', 0, { partAG: 20, partBG: 50 }],
    ['SCALE_STEP', 'partAG', -20, { scaleStepG: 1, partBG: 50 }],
    ['RATIO_ORDER', 'ratioReadBack', 'yes', { ratioReversed: false }],
    ['PACK_RANGE', 'packFactor', Number.POSITIVE_INFINITY, {}],
    ['CUP_ROOM', 'cupCm3', 0, { liquidCm3: 600 }],
    ['POUR_WINDOW', 'pourTimeS', 0, { pourWindowS: 20, pourWindowLowS: 12 }],
    ['MOLD_TEMPERATURE', 'moldTempC', 900, {}],
    ['MOLD_DAMP', 'moldWater', 'dry', {}],
    ['MOLD_SEALED', 'ventCount', 1.5, { ventMm: 2, openingOpen: true }],
    ['MOLD_SEALED', 'ventMm', 0, { ventCount: 2 }],
    ['JACKET_PANELS', 'panelVerdict', 'bends', { panelSpanMm: 100, panelLargestMm: 118 }],
    ['STRAP_LOAD', 'strapWorkingN', 0, { strapBuckleN: 180 }],
    ['PLUG_FORCE', 'plugHeld', 1, { plugN: 150, plugVented: true }],
    ['EXOTHERM', 'coreTempC', Number.NaN, {}],
    ['FOAM_AGE', 'foamOpenedOn', '2025-06-11', { today: '2025-06-10' }],
    ['FOAM_AGE', 'today', '2025-6-1', { foamOpenedOn: '2025-01-01' }],
    ['OPENING_TIME', 'cardOpenMin', 0, {}],
    ['AIR_PRESSURE', 'airPressureFrom', 'weather', { cupTestedToday: false }],
    ['MIXING_METHOD', 'mixingMethod', 'blender', {}],
    ['SHORT_FILL_RISK', 'shortFillChance', 1.2, {}],
    ['FIRE_RATING', 'castingFireRated', 'B1', {}],
    ['CUP_TEST_TODAY', 'cupTestedToday', 'yesterday', {}],
    ['OPENING_SIZE', 'openingMm', 0, { openingLeastMm: 20, openingMostMm: 40, openingShare: 0.02 }],
    ['OPENING_SIZE', 'openingShare', -1, { openingMm: 25, openingLeastMm: 20, openingMostMm: 40 }],
    ['LIQUID_STAYS', 'holdCm3', -1, { pouredLiquidCm3: 900 }],
    ['AIR_TRAPPED', 'trapLeftCm3', Number.NaN, { trappedCm3: 6 }],
    ['FLAT_CEILING', 'flatCeilingCm2', -1, {}],
    ['THIN_CASTING', 'castingThinnestMm', Number.NaN, {}],
    ['THIN_RUBBER', 'rubberThinnestMm', '3 mm', {}],
    ['SLENDER', 'slenderness', Number.POSITIVE_INFINITY, {}],
    ['DEMOLD_STRETCH', 'elongationAtBreak', 300, { demoldStretch: 0.5, slitMm: 10 }],
  ])('%s: %s = %s is not guessed at but given back', (code, name, value, others) => {
    const { status, values } = ask(code, { ...others, [name]: value });
    expect(status).toBe('unknown');
    expect(values).toMatchObject({ unusable: name, said: String(value), missing: '' });
  });

  it('null, as a saved job may hold it, is missing', () => {
    const answer = ask('GLOVES', { siliconeCure: 'addition', gloves: null } as unknown as CheckFacts);
    expect(answer).toMatchObject({ status: 'unknown', values: { missing: 'gloves', unusable: '' } });
  });
});
