import { describe, expect, it } from 'vitest';
import { call, document } from '../support/cliCall';
import { expectClose } from '../support/close';
import { SHOP_DESK } from '../support/pourCalls';

const lastLine = (out: string): string => out.trimEnd().split('\n').at(-1)!;
const numbers = (args: readonly string[]): Record<string, number> => {
  const one = document(args, SHOP_DESK);
  if (one.error !== undefined) throw new Error(one.error.text);
  return one.result as Record<string, number>;
};
const bounds = (args: readonly string[], key: string): [number, number] =>
  document(args, SHOP_DESK).range[key]!;

describe('fill', () => {
  const TROLL_MOLD = ['fill', '--water', '4.47 kg', '--water-temp', '20C'];

  it('4.47 kg at 20 C are 4 478 cm3 (water 0.99821 g/cm3 there, CRC)', () => {
    expectClose(numbers(TROLL_MOLD).cavity_cm3!, 4470 / 0.99821, 1e-5);
    const [low, high] = bounds(TROLL_MOLD, 'cavity_cm3');
    // 0.3 % of how it is done, twice, and a little for scale and thermometer.
    expectClose(4478 - low, 2 * 0.003 * 4478, 0.05);
    expectClose(high - 4478, 2 * 0.003 * 4478, 0.05);
  });

  it('jugs are added up; each of them is rounded on its own', () => {
    const coarse = ['--water-temp', '20', '--scale-step', '50 g'];
    const one = bounds(['fill', '--water', '4470', ...coarse], 'cavity_cm3');
    const three = ['fill', '--water', '2 kg', '--water', '2000', '--water', '470 g', ...coarse];
    expectClose(numbers(three).cavity_cm3!, 4470 / 0.99821, 1e-5);
    const of3 = bounds(three, 'cavity_cm3');
    expect(of3[0]).toBeLessThan(one[0]);
    expect(of3[1]).toBeGreaterThan(one[1]);
  });

  it('a temperature nobody measured is assumed, listed, and widens the range', () => {
    const guessed = ['fill', '--water', '4.47 kg'];
    const { assumptions } = document(guessed, SHOP_DESK);
    expect(assumptions.find(({ name }) => name === 'water_temperature')).toMatchObject({
      ...{ value: 20, unit: 'C', from: 'assumed' },
      basis: expect.stringContaining('Chosen here') as string,
    });
    expect(bounds(guessed, 'cavity_cm3')[1]).toBeGreaterThan(bounds(TROLL_MOLD, 'cavity_cm3')[1]);
  });

  it('the step of the scale is that of the shop, else assumed', () => {
    const names = (more: string[]): string[] =>
      document([...TROLL_MOLD, ...more], SHOP_DESK).assumptions.map(({ name }) => name);
    expect(names([])).toContain('scale_step_g');
    expect(names(['--shop', 'shop.json'])).not.toContain('scale_step_g');
  });

  it('says to dry the mold fully and weigh it dry, and that plaster is never filled; the cavity last', () => {
    const { out, exit } = call(TROLL_MOLD);
    expect(exit).toBe(0);
    expect(out).toContain('Dry the mold fully, then weigh it dry');
    expect(out).toContain('A plaster jacket is never filled with water');
    expect(lastLine(out)).toMatch(/^ {2}Cavity +4\u202f478 cm³ .*water-fill/);
    const cautions = document(TROLL_MOLD).result.cautions as { key: string }[];
    expect(cautions.map(({ key }) => key)).toEqual(['plaster-jacket', 'damp-mold', 'weigh-dry']);
  });
});

describe('displace', () => {
  const levels = (medium: string, more: string[] = []): string[] => [
    ...['displace', '--medium', medium, '--before', '3 L', '--after', '3910', ...more],
  ];

  it('the rise of the level; rice leaves more open than water', () => {
    expect(numbers(levels('water')).volume_cm3).toBe(910);
    const [water, rice] = ['water', 'rice'].map((medium) => bounds(levels(medium), 'volume_cm3'));
    expect(rice![1] - rice![0]).toBeGreaterThan(3 * (water![1] - water![0]));
    expect(call(levels('rice')).out).toContain('rice settles otherwise each time');
  });

  it('the step that can be read is assumed as a fiftieth of the level, unless it is told', () => {
    const stepOf = (more: string[]): unknown =>
      document(levels('water', more)).assumptions.find(({ name }) => name === 'step_of_the_vessel')?.value;
    expectClose(stepOf([]) as number, 3910 / 50, 1e-12);
    expect(stepOf(['--reading', '20 cm3'])).toBeUndefined();
    const told = bounds(levels('water', ['--reading', '20 cm3']), 'volume_cm3');
    // Two readings within 20 cm3 each, and half a percent of what the jug holds; twice that.
    expectClose(told[1] - 910, 2 * Math.hypot(20 / Math.sqrt(6), 0.005 * 3910), 1e-9);
  });

  it('water that ran over is weighed', () => {
    const over = ['displace', '--overflow', '905 g', '--water-temp', '20 C'];
    expectClose(numbers(over).volume_cm3!, 905 / 0.99821, 1e-5);
    expect(lastLine(call(over).out)).toContain('of the sculpt');
  });
});

describe('girth', () => {
  const LIMB = ['--limb', 'length=270mm,girths=300mm/210mm'];

  it('parts add up to the whole, value and ends', () => {
    const args = ['girth', ...LIMB, '--ball', 'girth=560mm', '--ball', 'girth=10in'];
    const more = ['--box', 'width=4in,depth=2 in, height=60', '--dome', 'girth=440,height=9 cm'];
    const { result, range } = document([...args, ...more]);
    const parts = result.parts as { kind: string; volume_cm3: number; range_cm3: [number, number] }[];
    expect(parts.map(({ kind }) => kind)).toEqual(['limb', 'ball', 'ball', 'box', 'dome']);
    const sum = (of: (part: (typeof parts)[number]) => number): number =>
      parts.reduce((all, part) => all + of(part), 0);
    expectClose(
      result.volume_cm3 as number,
      sum((part) => part.volume_cm3),
      1e-12,
    );
    expectClose(
      range.volume_cm3![0],
      sum((part) => part.range_cm3[0]),
      1e-12,
    );
    expectClose(
      range.volume_cm3![1],
      sum((part) => part.range_cm3[1]),
      1e-12,
    );
  });

  it('a true ball lies within its range, and below the top of it', () => {
    const radius = 89;
    const [low, high] = bounds(['girth', '--ball', `girth=${2 * Math.PI * radius}mm`], 'volume_cm3');
    const truth = ((4 / 3) * Math.PI * radius ** 3) / 1000;
    expect(low).toBeLessThan(truth);
    expect(high).toBeGreaterThan(truth);
  });

  it('inches with fractions, and one girth for a limb as thick all along', () => {
    const inches = document(['girth', '--limb', 'length=10 1/4 in,girths=10 1/4 in/8 1/2 in']);
    expect(inches.result.parts).toMatchObject([{ length_mm: 260.35, girths_mm: [260.35, 215.9] }].map(near));
    const even = document(['girth', '--limb', 'length=100,girth=200']);
    expect(even.result.parts).toMatchObject([{ length_mm: 100, girths_mm: [200, 200] }]);
  });

  it('says why the range is wide, part by part, the sum last', () => {
    const { out } = call(['girth', ...LIMB]);
    expect(out).toContain('The range is wide because a girth does not tell how flat a section is');
    expect(out).toMatch(/Part +limb, 270 mm/);
    expect(lastLine(out)).toMatch(/^ {2}Volume .*taped/);
    expect(out).not.toContain('box');
  });
});

/** Lengths as near as a double keeps an inch. */
const near = ({ length_mm, girths_mm }: { length_mm: number; girths_mm: number[] }): object => ({
  length_mm: expect.closeTo(length_mm, 9) as number,
  girths_mm: girths_mm.map((mm) => expect.closeTo(mm, 9) as number),
});

describe('wrong calls', () => {
  it.each<[string, string[], string]>([
    ['no water', ['fill'], '--water "4.47 kg"'],
    ['a comma that can be two things', ['fill', '--water', '4,470'], '"4.47 g" or "4470 g"'],
    ['a volume for a mass', ['fill', '--water', '4.5 L'], 'a mass is wanted'],
    ['boiling water', ['fill', '--water', '4 kg', '--water-temp', '90 C'], 'not within'],
    ['no levels', ['displace', '--medium', 'rice'], 'The level before is missing'],
    ['no medium', ['displace', '--before', '1 L', '--after', '2 L'], 'is missing'],
    [
      'a level that fell',
      ['displace', '--medium', 'water', '--before', '3 L', '--after', '2 L'],
      'Level after',
    ],
    ['sand', ['displace', '--medium', 'sand'], 'water, rice'],
    [
      'levels and overflow',
      ['displace', '--overflow', '1 kg', '--before', '1 L'],
      '--before is about levels',
    ],
    ['rice that ran over', ['displace', '--medium', 'rice', '--overflow', '1 kg'], 'Rice does not run over'],
    ['warm levels', ['displace', '--medium', 'water', '--water-temp', '20'], '--water-temp is about water'],
    ['no body', ['girth'], 'nothing to add up'],
    ['no length', ['girth', '--limb', 'girths=300mm/210mm'], '--limb has no length'],
    ['three girths', ['girth', '--limb', 'length=9cm,girths=3cm/4cm/5cm'], 'a girth at each end'],
    ['girths or a fraction', ['girth', '--limb', 'length=270,girths=300/210'], 'two girths or a fraction'],
    ['a length of two readings', ['girth', '--ball', 'girth=1,250'], '1.25 mm" or "1250 mm'],
    ['another name', ['girth', '--ball', 'diameter=3'], '"diameter" is none of girth'],
    ['a name twice', ['girth', '--ball', 'girth=3cm,girth=4cm'], 'girth is there twice'],
    ['no name', ['girth', '--ball', '560mm'], 'no name with a quantity'],
    ['a mistyped option', ['girth', '--bal', 'girth=3cm'], '--ball'],
  ])('%s: exit 2, in words and as JSON', (_, args, says) => {
    const called = call(args);
    expect(called.exit).toBe(2);
    expect(called.out).toBe('');
    expect(called.notes).toContain(says);
    const { schema, error } = document(args);
    expect(schema).toBe('risewright/error@1');
    expect(error!.hint).not.toBe('');
  });
});

it.each([
  ['fill', '--water', '4 kg'],
  ['displace', '--medium', 'rice', '--before', '1 L', '--after', '2 L'],
  ['girth', '--dome', 'girth=44cm,height=9cm'],
  ['cup', '--cup-water', '500', '--foam-mass', '53.4'],
])('%s: the same bytes twice, its schema, no null; -o and --show', (...args) => {
  const [one, two] = [1, 2].map(() => call([...args, '--json']).out);
  expect(one).toBe(two);
  expect(one).not.toMatch(/null|NaN|Infinity|undefined/);
  expect(document(args).schema).toBe(`risewright/${args[0]}@1`);
  const written = call([...args, '-o', 'answer.txt', '--show', 'us']);
  expect(written.out).toBe('');
  expect(lastLine(String(written.files.get('answer.txt')))).toMatch(/fl oz|gal|lb\/ft/);
  expect(lastLine(String(written.files.get('answer.txt')))).not.toMatch(/cm³|kg\/m³/);
});
