import { describe, expect, it } from 'vitest';
import { SAMPLE_SHOP } from '../../src/job/sampleShop';
import { call, document, type Desk } from '../support/cliCall';
import { mushroomOn } from '../support/moldShapes';
import { stlBytes } from '../support/writeMesh';

const hasty = { ...SAMPLE_SHOP, foams: [{ ...SAMPLE_SHOP.foams[0]!, creamS: 20 }] };
/** Loose triangles whose corners are all their own, none near another. */
const SOUP = stlBytes({
  positions: new Float64Array([0, 0, 0, 9, 0, 0, 0, 9, 0, 50, 0, 40, 59, 0, 40, 50, 0, 49]),
  triangles: new Int32Array([0, 1, 2, 3, 4, 5]),
});
const desk: Desk = {
  files: {
    'mushroom.stl': stlBytes(mushroomOn(64)),
    'soup.stl': SOUP,
    'shop.json': JSON.stringify(SAMPLE_SHOP),
    'hasty.json': JSON.stringify(hasty),
  },
};
const MUSHROOM = ['opening', 'mushroom.stl', '--file-unit', 'mm', '--accuracy', 'fast'];
const FOAM = ['--shop', 'shop.json', '--foam', 'Sample Foam Light'];

describe('a call that is wrong answers in words and with exit 2, before the scan is measured', () => {
  it.each<[what: string, args: string[], words: RegExp]>([
    ['an opening of one number', ['--opening', '5'], /--opening "5" is not a place: three numbers/],
    ['an opening of two numbers', ['--opening', '5,6'], /is not a place/],
    ['an opening in words', ['--opening', 'x,y,z'], /is not a place/],
    ['an opening with decimal commas', ['--opening', '12,5,0,7,3,0'], /is not a place/],
    ['an opening with a number left out', ['--opening', '5,,6'], /is not a place/],
    ['an opening with an exponent', ['--opening', '5,1e2,6'], /is not a place/],
    ['an opening a kilometer away', ['--opening', '1000000,0,0'], /more than 100 m away/],
    ['a vent of four numbers', ['--vent', '0,0,50', '--vent', '1,2,3,4'], /--vent "1,2,3,4" is not a place/],
    ['no way up', ['--pour-up', '0,0,0'], /--pour-up "0,0,0" is not a direction/],
    ['a way up in words', ['--pour-up', 'up'], /"up" is not a direction/],
    ['a width that may be two', ['--opening-diameter', '1,250'], /1\.25 mm" or "1250 mm"/],
    ['a width of 0', ['--opening-diameter', '0'], /of 0 cannot be used/],
    ['a width beyond sense', ['--opening-diameter', '2 m'], /outside 1 to 300 mm/],
    ['a vent thinner than a hair', ['--vent-diameter', '0.01'], /outside 0\.1 to 100 mm/],
    ['a share that may be a percentage', ['--opening-share', '5'], /percentage or as a plain number/],
    ['a viscosity without its unit', ['--mix-viscosity', '1000'], /unit is missing.*"1000 mPa s"/],
    [
      'a viscosity that is a pressure',
      ['--mix-viscosity', '1 kPa'],
      /belongs to a pressure, and a viscosity/,
    ],
    ['a viscosity beyond sense', ['--mix-viscosity', '5000 Pa s'], /outside 0\.001 to 1000 Pa s/],
    ['a time that is none', ['--pour-within', 'soon'], /--pour-within "soon"/],
    ['a stretch that is no percentage', ['--elongation', '3'], /outside 20 to 1500 %.*"300 %"/],
    ['a squash of all', ['--squash', '90 %'], /outside 0 to 0\.6/],
    ['a foam without its shop', ['--foam', 'Sample Foam Light'], /needs a shop/],
    ['a foam the shop does not have', ['--shop', 'shop.json', '--foam', 'Other'], /"Other"/],
    ['a cream time that leaves nothing', ['--cream', '25 s'], /25 s/],
    [
      'a room like an oven, by its own name',
      ['--cream', '35 s', '--room', '200 F'],
      /--room "200 F" is outside -10 to 60 °C/,
    ],
    ['a card over the scan', ['--card', './mushroom.stl'], /is a file that is read, or the answer/],
    ['a card over the shop', ['--shop', 'shop.json', '--card', 'shop.json'], /is a file that is read/],
    ['a card over the answer', ['-o', 'page.html', '--card', 'page.html'], /it would be lost/],
  ])('%s', (_, args, words) => {
    const called = call([...MUSHROOM, ...args], desk);
    expect([called.exit, called.out]).toEqual([2, '']);
    expect(called.notes.replace(/\s+/g, ' ')).toMatch(words);
    expect(called.files.size).toBe(0);
  });

  it('card and JSON cannot both go to stdout', () => {
    const called = call([...MUSHROOM, '--card', '-', '--json'], desk);
    expect(called.exit).toBe(2);
    expect(JSON.parse(called.out)).toMatchObject({ error: { code: 'BAD_CALL' } });
  });

  it('a pack that is none is refused by its name', () => {
    const called = call([...MUSHROOM, ...FOAM, '--pack', '9'], desk);
    expect(called.exit).toBe(2);
    expect(called.notes).toMatch(/pack/i);
  });
});

describe('what is odd and can still be answered is a finding', () => {
  const found = (args: string[]): [string, string][] =>
    document([...MUSHROOM, ...args], desk).findings.map(({ code, status }) => [code, status]);

  it('a vent off the surface, with how far it was moved: a look, and a stop where that is another place', () => {
    const vent = (place: string): [status: string, text: string, at: unknown] | undefined => {
      const { findings } = document([...MUSHROOM, '--vent', place], desk);
      const one = findings.find(({ code }) => code === 'VENT_OFF_SURFACE');
      return one === undefined ? undefined : [one.status, /moved by [\d.]+ mm/.exec(one.text)![0], one.at_mm];
    };
    // The top of the cap is at 50 mm.
    const top = [0, 0, 50];
    expect(vent('0,0,150')).toEqual(['stop', 'moved by 100 mm', top]);
    expect(vent('0,0,55')).toEqual(['look', 'moved by 5 mm', top]);
    expect(vent('0,0,51')).toBeUndefined();
  });

  it('a card whose cream time leaves no time to pour: a Stop, and the band is not known', () => {
    const args = ['--shop', 'hasty.json', '--foam', 'Sample Foam Light', '--mix-viscosity', '1 Pa s'];
    expect(found(args)).toContainEqual(['POUR_WINDOW_NONE', 'stop']);
    expect(found(args)).toContainEqual(['OPENING_SIZE', 'unknown']);
    expect(found([...args, '--pour-within', '30 s']).map(([code]) => code)).not.toContain('POUR_WINDOW_NONE');
  });

  it('ingredients warmer than the card was timed at leave less time', () => {
    const within = (args: string[]): number =>
      document([...MUSHROOM, ...FOAM, ...args], desk).assumptions.find(({ name }) => name === 'pour_within')!
        .value as number;
    expect(within([])).toBe(10);
    expect(within(['--times-at', '20 C', '--ingredients', '24 C'])).toBeLessThan(10);
  });
});

describe('scans without an answer', () => {
  it.each<[what: string, exit: number, args: string[]]>([
    ['loose triangles that enclose nothing', 4, ['opening', 'soup.stl', '--file-unit', 'mm']],
    ['a file that is not there', 3, ['opening', 'nothing.stl', '--file-unit', 'mm']],
    ['a unit that nobody said', 5, ['opening', 'quay-troll-scan.stl', '--up', '+y']],
  ])('%s', (_, exit, args) => {
    const called = call(args, desk);
    expect([called.exit, called.out]).toEqual([exit, '']);
    expect(called.notes).toContain(args[1]);
  });
});

describe('the place card from the command line', () => {
  it('is written beside the answer, and says where', () => {
    const called = call([...MUSHROOM, '--card', 'card.html', '--title', 'Mushroom', '--job', 'M-1'], desk);
    expect(called.exit).toBe(0);
    expect(called.out).toMatch(/Opening +\d+ mm/);
    expect(called.notes).toContain('card.html');
    const page = called.files.get('card.html') as string;
    expect(page).toMatch(/^<!doctype html>/);
    for (const text of ['Mushroom', 'M-1', 'Places to mark on the sculpt']) expect(page).toContain(text);
  });

  it('goes to stdout alone for "-"', () => {
    const called = call([...MUSHROOM, '--card', '-'], desk);
    expect(called.exit).toBe(0);
    expect(called.out).toMatch(/^<!doctype html>.*<\/html>\n$/s);
    expect(called.files.size).toBe(0);
    const both = call([...MUSHROOM, '--card', '-', '-o', 'answer.txt'], desk);
    expect(both.out).toBe(called.out);
    expect(both.files.get('answer.txt')).toMatch(/Opening +\d+ mm/);
  });

  it('that cannot be written is told, with exit 2', () => {
    const called = call([...MUSHROOM, '--card', 'card.html'], { ...desk, cannotWrite: 'disk full' });
    expect(called.exit).toBe(2);
    expect(called.notes).toMatch(/card\.html.*disk full/s);
  });
});
