import { describe, expect, it } from 'vitest';
import { SAMPLE_SHOP } from '../../src/job/sampleShop';
import { call, document, type Desk } from '../support/cliCall';
import { box } from '../support/shapes';
import { stlBytes } from '../support/writeMesh';

const badShop = {
  ...SAMPLE_SHOP,
  silicones: [{ ...SAMPLE_SHOP.silicones[0]!, potLifeMin: 0 }],
};
const desk: Desk = {
  files: {
    'brick.stl': stlBytes(box([100, 80, 60])),
    'shop.json': JSON.stringify(SAMPLE_SHOP),
    'bad-shop.json': JSON.stringify(badShop),
  },
};
const BRICK = ['mold', 'brick.stl', '--file-unit', 'mm', '--voxel', '4 mm'];
const SKIN = [...BRICK, '--type', 'skin'];
const BLOCK = [...BRICK, '--type', 'block'];
const CARD = ['--shop', 'shop.json', '--silicone', 'Sample Silicone 25'];

describe('a call that is wrong answers in words and with exit 2', () => {
  it.each<[what: string, args: string[], code: string, words: RegExp]>([
    [
      'a skin thicker than the wall',
      [...BLOCK, '--skin', '20', '--wall', '12'],
      'SKIN_OVER_WALL',
      /20 mm is thicker than the wall of 12 mm/,
    ],
    [
      'a parting plane over the sculpt',
      [...BLOCK, '--parts', '2', '--parting', '70'],
      'PARTING_OUTSIDE',
      /70 mm.*60 mm tall/,
    ],
    ['a pot life of 0', [...SKIN, '--pot-life', '0 min'], 'BAD_CALL', /--pot-life "0 min" is not above 0/],
    [
      'a pot life shorter than mixing',
      [...SKIN, '--pot-life', '3 min'],
      'POT_LIFE_TOO_SHORT',
      /3 min, and mixing takes 4 min/,
    ],
    ['a pot life that is no time', [...SKIN, '--pot-life', 'long'], 'BAD_CALL', /--pot-life "long"/],
    ['a kit of 0 kg', [...SKIN, '--kit', '0 kg=10'], 'BAD_CALL', /--kit "0 kg".*of 0 cannot be used/],
    ['a kit that is nonsense', [...SKIN, '--kit', 'big=cheap'], 'BAD_CALL', /--kit "big"/],
    ['a kit with a price below 0', [...SKIN, '--kit', '5 kg=-3'], 'BAD_CALL', /price is not a number/],
    ['a texture of 0', [...SKIN, '--texture', '0'], 'BAD_CALL', /--texture "0" is not above 0/],
    ['a kit with two prices', [...SKIN, '--kit', '5 kg=10=20'], 'BAD_CALL', /is not one kit/],
    [
      'a kit with a price in words',
      [...SKIN, '--kit', '5 kg=cheap'],
      'BAD_CALL',
      /price is not a number of 0 or more/,
    ],
    ['a kit too large to be one', [...SKIN, '--kit', '5000 kg=9'], 'INPUT_OUT_OF_BOUNDS', /kit/i],
    [
      'a card the shop does not have',
      [...SKIN, '--shop', 'shop.json', '--silicone', 'Sample Silicone 30'],
      'CARD_UNKNOWN',
      /no card called "Sample Silicone 30"/,
    ],
    ['a card without a shop', [...SKIN, '--silicone', 'Sample Silicone 25'], 'BAD_CALL', /needs a shop/],
    [
      'a wall for a skin',
      [...SKIN, '--wall', '12'],
      'MOLD_PARAMETER_FOREIGN',
      /"Brushed skin" has no such choice \(--wall\)/,
    ],
    ['a skin for a block', [...BLOCK, '--skin', '6'], 'MOLD_PARAMETER_FOREIGN', /\(--skin\)/],
    [
      'a jacket material for a block',
      [...BLOCK, '--jacket-material', 'plaster'],
      'BAD_CALL',
      /--jacket-material is about a jacket/,
    ],
    ['walls of a box for a skin', [...SKIN, '--box-board', '18'], 'BAD_CALL', /--box-board is about a box/],
    [
      'water for a jacket of putty',
      [...SKIN, '--jacket-material', 'putty', '--jacket-water', '0.6'],
      'BAD_CALL',
      /about plaster/,
    ],
    [
      'a pull that is no direction',
      [...SKIN, '--pull', 'sideways'],
      'MOLD_PARAMETER',
      /"sideways" does not fit/,
    ],
    ['a skin of 100 mm', [...SKIN, '--skin', '100 mm'], 'MOLD_PARAMETER', /Skin thickness: 100/],
    ['a draft of 40 degrees', [...SKIN, '--draft', '40 degrees'], 'MOLD_PARAMETER', /Draft/],
    [
      'half a riser',
      [...BRICK, '--type', 'blanket', '--risers', '1.5'],
      'MOLD_PARAMETER',
      /Risers.*1.5 does not fit/,
    ],
    [
      'a skin thinner than its first coat',
      [...SKIN, '--skin', '1', '--first-coat', '2'],
      'COATS_DO_NOT_FIT',
      /thinner than its first coat/,
    ],
    [
      'a ratio with the catalyst first',
      [...SKIN, '--silicone-ratio', '1:10'],
      'BAD_CALL',
      /more catalyst than base/,
    ],
    [
      "the card's ratio turned round",
      [...SKIN, ...CARD, '--silicone-ratio', '1:10'],
      'BAD_CALL',
      /more catalyst than base/,
    ],
    ['a ratio that is none', [...SKIN, '--silicone-ratio', 'ten'], 'BAD_CALL', /--silicone-ratio "ten"/],
    ['a shrink of 30 %', [...SKIN, '--shrink', '0.3'], 'INPUT_OUT_OF_BOUNDS', /Shrink of the mold is 0.3/],
    ['one part of the stock alone', [...SKIN, '--stock-base', '5'], 'BAD_CALL', /One part on the shelf/],
    [
      'a day that is none',
      [...SKIN, '--today', '2026-02-30'],
      'BAD_CALL',
      /--today "2026-02-30" is not a day/,
    ],
    [
      'a day of opening that is none',
      [...SKIN, '--opened', 'last week'],
      'BAD_CALL',
      /--opened "last week" is not a day/,
    ],
    ['a coverage without coats', [...SKIN, '--paint-coverage', '8 m2'], 'BAD_CALL', /belong together/],
    [
      'half a coat',
      [...SKIN, '--paint-coverage', '8', '--paint-coats', '1.5'],
      'BAD_CALL',
      /not a number of coats/,
    ],
    [
      'a mass for a coverage',
      [...SKIN, '--paint-coverage', '8 kg', '--paint-coats', '1'],
      'BAD_CALL',
      /--paint-coverage "8 kg"/,
    ],
    ['a waste of more than all', [...SKIN, '--waste', '200 %'], 'BAD_CALL', /--waste "200 %"/],
    [
      'a length that can be read in two ways',
      [...SKIN, '--flange', '1,250'],
      'BAD_CALL',
      /--flange "1,250".* or /,
    ],
    ['no threads', [...SKIN, '--workers', '0'], 'BAD_CALL', /--workers "0"/],
  ])('%s', (_, args, code, words) => {
    const { error } = document(args, desk);
    expect(error!.code).toBe(code);
    expect(error!.text).toMatch(words);
    const called = call(args, desk);
    expect(called).toMatchObject({ exit: 2, out: '' });
    expect(called.notes).toContain(error!.text);
    expect(called.notes).toContain(error!.hint);
    expect(called.notes).not.toMatch(/NaN|undefined/);
  });

  it.each([
    ['--type', 'shell'],
    ['--parts', '3'],
    ['--cure', 'slow'],
    ['--jacket-material', 'wood'],
    ['--sculpt-surface', 'cheese'],
    ['--gloves', 'woolen'],
    ['--offset', '3'],
    ['--surface', 'out.stl'],
  ])('%s %s is no choice of this command', (option, value) => {
    const called = call([...BRICK, option, value], desk);
    expect(called.exit).toBe(2);
    expect(called.notes).toContain(option);
  });
});

describe('the other exits', () => {
  it('3 for a scan that is not there, and for a shop with a wrong silicone card', () => {
    expect(call(['mold', 'nothing.stl', '--file-unit', 'mm'], desk).exit).toBe(3);
    const called = call([...SKIN, '--shop', 'bad-shop.json'], desk);
    expect(called.exit).toBe(3);
    expect(called.notes).toMatch(/potLifeMin/);
  });

  it('4 for a scan without a volume', () => {
    const open = stlBytes({
      positions: new Float64Array([0, 0, 0, 9, 0, 0, 0, 9, 0]),
      triangles: new Int32Array([0, 1, 2]),
    });
    expect(call(['mold', 'sheet.stl', '--file-unit', 'mm'], { files: { 'sheet.stl': open } }).exit).toBe(4);
  });

  it('5 for a scan whose unit nobody said', () => {
    expect(call(['mold', 'quay-troll-scan.stl', '--up', '+y'], desk).exit).toBe(5);
  });

  it('progress is drawn on stderr of a terminal only, and wiped', () => {
    expect(call(SKIN, desk).notes).toBe('');
    const { notes } = call(SKIN, { ...desk, isTerminal: true });
    expect(notes).toMatch(/measuring \d+ %/);
    expect(notes.endsWith('\r\u001b[K')).toBe(true);
    expect(call([...SKIN, '--quiet'], { ...desk, isTerminal: true }).notes).toBe('');
  });

  it('--help names every parameter of every type once, with what is assumed', () => {
    const { out, exit } = call(['mold', '--help']);
    expect(exit).toBe(0);
    for (const flag of ['--wall <length>', '--skin <length>', '--pull <direction>', '--risers <count>'])
      expect(out.split(flag)).toHaveLength(2);
    expect(out.replace(/\s+/g, ' ')).toContain(
      'skin thickness (skin; assumed 6 mm) or blanket thickness (blanket; assumed 10 mm)',
    );
  });
});
