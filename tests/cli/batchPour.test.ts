import { describe, expect, it } from 'vitest';
import { SAMPLE_SHOP } from '../../src/job/sampleShop';
import { expectClose } from '../support/close';
import { call, document } from '../support/cliCall';
import { lcg } from '../support/lcg';
import { LABEL, PLAIN, group, list, result, statusOf } from '../support/pourCalls';

describe('air of the day', () => {
  it('at 1500 m the bench has 84.556 kPa (US Standard Atmosphere 1976), and the foam is lighter and less is mixed', () => {
    const { mixed_g } = result(['--altitude', '1500 m'], LABEL);
    const air = group('air', ['--altitude', '1500 m'], LABEL);
    expectClose(air.station_kpa!, 84.556, 1e-4, 'station pressure');
    const expected = 1 / (1 / 1070 + (1 / 96 - 1 / 1070) * (101.325 / 84.556));
    expectClose(air.free_rise_kg_m3!, expected, 1e-4, 'free rise');
    expect(mixed_g).toBeLessThan(result([], LABEL).mixed_g!);
  });

  it.each([
    ['95.5 kPa', 95.5],
    ['955 hPa', 95.5],
    ['955 mbar', 95.5],
    // 1 inHg = 3.386389 kPa (NIST SP 811, at 0 C).
    ['28.2 inHg', 28.2 * 3.386389],
  ])('a barometer of %s', (typed, kPa) => {
    expectClose(group('air', ['--pressure', typed], LABEL).station_kpa!, kPa, 1e-6);
  });

  it('a pressure without a unit is asked about', () => {
    const { error } = document(['batch', ...LABEL, '--pressure', '955']);
    expect(error!.code).toBe('BAD_CALL');
    expect(error!.text).toContain('--pressure "955"');
  });

  it('with a cup test of today nothing is corrected twice', () => {
    const air = group('air', ['--altitude', '1500 m']);
    expect(air.applied).toEqual([]);
    expect(air.free_rise_kg_m3).toBe(96);
  });

  it('4900 ft are 1493.52 m; a place below the sea has thicker air', () => {
    const station = (typed: string) => group('air', ['--altitude', typed], LABEL).station_kpa!;
    expectClose(station('4900 ft'), station('1493.52 m'), 1e-12);
    expect(station('-400 m')).toBeGreaterThan(101.325);
  });

  it('the higher, the lighter, for any height (seeded)', () => {
    const draw = lcg(11);
    for (let n = 0; n < 12; n += 1) {
      const [low, high] = [draw() * 2500, 2600 + draw() * 2500];
      const rise = (m: number) => group('air', ['--altitude', `${m.toFixed(1)} m`], LABEL).free_rise_kg_m3!;
      expect(rise(high)).toBeLessThan(rise(low));
    }
  });
});

describe('cups', () => {
  it('a batch in several cups: each holds A and B, the sums are those of the cups', () => {
    const { part_a_g, part_b_g, mixed_g, limited_by } = result(['--cup-volume', '1 L']);
    const each = list<{ part_a_g: number; part_b_g: number }>('mixes', ['--cup-volume', '1 L']);
    expect(each.length).toBeGreaterThan(1);
    expect(each.reduce((sum, mix) => sum + mix.part_a_g, 0)).toBe(part_a_g);
    expect(each.reduce((sum, mix) => sum + mix.part_b_g, 0)).toBe(part_b_g);
    expect(part_a_g! + part_b_g!).toBe(mixed_g);
    // A third of a liter of 1070 kg/m3.
    for (const mix of each) expect(mix.part_a_g + mix.part_b_g).toBeLessThanOrEqual(1070 / 3);
    expect(limited_by).toBe('container');
  });

  it('one cup is the batch itself, as it was without the option', () => {
    const one = result();
    expect(one.mixes).toEqual([{ part_a_g: one.part_a_g, part_b_g: one.part_b_g }]);
    expect(result(['--cup-volume', '9 L']).mixed_g).toBe(one.mixed_g);
  });

  it('a half full cup takes more than a third', () => {
    const most = (more: string[]) => result(['--cup-volume', '1 L', ...more]).largest_mix_g!;
    expectClose(most(['--cup-fill', '50 %']) / most([]), 1.5, 1e-12);
  });

  it('more cups than hands is a look, as many hands as cups another', () => {
    expect(statusOf('CUPS_OVER_HANDS', ['--cup-volume', '1 L'])).toBe('look');
    expect(statusOf('CUPS_OVER_HANDS', ['--cup-volume', '1 L', '--mixers', '3'])).toBeUndefined();
    expect(statusOf('CUPS_TOGETHER', ['--cup-volume', '1 L', '--mixers', '3'])).toBe('look');
  });

  it('the cream time leaves so much to pour: 60 s less 20 of mixing and 4 of carrying and 5 of margin', () => {
    const { pour_window_s } = result(['--cream', '60 s', '--mix-time', '20 s', '--carry-time', '4 s']);
    expect(pour_window_s).toBe(31);
  });

  it('a cream time typed too short is refused; one on the card stands as a Stop beside the grams', () => {
    expect(document(['batch', ...PLAIN, '--cream', '20']).error!.code).toBe('POUR_WINDOW_NONE');
    const [light] = SAMPLE_SHOP.foams;
    const quick = { ...SAMPLE_SHOP, foams: [{ ...light, creamS: 20 }] };
    const one = document(['batch', '--volume', '4500', '--foam', light!.name, '--shop', 's.json'], {
      files: { 's.json': JSON.stringify(quick) },
    });
    expect(one.findings.find((f) => f.code === 'POUR_WINDOW_NONE')!.status).toBe('stop');
    expect(one.result.part_a_g).toBeGreaterThan(0);
  });

  it('the line to weigh says each cup and the sum', () => {
    const last = call(['batch', ...PLAIN, '--cup-volume', '1 L'])
      .out.trimEnd()
      .split('\n')
      .at(-1)!;
    expect(last).toMatch(/^ {2}Weigh +\d cups, each A \d+ g, B \d+ g; in all A .* g, B .* g, together .* g$/);
  });
});

describe('pressure, clamp and straps', () => {
  it('the push on 300 cm2 is pressure times area: 1 kPa on 1 cm2 is 0.1 N; clamps hold twice that', () => {
    const one = result(['--projected-area', '300 cm2', '--lid', '2 kg', '--plug-area', '20 cm2']);
    expectClose(one.push_n!, one.design_pressure_kpa! * 30, 1e-9, 'push');
    expectClose(one.clamp_n!, 2 * one.push_n! - 2 * 9.80665, 1e-9, 'clamp');
    expectClose(one.plug_n!, one.design_pressure_kpa! * 2, 1e-9, 'plug');
    expectClose(
      one.strap_n! * one.straps!,
      one.clamp_n! / 2 / (Math.exp((-0.3 * Math.PI) / 2) * 0.8),
      1e-9,
      'straps',
    );
  });

  it('forces are left out where no area is known', () => {
    const one = result();
    for (const key of ['clamp_n', 'strap_n', 'plug_n']) expect(one).not.toHaveProperty(key);
    expect(one.pressure_kpa).toBeGreaterThan(0);
  });

  it('the shadow of the scan along the way it opens is what a mold of it is pushed open on', () => {
    const ball = ['--scan', 'sphere-r50.stl', '--file-unit', 'mm', ...LABEL.slice(2)];
    const one = result(['--opens', '+y'], ball);
    expectClose(one.projected_area_cm2!, Math.PI * 25, 4e-3, 'disc of the ball');
    expectClose(one.push_n!, (one.design_pressure_kpa! * one.projected_area_cm2!) / 10, 1e-9, 'push');
    const both = document(['batch', ...ball, '--opens', '+y', '--projected-area', '80 cm2']);
    expect(both.error!.code).toBe('BAD_CALL');
  });

  it('too few straps are said, with how many it takes', () => {
    const one = result(['--projected-area', '300 cm2', '--straps', '2', '--strap-tension', '200 N']);
    expect(one.straps_hold).toBe(false);
    expect(one.straps_needed).toBeGreaterThan(2);
    const { out } = call(['batch', ...PLAIN, '--projected-area', '300 cm2', '--straps', '2']);
    expect(out).toContain(`not enough, it takes ${one.straps_needed}`);
  });

  it('44.96 lbf are 200 N (1 lbf = 4.4482216152605 N, NIST SP 811)', () => {
    const needed = (typed: string) =>
      result(['--projected-area', '300 cm2', '--strap-tension', typed]).straps_needed;
    expect(needed('44.97 lbf')).toBe(needed('200.04 N'));
  });

  it('a peak that was measured replaces the estimate', () => {
    const one = result(['--peak-pressure', '18 kPa', '--peak-pack', '1.3']);
    expectClose(one.pressure_kpa!, 18, 1e-9);
    expect(document(['batch', ...PLAIN, '--peak-pressure', '18 kPa']).error!.code).toBe('BAD_CALL');
  });

  it('more pack, more pressure and more mass, less chance of a short fill (seeded)', () => {
    const draw = lcg(7);
    for (let n = 0; n < 12; n += 1) {
      const low = 1.05 + draw() * 0.4;
      const [less, more] = [low, low + 0.05 + draw() * 0.4].map((k) => result(['--pack', k.toFixed(3)]));
      expect(more!.pressure_kpa!).toBeGreaterThan(less!.pressure_kpa!);
      expect(more!.mixed_g!).toBeGreaterThan(less!.mixed_g!);
      expect(more!.short_fill_chance!).toBeLessThanOrEqual(less!.short_fill_chance!);
    }
  });
});
