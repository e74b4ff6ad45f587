import { describe, expect, it } from 'vitest';
import { CHECK_FIGURES } from '../../src/checks';
import { FINISH_NOTES } from '../../src/words/finishNotes';
import { CAUTION_KEYS, cautionsFor } from '../../src/words/materialCautions';

/** What a caution must speak of, material by material. */
const MUST_SAY: readonly [key: string, words: RegExp][] = [
  ['condensation-silicone', /tin.*toxic.*skin and eyes.*alcohol/s],
  ['addition-silicone', /Sulfur.*Nitrile gloves, never latex/s],
  ['plaster-heat', /burn.*Never cast it round.*body/s],
  ['plaster-dust', /mask/],
  ['polyester-styrene', /Styrene.*fire.*Exhaust/s],
  ['polyester-catalyst', /peroxide.*blind.*Never mix it directly with cobalt/s],
  ['glass-dust', /eyes and lungs.*mask/s],
  ['silica-dust', /crystalline silica.*lungs.*mg\/m³.*from memory, not verified/s],
  ['vacuum-pot', /acrylic.*implode.*cracks/s],
  ['heavy-lift', /two people/],
  ['putty-skin', /allergic.*Gloves/s],
  ['clay', /never over a flame/],
  ['hot-mold', /gloves/],
  ['straps', /spring/],
  ['solvents', /Exhaust/],
];

describe('cautions beside the material they belong to', () => {
  it.each(MUST_SAY)('%s', (key, words) => {
    const [first, caution, ...others] = cautionsFor([key]);
    expect(others).toEqual([]);
    expect(first).toMatchObject({
      key: 'first',
      what: expect.stringMatching(/data sheets, local codes/) as string,
    });
    expect(caution!.key).toBe(key);
    expect(caution!.what).toMatch(words);
    expect(caution!.from).toMatch(/common practice, no source|from memory, not verified|ASTM|ISO/);
  });

  it('no caution is on the list that this test does not read', () => {
    expect([...CAUTION_KEYS].sort()).toEqual(['first', ...MUST_SAY.map(([key]) => key)].sort());
  });

  it('the data sheets come first even when nothing is asked for', () => {
    expect(cautionsFor([]).map(({ key }) => key)).toEqual(['first']);
  });

  it('asked for twice, in any order, each stands once and in the order of the list', () => {
    const keys = cautionsFor(['vacuum-pot', 'plaster-heat', 'vacuum-pot']).map(({ key }) => key);
    expect(keys).toEqual(['first', 'plaster-heat', 'vacuum-pot']);
  });

  it('a material nobody knows is a mistake of ours and throws', () => {
    expect(() => cautionsFor(['plaster-heat', 'plutonium'])).toThrow(/got plutonium/);
    expect(() => cautionsFor(['toString'])).toThrow(/got toString/);
  });

  it('a weight or a limit in a caution is the one of the rule table', () => {
    const textOf = (key: string): string => cautionsFor([key])[1]!.what;
    expect(textOf('heavy-lift')).toContain(`${CHECK_FIGURES.heavyLift.value} kg`);
    expect(textOf('silica-dust')).toContain(`${CHECK_FIGURES.respirableSilica.value} mg/m³`);
    expect(textOf('hot-mold')).toContain(`${CHECK_FIGURES.hotSurface.value} °C`);
  });
});

describe('notes on finishing', () => {
  it('each is tagged as common practice and stands once', () => {
    expect(new Set(FINISH_NOTES.map(({ key }) => key)).size).toBe(FINISH_NOTES.length);
    for (const { from } of FINISH_NOTES) expect(from).toBe('common practice, no source');
  });

  it('they speak of washing, a swatch mixed lighter, and a binder that bends', () => {
    const all = FINISH_NOTES.map(({ what }) => what).join(' ');
    expect(all).toMatch(/Wash the casting first/);
    expect(all).toMatch(/dries slightly darker.*lighter.*swatch/);
    expect(all).toMatch(/binder that bends/);
  });
});
