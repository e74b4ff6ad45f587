import { describe, expect, it } from 'vitest';
import { pourCautionKeys, type CheckFacts } from '../../src/checks';
import {
  POUR_CAUTIONS,
  POUR_CAUTION_KEYS,
  pourCautions,
  type PourCautionKey,
} from '../../src/words/cautions';

/** What each caution must speak of. */
const MUST_SAY: Readonly<Record<PourCautionKey, RegExp>> = {
  first: /data sheets, local codes/,
  'part-a': /allergic for good.*exhaust air, gloves, goggles/,
  sensitized: /stays out.*not even a small cup/,
  phone: /Gloves off before you touch the phone/,
  'damp-mold': /water fill.*dry.*1\.36 liters.*Do not pour until someone has confirmed/,
  'cold-mold': /rises less and leaves uneven places.*27 to 45 °C/,
  color: /Silicone pigment, oil color and acrylic color ruin it/,
  mixing: /drill mixer gives a more even foam than mixing by hand alone/,
  drill: /guard.*cup clamped.*goggles.*Stop it before you lift it out/,
  mold: /Leave vents open.*stand clear/,
  'plug-force': /\d N.*Hold it.*let it vent.*nobody stands or leans over it/,
  heat: /no heat gun near parts/,
  opening: /hisses.*is hot.*wait until it is quiet and cool/,
  leftover: /open and outdoors, spread thin.*never in a closed bin/,
  fire: /burns fast, with thick, toxic smoke/,
  venue: /fire rules.*Ask the venue and the local fire code/,
  use: /Not for skin contact, faces, food/,
};

const keysOf = (facts: CheckFacts): string[] => pourCautions(pourCautionKeys(facts)).map(({ key }) => key);

describe('cautions of the pour', () => {
  it.each(POUR_CAUTION_KEYS)('%s', (key) => {
    const caution = pourCautions([key]).find((one) => one.key === key)!;
    expect(caution.what).toMatch(MUST_SAY[key]);
    expect(caution.from).toMatch(/common practice, no source|from memory, not verified|statics/);
  });

  it('each stands once, under a word of its own, and the data sheets come first', () => {
    expect(POUR_CAUTIONS.map(({ key }) => key)).toEqual(POUR_CAUTION_KEYS);
    expect(new Set(POUR_CAUTIONS.map(({ when }) => when)).size).toBe(POUR_CAUTIONS.length);
    expect(POUR_CAUTIONS[0]!.key).toBe('first');
  });

  it('with no facts every caution stands: what is not known is warned of', () => {
    expect(keysOf({})).toEqual(POUR_CAUTION_KEYS);
  });

  it('the damp mold: after a water fill, dry or not, and not where no water was', () => {
    expect(keysOf({ moldWater: 'not confirmed dry' })).toContain('damp-mold');
    expect(keysOf({ moldWater: 'confirmed dry' })).toContain('damp-mold');
    expect(keysOf({ moldWater: 'none' })).not.toContain('damp-mold');
  });

  it('the cold mold: at 60 F and while nobody has measured it, not at 85 F', () => {
    expect(keysOf({ moldTempC: 15.6 })).toContain('cold-mold');
    expect(keysOf({})).toContain('cold-mold');
    expect(keysOf({ moldTempC: 29.4 })).not.toContain('cold-mold');
  });

  it('the drill: wherever one is used, alone or after the hand', () => {
    expect(keysOf({ mixingMethod: 'drill' })).toContain('drill');
    expect(keysOf({ mixingMethod: 'hand then drill' })).toContain('drill');
    expect(keysOf({ mixingMethod: 'hand' })).not.toContain('drill');
  });

  it('plug or lid: wherever foam pushes on one, with its newtons', () => {
    expect(keysOf({ plugN: 0 })).not.toContain('plug-force');
    expect(keysOf({ plugN: 750 })).toContain('plug-force');
    const what = (plugN?: number): string =>
      pourCautions(['plug-force'], plugN === undefined ? {} : { plugN }).find(
        ({ key }) => key === 'plug-force',
      )!.what;
    // 25 kPa on 300 cm2: 750 N (statics, mold 5.3), and 76 kg under standard gravity.
    expect(what(750)).toMatch(/about 750 N, as 76 kg would weigh/);
    expect(what()).toMatch(/25 kPa on 300 cm² are 750 N/);
  });

  it('smoke, venue, leftover mix, sensitized persons, phone and opening stand whatever the facts', () => {
    const calm: CheckFacts = { moldWater: 'none', moldTempC: 30, mixingMethod: 'hand', plugN: 0 };
    expect(keysOf(calm)).toEqual(
      expect.arrayContaining([
        'fire',
        'venue',
        'leftover',
        'sensitized',
        'phone',
        'opening',
        'color',
        'mixing',
      ]),
    );
    expect(keysOf(calm)).toHaveLength(POUR_CAUTION_KEYS.length - 4);
  });

  it('a caution nobody knows is a mistake of ours and throws', () => {
    expect(() => pourCautions(['drill', 'shark'])).toThrow(/got shark/);
    expect(() => pourCautions(['toString'])).toThrow(/got toString/);
  });
});
