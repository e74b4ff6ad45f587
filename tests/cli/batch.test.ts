import { describe, expect, it } from 'vitest';
import { SAMPLE_SHOP } from '../../src/job/sampleShop';
import { expectClose } from '../support/close';
import { call, document, documents } from '../support/cliCall';
import { expectPrinted } from '../support/printed';

/** The worked example of the core model, done by hand: 5.2 L and a riser of 0.3 L, 8 pcf, pack 1.30, A:B 52:100 by mass. */
const T1 = [
  'batch',
  '--volume',
  '5200',
  '--riser',
  '300',
  '--free-rise',
  '128.147707',
  '--free-rise-from',
  'cup-test',
  '--ratio',
  '52:100',
  '--pack',
  '1.3',
  '--vents',
  '10',
  '--gas-loss',
  '1 %',
  '--residue',
  '30',
];
const desk = { files: { 'shop.json': JSON.stringify(SAMPLE_SHOP) } };
const SHOP = ['--shop', 'shop.json'];

describe('batch --json', () => {
  it('the worked example on a scale of 0.01 g: 965.61 g in all, 330.34 of A, 635.27 of B', () => {
    const { result, schema, findings } = document([...T1, '--scale-step', '0.01']);
    expect(schema).toBe('risewright/batch@1');
    expectPrinted((result.part_a_g as number) + (result.part_b_g as number), '965.61');
    expectPrinted(result.part_a_g as number, '330.34');
    expectPrinted(result.part_b_g as number, '635.27');
    expect(findings.map((f) => f.code)).not.toContain('NO_CUP_TEST');
  });

  it('keys and their order are those of the contract, for what is built', () => {
    const one = document(T1);
    expect(Object.keys(one)).toEqual([
      'schema',
      'inputs',
      'assumptions',
      'findings',
      'result',
      'range',
      'because',
    ]);
    expect(
      Object.keys(one.result).filter((k) =>
        [
          'cavity_cm3',
          'mixed_g',
          'part_a_g',
          'part_b_g',
          'in_mold_g',
          'pack_factor',
          'molded_density_kg_m3',
          'short_fill_chance',
          'uncertainty',
        ].includes(k),
      ),
    ).toEqual([
      'cavity_cm3',
      'mixed_g',
      'part_a_g',
      'part_b_g',
      'in_mold_g',
      'pack_factor',
      'molded_density_kg_m3',
      'short_fill_chance',
      'uncertainty',
    ]);
    expect(Object.keys(one.range)).toEqual(['cavity_cm3', 'mixed_g']);
    const shares = (one.result.uncertainty as { input: string; share: number }[]).map((u) => u.share);
    expectClose(
      shares.reduce((a, b) => a + b, 0),
      1,
      1e-9,
      'shares of the doubt add up to all of it',
    );
  });

  it('no null, no NaN, and the same bytes twice', () => {
    const [one, two] = [call([...T1, '--json']), call([...T1, '--json'])];
    expect(one.out).toBe(two.out);
    expect(one.out).not.toMatch(/null|NaN|Infinity|undefined/);
  });

  it('quantities with units say the same: 5.2 L, 8 pcf (1 lb/ft3 = 0.45359237 / 0.3048^3 kg/m3, NIST SP 811)', () => {
    const typed = [
      'batch',
      '--volume',
      '5.2 L',
      '--riser',
      '0.3 L',
      '--free-rise',
      '8 pcf',
      '--free-rise-from',
      'cup-test',
      '--ratio',
      '52:100',
      '--pack',
      '1.3',
      '--vents',
      '10 g',
      '--gas-loss',
      '1 %',
      '--residue',
      '30 g',
      '--scale-step',
      '0.01 g',
    ];
    expectPrinted(document(typed).result.part_a_g as number, '330.34');
  });

  it('the pack nobody gave is 1.30, and said to be assumed', () => {
    const { assumptions, result } = document([
      'batch',
      '--volume',
      '5200',
      '--free-rise',
      '96',
      '--ratio',
      '52:100',
    ]);
    expect(result.pack_factor).toBe(1.3);
    expect(assumptions.find((a) => a.name === 'pack_factor')).toMatchObject({ value: 1.3, from: 'assumed' });
  });

  it('a ratio is read back in a sentence with grams and container', () => {
    const { because, result } = document(T1);
    expect(because[0]).toContain('A:B 52:100');
    expect(because[0]).toContain(`${result.part_a_g as number} g of A`);
    expect(because[0]).toContain(`${result.part_b_g as number} g of B`);
  });
});

describe('by volume', () => {
  const byVolume = [
    'batch',
    '--volume',
    '5200',
    '--free-rise',
    '96',
    '--ratio',
    '1:2',
    '--ratio-by',
    'volume',
    '--scale-step',
    '0.001',
  ];

  it('both part densities are needed', () => {
    expect(document(byVolume).error!.code).toBe('PART_DENSITIES_NEEDED');
    expect(call(byVolume).exit).toBe(2);
    expect(call([...byVolume, '--part-a-density', '1.22 g/cm3']).exit).toBe(2);
  });

  it('1:2 by volume at 1 220 and 1 050 kg/m3 is 1 220 : 2 100 by weight', () => {
    const { result } = document([...byVolume, '--part-a-density', '1220', '--part-b-density', '1050']);
    // Rounded to the milligram of some 600 g.
    expectClose((result.part_a_g as number) / (result.part_b_g as number), 1220 / 2100, 5e-6);
  });
});

describe('with a shop', () => {
  it('a card is named by its exact name', () => {
    const { result, inputs } = document(
      ['batch', '--volume', '5 L', '--foam', 'Sample Foam Light', ...SHOP],
      desk,
    );
    // Card: 6 pcf, A:B 100:55, scale of 1 g (the invented shop).
    expectClose(result.molded_density_kg_m3 as number, 1.3 * 6 * (0.45359237 / 0.3048 ** 3), 1e-12);
    expect(Math.abs((result.part_a_g as number) / (result.part_b_g as number) - 100 / 55)).toBeLessThan(0.02);
    expect(inputs.foam).toBe('Sample Foam Light');
    const unknown = document(['batch', '--volume', '5 L', '--foam', 'sample foam light', ...SHOP], desk);
    expect(unknown.error!.code).toBe('CARD_UNKNOWN');
    expect(unknown.error!.hint).toContain('Sample Foam Light');
  });

  it('the ratio of a known card typed the other way round is refused', () => {
    const call55 = ['batch', '--volume', '5 L', '--foam', 'Sample Foam Light', '--ratio', '55:100', ...SHOP];
    expect(document(call55, desk).error!.code).toBe('RATIO_REVERSED');
    expect(call(call55, desk).exit).toBe(2);
    expect(
      call(['batch', '--volume', '5 L', '--foam', 'Sample Foam Light', '--ratio', '100:55', ...SHOP], desk)
        .exit,
    ).toBe(0);
  });

  it('a card without a shop, a shop that is none, a shop that is not there', () => {
    expect(call(['batch', '--volume', '5 L', '--foam', 'Sample Foam Light', '--json']).exit).toBe(2);
    for (const [text, code] of [
      ['{', 'SHOP_FILE'],
      ['[]', 'SHOP_FILE'],
      ['{"schema":"risewright/shop@9","foams":[]}', 'SHOP_FILE'],
      ['{"schema":"risewright/shop@1","foams":[{"name":""}]}', 'FOAM_CARD_FIELD'],
    ] as const) {
      const { error } = document(['batch', '--volume', '5 L', '--foam', 'X', '--shop', 's.json'], {
        files: { 's.json': text },
      });
      expect(error!.code, text).toBe(code);
    }
    expect(call(['batch', '--volume', '5 L', '--foam', 'X', '--shop', 'none.json', '--json']).exit).toBe(3);
  });
});

describe('with a scan', () => {
  const scan = ['batch', '--scan', 'quay-troll-scan.stl', '--free-rise', '96', '--ratio', '52:100'];

  it('the cavity is the volume that size gives, with its range and its findings', () => {
    const where = ['--up', '+y', '--tall', '290.85 mm'];
    const [batch, size] = [
      document([...scan, ...where]),
      document(['size', 'quay-troll-scan.stl', ...where]),
    ];
    expect(batch.result.cavity_cm3).toBe(size.result.volume_cm3);
    expect(batch.range.cavity_cm3).toEqual(size.range.volume_cm3);
    expect(batch.findings.slice(0, size.findings.length)).toEqual(size.findings);
  });

  it('without a unit exit 5, and no grams', () => {
    expect(call([...scan, '--up', '+y', '--json']).exit).toBe(5);
  });

  it('a scan and a volume, or neither, is a wrong call', () => {
    expect(call([...scan, '--volume', '5 L', '--json']).exit).toBe(2);
    expect(call(['batch', '--free-rise', '96', '--ratio', '52:100', '--json']).exit).toBe(2);
  });
});

describe('what is refused', () => {
  const base = ['batch', '--volume', '5 L', '--free-rise', '96', '--ratio', '52:100'];
  it.each<[string, string[], string]>([
    ['a ratio of one number', ['batch', '--volume', '5 L', '--free-rise', '96', '--ratio', '52'], 'BAD_CALL'],
    ['no ratio', ['batch', '--volume', '5 L', '--free-rise', '96'], 'BAD_CALL'],
    ['no foam', ['batch', '--volume', '5 L'], 'BAD_CALL'],
    ['a pack of 130 %', [...base, '--pack', '130 %'], 'BAD_CALL'],
    ['a pack of 9', [...base, '--pack', '9'], 'PACK_REFUSED'],
    ['pack and short fill', [...base, '--pack', '1.3', '--short-fill', '1 %'], 'INPUT_CONFLICT'],
    ['an overpack without its minimum fill', [...base, '--overpack', '110 %'], 'MIN_FILL_NEEDED'],
    [
      'a density nobody pours',
      [...base.slice(0, 3), '--free-rise', '96 g/cm3', '--ratio', '52:100'],
      'BAD_CALL',
    ],
    [
      'an ambiguous volume',
      ['batch', '--volume', '5,200', '--free-rise', '96', '--ratio', '52:100'],
      'BAD_CALL',
    ],
    [
      'a mass for a volume',
      ['batch', '--volume', '5 kg', '--free-rise', '96', '--ratio', '52:100'],
      'BAD_CALL',
    ],
  ])('%s', (_, args, code) => {
    const called = call([...args, '--json']);
    expect(called.exit).toBe(2);
    const { error } = documents(called)[0]!;
    expect(error!.code).toBe(code);
  });

  it('strict: exit 6 when a check says Stop', () => {
    const called = call([...base, '--pack', '1.02', '--json']);
    expect(documents(called)[0]!.findings.some((f) => f.status === 'stop')).toBe(true);
    expect(called.exit).toBe(0);
    expect(call([...base, '--pack', '1.02', '--json', '--strict']).exit).toBe(6);
  });
});

it('for a person: the grams are the last line, A before B, and the cautions defer to the data sheet', () => {
  const { out } = call(T1);
  const last = out.trimEnd().split('\n').at(-1)!;
  expect(last).toMatch(/A 330 g, B 63[56] g, together 96[56] g/);
  expect(out).toMatch(/data sheet/i);
});
