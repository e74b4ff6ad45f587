import { describe, expect, it } from 'vitest';
import { POUR_CALL_OPTIONS } from '../../src/cli/pourCall';
import { call, document } from '../support/cliCall';
import { PLAIN, SHOP_DESK, TROLL, list, statusOf } from '../support/pourCalls';

describe('the checks of the pour, each tripped by the call', () => {
  const AREA = ['--projected-area', '300 cm2', '--strap-tension', '200 N'];
  it.each<[string, string, string[]]>([
    ['CUP_TEST_TODAY', 'fine', []],
    [
      'FOAM_AGE',
      'stop',
      ['--foam-opened', '2025-01-05', '--today', '2026-11-29', '--free-rise-from', 'data-sheet'],
    ],
    ['FOAM_AGE', 'look', ['--foam-opened', '2026-04-05', '--today', '2026-11-29']],
    ['FOAM_AGE', 'fine', ['--foam-opened', 'not yet']],
    ['AIR_PRESSURE', 'fine', []],
    ['PIGMENT', 'look', ['--pigment', 'paste in polyol or plasticizer', '--pigment-share', '3 %']],
    ['SCALE_STEP', 'stop', ['--scale-step', '30 g', '--volume', '2000']],
    ['PACK_RANGE', 'stop', ['--pack', '2.2']],
    ['SHORT_FILL_RISK', 'stop', ['--pack', '1.0']],
    ['CUP_ROOM', 'fine', ['--cup-volume', '3 L']],
    ['CUP_ROOM', 'look', ['--cup-volume', '1.3 L', '--cup-fill', '50 %']],
    ['MIXING_METHOD', 'look', ['--mixing', 'hand']],
    ['MIXING_METHOD', 'fine', ['--mixing', 'drill']],
    ['POUR_WINDOW', 'fine', ['--cream', '90']],
    ['MOLD_TEMPERATURE', 'look', ['--mold-temp', '15']],
    ['MOLD_TEMPERATURE', 'stop', ['--mold-temp', '70']],
    ['MOLD_DAMP', 'stop', ['--mold-water', 'not confirmed dry']],
    ['MOLD_DAMP', 'fine', ['--mold-water', 'confirmed dry']],
    ['MOLD_SEALED', 'stop', ['--vent-count', '0', '--opening-open', 'no']],
    ['MOLD_SEALED', 'look', ['--vent-count', '0', '--opening-open', 'yes']],
    ['MOLD_SEALED', 'fine', ['--vent-count', '4', '--vent-width', '2 mm']],
    ['JACKET_PANELS', 'fine', ['--panel-span', '0']],
    ['JACKET_PANELS', 'stop', ['--panel-span', '300 mm', '--panel', '12 mm']],
    ['STRAP_LOAD', 'stop', [...AREA, '--straps', '1', '--strap-working', '300 N']],
    ['PLUG_FORCE', 'fine', ['--plug-area', '0']],
    ['PLUG_FORCE', 'stop', ['--plug-area', '20 cm2', '--plug-held', 'no']],
    ['PLUG_FORCE', 'look', ['--plug-area', '20 cm2', '--plug-held', 'yes', '--plug-vented', 'no']],
    ['EXOTHERM', 'stop', ['--nco', '30 %', '--water', '4 %', '--ingredients', '25']],
    ['OPENING_TIME', 'look', ['--open', '5 min']],
    ['FIRE_RATING', 'look', ['--fire-rated', 'no']],
  ])('%s: %s', (code, status, more) => {
    // What is typed last counts.
    const args = [...PLAIN, ...more];
    const found = document(['batch', ...args], SHOP_DESK).findings.find((one) => one.code === code);
    expect(found?.status).toBe(status);
    if (status === 'stop') {
      expect(call(['batch', ...args, '--strict', '--json'], SHOP_DESK).exit).toBe(6);
      expect(call(['batch', ...args, '--json'], SHOP_DESK).exit).toBe(0);
    }
  });

  it('with a card the order of the ratio is known; what was not read back is a look', () => {
    const light = ['--volume', '4500', '--shop', 'shop.json', '--foam', 'Sample Foam Light'];
    expect(statusOf('RATIO_ORDER', ['--read-back', 'yes'], light)).toBe('fine');
    expect(statusOf('RATIO_ORDER', ['--read-back', 'no'], light)).toBe('look');
    expect(statusOf('RATIO_ORDER', [], light)).toBe('unknown');
  });

  it('what is not checked names the options that tell it, on one line', () => {
    const { out } = call(['batch', ...PLAIN]);
    const line = out.split('\n').find((one) => one.includes('To have them checked'))!;
    for (const option of ['--mold-water', '--vent-count', '--pigment', '--nco', '--fire-rated'])
      expect(line).toContain(option);
  });

  it('a cold mold, a damp one, a drill and a plug have cautions where they apply', () => {
    const keys = (more: string[]) => list<{ key: string }>('cautions', more).map(({ key }) => key);
    const open = ['damp-mold', 'cold-mold', 'drill', 'plug-force'];
    expect(keys([])).toEqual(expect.arrayContaining(open));
    const told = ['--mold-water', 'none', '--mold-temp', '31', '--mixing', 'hand', '--plug-area', '0'];
    for (const key of open) expect(keys(told)).not.toContain(key);
    for (const key of ['first', 'part-a', 'sensitized', 'opening', 'leftover', 'fire', 'venue'])
      expect(keys(told)).toContain(key);
  });
});

describe('what is refused, with its reason', () => {
  it.each<[string, string[]]>([
    ['a day that is none', ['--today', '2026-02-30']],
    ['half a vent', ['--vent-count', '1.5']],
    ['a negative vent', ['--vent-width', '-2 mm']],
    ['a length for a temperature', ['--room', '20 mm']],
    ['a mass for an area', ['--projected-area', '300 g']],
    ['a cup of nothing', ['--cup-volume', '0']],
    ['a cup filled to the brim', ['--cup-volume', '2 L', '--cup-fill', '90 %']],
    ['half a person', ['--mixers', '1.5']],
    ['a time with an area', ['--cream', '40 cm2']],
    ['an NCO of 80 %', ['--nco', '80 %', '--water', '1 %', '--room', '20']],
    ['a boiling room', ['--ingredients', '95 C', '--cream', '60', '--times-at', '20']],
    ['no air at all', ['--pressure', '3 kPa']],
    ['a bench in orbit', ['--altitude', '30 km']],
    ['a strap of zero', ['--projected-area', '300 cm2', '--strap-tension', '0 N']],
    ['air colder than the aim', ['--wall', '8', '--warm-air', '30', '--warm-to', '40', '--room', '20']],
    ['an unknown kind of water', ['--mold-water', 'some']],
    ['an axis that is none', ['--opens', 'up']],
  ])('%s: exit 2', (_, more) => {
    const called = call(['batch', ...PLAIN, ...more, '--json'], SHOP_DESK);
    expect(called.exit).toBe(2);
    expect(called.out).not.toMatch(/NaN|undefined|null/);
  });
});

it('everything told at once: no null, no NaN, the same bytes twice, and each key has its unit', () => {
  const all = [
    ...['--room', '20 C', '--ingredients', '21 C', '--mold-temp', '33 C', '--times-at', '23 C'],
    ...['--altitude', '500 m', '--nco', '20 %', '--water', '1 %', '--cup-volume', '1 L', '--mixers', '2'],
    ...['--opens', '+y', '--plug-area', '12 cm2', '--wall', '10', '--warm-air', '50', '--warm-to', '36'],
    ...['--jacket', '12', '--color', 'umber=1% of B', '--silicone', 'Sample Silicone 25'],
    ...['--price-a', '9', '--price-b', '11', '--past', '1.3=filled', '--core-offset', '25 mm'],
    ...['--core-mass', '300 g', '--core-neck', '4 cm2', '--armature', '20 cm3', '--skin-depth', '0.8 mm'],
    ...['--voxel', '4 mm', '--workers', '1'],
  ];
  const [one, two] = [1, 2].map(() => call(['batch', ...TROLL, ...all, '--json'], SHOP_DESK));
  expect(one!.exit).toBe(0);
  expect(one!.out).toBe(two!.out);
  expect(one!.out).not.toMatch(/null|NaN|Infinity|undefined/);
  expect(call(['batch', ...TROLL, ...all], SHOP_DESK).out).not.toMatch(/NaN|Infinity|undefined|null/);
});

it('every option of a pour has an about, and no two are called alike', () => {
  const names = POUR_CALL_OPTIONS.map(({ flags }) => flags.split(' ')[0]!);
  expect(new Set(names).size).toBe(names.length);
  for (const { about, flags } of POUR_CALL_OPTIONS) expect(about.length, flags).toBeGreaterThan(8);
});
