import { describe, expect, it } from 'vitest';
import { specOf } from '../../src/app/ticket/fields';
import { readField } from '../../src/app/ticket/readField';
import { sayOnPage } from '../../src/app/words/sayOnPage';
import { bad } from '../../src/problem';

describe('a box with its unit printed behind it', () => {
  it.each([
    ['cream', '40 s', 40],
    ['cream', '40s', 40],
    ['openTime', ' 25 min ', 25],
    ['projected', '264 cm²', 264],
    ['projected', '264 cm2', 264],
    ['strapTension', '1,5 N', 1.5],
    ['viscosity', '20 Pa s', 20],
    ['strapCount', '4', 4],
  ] as const)('%s takes %s', (name, text, value) => {
    expect(readField(name, { text, unit: '' })).toMatchObject({ kind: 'one', value });
  });

  it.each([
    ['cream', '1 min'],
    ['openTime', '90 s'],
    ['projected', '3 in'],
    ['cream', 's'],
    ['strapCount', '4 N'],
  ] as const)('%s does not take %s for it', (name, text) => {
    expect(readField(name, { text, unit: '' }).kind).toBe('error');
  });

  it('says what it read with that unit', () => {
    expect(readField('projected', { text: '264,5 cm2', unit: '' })).toMatchObject({ readback: '264.5 cm²' });
  });

  it('asks of a comma with a unit as it does without', () => {
    expect(readField('projected', { text: '1,250 cm²', unit: '' }).kind).toBe('ask');
  });
});

describe('a shop behind a dike', () => {
  it('types how far it lies below the sea', () => {
    expect(readField('altitude', { text: '-5', unit: 'm' })).toMatchObject({ kind: 'one', value: -5000 });
    expect(readField('altitude', { text: '−16 ft', unit: 'm' })).toMatchObject({ kind: 'one' });
    expect(readField('tape', { text: '-5', unit: 'mm' }).kind).toBe('error');
  });

  it('gets all keys there, as number pads may lack the minus, and the number pad elsewhere', () => {
    const signed = (['altitude', 'sheetAltitude', 'openX', 'pourRoom', 'tape', 'cream', 'nco'] as const).map(
      (name) => specOf(name).isSigned === true,
    );
    expect(signed).toEqual([true, true, true, false, false, false, false]);
  });
});

describe('a share out of bounds', () => {
  it('is told in percent, as it was typed: 0.3 % of NCO against 1 to 50 %', () => {
    const values = { input: 'ncoShare', value: 0.003, low: 0.01, high: 0.5, unit: '' };
    expect(sayOnPage(bad('INPUT_OUT_OF_BOUNDS', values).problem).text).toBe(
      'NCO content of part A is 0.3 %, which is not within 1 to 50 %.',
    );
  });

  it('leaves a length as it is', () => {
    const values = { input: 'wallMm', value: 900, low: 0.5, high: 200, unit: 'mm' };
    expect(sayOnPage(bad('INPUT_OUT_OF_BOUNDS', values).problem).text).toContain('not within 0.5 to 200 mm');
  });
});
