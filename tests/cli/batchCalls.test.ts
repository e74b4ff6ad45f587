import { describe, expect, it } from 'vitest';
import { SAMPLE_SHOP } from '../../src/job/sampleShop';
import { expectClose } from '../support/close';
import { call, document, type Desk } from '../support/cliCall';

const BASE = ['batch', '--volume', '5 L', '--free-rise', '96', '--ratio', '52:100'];
const codes = (args: readonly string[], desk: Desk = {}): string[] =>
  document(args, desk).findings.map(({ code }) => code);

describe('options of a scan beside a volume', () => {
  it.each([
    ['--tall', '290 mm'],
    ['--wide', '290 mm'],
    ['--deep', '290 mm'],
    ['--span', '0,0,0:0,0,1'],
    ['--is', '290 mm'],
    ['--up', '+y'],
    ['--cut', 'z=1mm'],
    ['--file-unit', 'mm'],
    ['--format', 'stl'],
  ])('%s is refused by its name: exit 2', (option, value) => {
    const { error } = document([...BASE, option, value]);
    expect(error).toMatchObject({ code: 'BAD_CALL' });
    expect(error!.text).toContain(`${option} is about a scan`);
    expect(call([...BASE, option, value]).exit).toBe(2);
  });
});

describe('--short-fill', () => {
  it.each(['1 %', '10 %', '1 in 100'])('"%s" does not find fault with its own answer', (chance) => {
    const known = [...BASE, '--min-fill', '105', '--short-fill', chance];
    const found = document(known).findings.find(({ code }) => code === 'SHORT_FILL_LIKELY');
    expect(found?.status).toBe(chance === '10 %' ? 'look' : undefined);
  });

  it('"1 in 100" is 1 %', () => {
    const pack = (chance: string): unknown =>
      document([...BASE, '--min-fill', '105', '--short-fill', chance]).result.pack_factor;
    expect(pack('1 in 100')).toBe(pack('1 %'));
  });

  it('an unknown minimum fill is a Not checked, and no chance is met below pack 1.10', () => {
    const tested = [
      'batch',
      '--volume',
      '5 L',
      '--free-rise',
      '96',
      '--free-rise-from',
      'cup-test',
      '--ratio',
      '1:2',
    ];
    const { findings, result } = document([...tested, '--short-fill', '20 %']);
    expect(findings.find(({ code }) => code === 'MIN_FILL_UNKNOWN')).toMatchObject({ status: 'unknown' });
    expect(result.pack_factor).toBe(1.1);
    expect(codes([...BASE, '--min-fill', '105'])).not.toContain('MIN_FILL_UNKNOWN');
  });
});

describe('what was assumed says where it comes from', () => {
  it('in JSON under "basis", in words in brackets', () => {
    const residue = document(BASE).assumptions.find(({ name }) => name === 'residue_g');
    expect(residue).toEqual({
      name: 'residue_g',
      value: 30,
      unit: 'g',
      from: 'assumed',
      basis: 'common practice, no source, for a batch of about 1 kg',
    });
    expect(call(BASE).out).toContain('residue: 30 g (common practice, no source, for a batch of about 1 kg)');
  });
});

describe('a card of the shop', () => {
  const shopOf = (change: object): Desk => ({
    files: { 's.json': JSON.stringify({ ...SAMPLE_SHOP, ...change }) },
  });
  const [light] = SAMPLE_SHOP.foams;
  const tested = shopOf({ foams: [{ ...light, freeRiseFrom: 'cup-test' }] });
  const CALL = ['batch', '--volume', '5 L', '--foam', 'Sample Foam Light', '--shop', 's.json'];

  it('its cup test is an old one, unless the call says it is of today', () => {
    expect(codes(CALL, tested)).toContain('NO_CUP_TEST');
    const doubt = (more: string[]): unknown =>
      document([...CALL, ...more], tested).assumptions.find(({ name }) => name === 'u_free_rise')?.value;
    expect(doubt([])).toBe(0.08);
    expect(codes([...CALL, '--free-rise-from', 'cup-test'], tested)).not.toContain('NO_CUP_TEST');
    expect(doubt(['--free-rise-from', 'cup-test'])).toBe(0.015);
  });

  it('one name on two cards is an error of the file, as nobody could say which is meant', () => {
    const { error } = document(CALL, shopOf({ foams: [light, light] }));
    expect(error).toMatchObject({ code: 'SHOP_FILE' });
    expect(error!.text).toContain('two foam cards are called "Sample Foam Light"');
  });

  it('more than its scale takes is a Look; a scale without a limit has none', () => {
    expect(codes(CALL, shopOf({ scale: { stepG: 1, maxG: 500 } }))).toContain('SCALE_OVERLOADED');
    expect(codes(CALL, shopOf({ scale: { stepG: 1, maxG: 5000 } }))).not.toContain('SCALE_OVERLOADED');
    expect(codes(CALL, shopOf({ scale: { stepG: 1 } }))).not.toContain('SCALE_OVERLOADED');
    expect(document(CALL, shopOf({ scale: { stepG: 1, maxG: 'much' } })).error!.code).toBe('SHOP_FILE');
  });
});

describe('numbers that are asked about', () => {
  const hint = (args: readonly string[]): string => {
    const { error } = document(args);
    expect(error!.code).toBe('BAD_CALL');
    return `${error!.text} ${error!.hint}`;
  };

  it('an overpack of 1.1 may be 110 %', () => {
    expect(hint([...BASE, '--min-fill', '105', '--overpack', '1.1'])).toContain(
      'It can be "110 %" or "101.1 %"',
    );
  });

  it('1000 m3: above what a shop pours, and not offered again as it stands', () => {
    const said = hint(['batch', '--volume', '1000 m3', ...BASE.slice(3)]);
    expect(said).toContain('1000 m3 is hard to believe: a volume above 10\u202f000\u202f000 cm³.');
    expect(said).not.toContain('It can be');
  });
});

describe('--show', () => {
  const scan = ['--up', '+y', '--tall', '290.85 mm'];
  const batch = ['batch', '--scan', 'quay-troll-scan.stl', ...scan, ...BASE.slice(3), '--min-fill', '80'];
  /** The lines whose words are of this part of the program; masses are in grams, as on the scale. */
  const ours = (args: readonly string[], show: string): string =>
    call([...args, '--show', show])
      .out.split('\n')
      .filter((line) =>
        /^ {2}(Cavity|Short fill|Volume|Size|Assumed|Not checked) |packed|minimum fill/.test(line),
      )
      .join('\n');

  it.each([['batch', batch] as const, ['size', ['size', 'quay-troll-scan.stl', ...scan]] as const])(
    '%s: one system at a time',
    (_, args) => {
      const [metric, us] = [ours(args, 'metric'), ours(args, 'us')];
      expect(metric).toMatch(/\d cm³/);
      expect(metric).not.toMatch(/\d (in(?! \d)|sq in|fl oz|gal|lb\/ft³)\b/);
      expect(us).toMatch(/\d gal|\d fl oz/);
      expect(us).not.toMatch(/\d (mm|cm²|cm³|kg\/m³)/);
    },
  );

  it('the range is the same in both, to the digits shown (1 gal = 3785.411784 cm3, NIST SP 811)', () => {
    const ends = (show: string): number[] => {
      const line = ours(['size', 'quay-troll-scan.stl', ...scan], show)
        .split('\n')
        .at(-1)!;
      const [, low, high] = /, ([\d.\u202f]+) to ([\d.\u202f]+) (?:cm³|gal|fl oz) 19 times/.exec(line)!;
      return [low, high].map((text) => Number(text!.replaceAll('\u202f', '')));
    };
    const perUs = ours(['size', 'quay-troll-scan.stl', ...scan], 'us').includes(' gal ')
      ? 3785.411784
      : 29.5735295625;
    const [metric, us] = [ends('metric'), ends('us')];
    metric.forEach((cm3, index) => expectClose((us[index] ?? NaN) * perUs, cm3, 1e-3));
  });
});
