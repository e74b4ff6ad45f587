import { describe, expect, it } from 'vitest';
import { expectClose } from '../support/close';
import { document } from '../support/cliCall';
import { PLAIN, group, list, result, statusOf } from '../support/pourCalls';

describe('times and warmth', () => {
  it('the wall of 10 mm takes longer with the jacket on, and the mold has to be poured within minutes', () => {
    const warm = ['--wall', '10 mm', '--warm-air', '50 C', '--warm-to', '35 C', '--room', '20 C'];
    const minutes = (more: string[]) => group('warm_up', [...warm, ...more]).deep_face_min!;
    expect(minutes(['--jacket', '12 mm'])).toBeGreaterThan(minutes([]));
    expect(minutes(['--surroundings', 'fan box'])).toBeLessThan(minutes([]));
    expect(minutes(['--warm-sides', '2'])).toBeLessThan(minutes([]));
    expect(result(warm).pour_within_min).toBeGreaterThan(0);
    expect(document(['batch', ...PLAIN, '--wall', '10 mm']).error!.code).toBe('BAD_CALL');
  });

  it.each([
    ['31 C', 'fine'],
    ['87 F', 'fine'],
    ['60 F', 'cold'],
    ['70 C', 'too hot'],
  ])('a mold of %s lies in the band "%s"', (typed, band) => {
    expect(result(['--mold-temp', typed]).mold_temp_band).toBe(band);
  });

  it('30 min to opening lie inside the common band; a foam without a time is not checked', () => {
    const known = result(['--open', '30 min']);
    const [low, high] = list<number>('open_common_min', ['--open', '30 min']);
    expect(low! <= 30 && 30 <= high!).toBe(true);
    expect(known.open_min).toBe(30);
    expect(statusOf('OPENING_TIME', ['--open', '30 min'])).toBe('fine');
    expect(result()).not.toHaveProperty('open_min');
    expect(statusOf('OPENING_TIME', [])).toBe('unknown');
  });

  it('warmer ingredients cream sooner: exp(Ea/R (1/T1 - 1/T2)), Ea = 27.04 kJ/mol', () => {
    const { cream_s } = result(['--cream', '60', '--times-at', '20', '--ingredients', '30']);
    const faster = Math.exp((27_040 / 8.314462618) * (1 / 293.15 - 1 / 303.15));
    expectClose(cream_s!, 60 / faster, 1e-6);
  });

  it('the core is only told with %NCO, water and a temperature', () => {
    const told = ['--nco', '28 %', '--water', '1.5 %', '--ingredients', '22'];
    expect(result(told).core_c).toBeGreaterThan(22);
    expect(result(told.slice(0, 4))).not.toHaveProperty('core_c');
  });
});

describe('color by mass', () => {
  it('1 % of B is a hundredth of B; 25 drops of 1.1 g are 0.044 g each', () => {
    const recipe = ['--color', 'umber=1% of B, 25 drops=1.1 g', '--color', 'ochre=0.5 % of mix'];
    const one = result(recipe);
    const [umber, ochre] = list('colors', recipe);
    expectClose(umber!.mass_g!, one.part_b_g! / 100, 1e-9);
    expect(umber!.drops).toBe(Math.round(umber!.mass_g! / 0.044));
    expect(umber!.drop_from).toBe('weighed');
    expectClose(ochre!.mass_g!, one.mixed_g! / 200, 1e-9);
    expect(ochre!.drop_from).toBe('assumed');
  });

  it('the check of the pigment knows its share from the recipe; oil color stops the plan', () => {
    const paste = ['--pigment', 'paste in polyol or plasticizer'];
    expect(statusOf('PIGMENT', ['--color', 'umber=1% of B', ...paste])).toBe('fine');
    expect(statusOf('PIGMENT', ['--color', 'umber=9% of mix', ...paste])).toBe('stop');
    for (const kind of ['oil color', 'silicone based', 'water based'])
      expect(statusOf('PIGMENT', ['--color', 'umber=1% of B', '--pigment', kind])).toBe('stop');
  });

  it.each([
    ['umber', 'is not a color'],
    ['=1% of B', 'has no name'],
    ['umber=1% of A', 'is a share of "A"'],
    ['umber=much of B', 'does not start with a number'],
    ['umber=1% of B, few drops=1 g', 'does not start with a number'],
    ['umber=1% of B, 25 drops=1.1 cm', 'a mass is wanted'],
  ])('"%s" is refused', (typed, why) => {
    const { error } = document(['batch', ...PLAIN, '--color', typed]);
    expect(error!.code).toBe('BAD_CALL');
    expect(error!.text).toContain(why);
  });

  it('a name twice, and more color than the check bears', () => {
    const code = (...colors: string[]) =>
      document(['batch', ...PLAIN, ...colors.flatMap((c) => ['--color', c])]).error!.code;
    expect(code('a=1% of B', 'a=2% of B')).toBe('COLOR_NAMED_TWICE');
    expect(code('a=50% of B')).toBe('INPUT_OUT_OF_BOUNDS');
  });
});

describe('what is asked for a cost, and what came before', () => {
  it('the mix costs its A and its B', () => {
    const one = result(['--price-a', '9', '--price-b', '11', '--failure-cost', '150']);
    expectClose(one.cost!, (9 * one.part_a_g! + 11 * one.part_b_g!) / 1000, 1e-9);
    expectClose(one.failure_cost!, one.cost! + 150, 1e-9);
  });

  it('one price alone is no cost', () => {
    expect(document(['batch', ...PLAIN, '--price-a', '9']).error!.code).toBe('BAD_CALL');
    expect(document(['batch', ...PLAIN, '--failure-cost', '9']).error!.code).toBe('BAD_CALL');
  });

  it('two filled and one short of three: 3/5 for the next (Laplace), and a wrong word is refused', () => {
    const past = ['1.3=filled', '1.3=filled', '1.3=short'].flatMap((one) => ['--past', one]);
    expect(list('past', past)).toMatchObject([{ poured: 3, filled: 2, fill_chance: 0.6 }]);
    expect(document(['batch', ...PLAIN, '--past', '1.3=good']).error!.code).toBe('BAD_CALL');
  });
});
