import { describe, expect, it } from 'vitest';
import { expectClose } from '../support/close';
import { document } from '../support/cliCall';
import { LABEL, PLAIN, SHOP_DESK, group, result, statusOf } from '../support/pourCalls';
import { truthOf } from '../support/samples';

describe('what the cavity is', () => {
  const ROCK = [
    ...['--scan', 'singing-rock-scan.obj', '--file-unit', 'in', '--cut', 'z=0.0078 units'],
    ...LABEL.slice(2),
  ];
  const BALL = ['--scan', 'sphere-r50.stl', '--file-unit', 'mm', ...LABEL.slice(2)];

  it('the rock less its core: what the generator sums lies in the range, and the thinnest wall is said', () => {
    const one = document(['batch', ...ROCK, '--core', 'singing-rock-core.obj', '--core-mass', '2 kg']);
    const truth = truthOf('singing-rock-core.obj');
    const [low, high] = one.range.cavity_cm3!;
    expect(low).toBeLessThanOrEqual(truth.cavity_mm3! / 1000);
    expect(high).toBeGreaterThanOrEqual(truth.cavity_mm3! / 1000);
    const hollow = one.result.hollow as Record<string, number>;
    expect(hollow.core_inside).toBe(true);
    expectClose(hollow.thinnest_wall_mm!, truth.side_wall!.shifted.mm, 0.03, 'wall');
    const lift = one.result.core_lift as Record<string, number>;
    // Archimedes: what it displaces of the molded foam, less 2 kg.
    const molded = one.result.molded_density_kg_m3 as number;
    expectClose(lift.in_foam_n!, ((molded * hollow.core_cm3!) / 1e6 - 2) * 9.80665, 1e-9, 'lift in foam');
    expect(one.because.join(' ')).toContain('less a core of');
  });

  it('a core 10 mm inside a ball of 50 mm is a ball of 40 mm; an armature takes its volume too', () => {
    const one = result(['--core-offset', '10 mm', '--armature', '30 cm3'], BALL);
    const shell = (4 / 3) * Math.PI * (125 - 64);
    expectClose(one.cavity_cm3!, shell - 30, 6e-3, 'shell less armature');
    expect(statusOf('CORE_WALL', ['--core-offset', '10 mm'], BALL)).toBe('fine');
    expect(statusOf('CORE_WALL', ['--core-offset', '5 mm'], BALL)).toBe('stop');
  });

  it('of a volume an armature is taken off, and what needs a surface is refused by its name', () => {
    expect(result(['--armature', '100 cm3']).cavity_cm3).toBe(4400);
    for (const [option, value] of [
      ['--core', 'sphere-r50.stl'],
      ['--core-offset', '10 mm'],
      ['--core-mass', '1 kg'],
      ['--core-neck', '4 cm2'],
      ['--opens', '+z'],
      ['--silicone', 'Sample Silicone 25'],
      ['--shrink', '0.3 %'],
      ['--voxel', '1 mm'],
    ]) {
      const { error } = document(['batch', ...PLAIN, option!, value!], SHOP_DESK);
      expect(error!.text).toContain(`${option} is about a scan`);
    }
  });

  it('a core and an offset are two answers; a core from stdin, a neck without a core, a field without one: refused', () => {
    const code = (more: string[]) => document(['batch', ...BALL, ...more]).error!.code;
    expect(code(['--core', 'sphere-r50.stl', '--core-offset', '5 mm'])).toBe('INPUT_CONFLICT');
    expect(code(['--core', '-'])).toBe('BAD_CALL');
    expect(code(['--core-neck', '4 cm2'])).toBe('BAD_CALL');
    expect(code(['--voxel', '1 mm'])).toBe('BAD_CALL');
    expect(code(['--core', 'sphere-r50.stl'])).toBe('CORE_FILLS_MOLD');
  });

  it('the mold shrank by 0.3 % as measured: the cavity is 0.997 cubed of the sculpt, and the batch is made for it', () => {
    const one = document(['batch', ...BALL, '--shrink', '0.3 %']);
    const casting = one.result.casting as Record<string, number>;
    const bare = result([], BALL);
    expectClose(casting.volume_share!, 0.997 ** 3, 1e-9, 'share');
    expectClose(one.result.cavity_cm3 as number, 0.997 ** 3 * bare.cavity_cm3!, 1e-9, 'cavity');
    expect(one.result.cavity_cm3).toBe(casting.cavity_cm3);
    expect(one.because.join(' ')).toContain('that is what is poured for');
  });

  it('a warm mold of the card is larger than a cold one; without a core or with one', () => {
    const share = (more: string[]) =>
      group('casting', [...more, '--silicone', 'Sample Silicone 25', '--shop', 'shop.json'], BALL)
        .volume_share!;
    expect(share(['--room', '20', '--mold-temp', '40'])).toBeGreaterThan(share(['--room', '20']));
    const both = ['--shrink', '0.3 %', '--core-offset', '10 mm'];
    const left = group('casting', both, BALL).cavity_cm3! - group('hollow', both, BALL).core_cm3!;
    expectClose(result(both, BALL).cavity_cm3!, left, 1e-9);
  });
});
