import { describe, expect, it } from 'vitest';
import { SAMPLE_SHOP } from '../../src/job/sampleShop';
import { call, type Desk } from '../support/cliCall';
import { ballOn, mushroomOn } from '../support/moldShapes';
import { stlBytes } from '../support/writeMesh';

const desk: Desk = {
  files: {
    'mushroom.stl': stlBytes(mushroomOn(64)),
    'ball.stl': stlBytes(ballOn(50)),
    'shop.json': JSON.stringify(SAMPLE_SHOP),
  },
};
const FOAM = ['--shop', 'shop.json', '--foam', 'Sample Foam Light', '--mix-viscosity', '1200 cP'];
const TROLL = ['opening', 'quay-troll-scan.stl', '--up', '+y', '--tall', '290 mm', '--accuracy', 'fast'];

const linesOf = (args: readonly string[]): string[] => {
  const { exit, out } = call(args, desk);
  expect(exit).toBe(0);
  return out.trimEnd().split('\n');
};
const labelled = (lines: readonly string[], label: string): string[] =>
  lines.filter((text) => text.startsWith(`  ${label.padEnd(11)} `));

describe('the troll as a caster reads it', () => {
  const lines = linesOf([...TROLL, ...FOAM, '--elongation', '300 %', '--search-up']);
  const text = lines.join('\n');

  it('holds no number that is none, and no end that is missing', () => {
    expect(text).not.toMatch(/undefined|NaN|Infinity|null|\[object|\s$/m);
    expect(text).not.toMatch(/(^|[^\d.])-0(?![.\d])/m);
  });

  it('says wherever air is shown that it is a lower bound for foam', () => {
    for (const one of [...labelled(lines, 'Air'), ...labelled(lines, 'Ways up')])
      expect(one).toMatch(/lower bound for foam/);
    expect(labelled(lines, 'Air pocket').length === 0 || text.includes('Air: filled to a level')).toBe(true);
  });

  it('ends with way out, way up, air, band and opening, in that order', () => {
    const last = lines.slice(-8).map((one) => one.slice(2, 13).trim());
    const order = ['Out', 'Up', 'Air', 'Band', 'Opening'];
    expect(last.filter((label) => order.includes(label))).toEqual(order);
  });

  it('tells why several small vents and not a large one, in grams by the fourth power of their widths', () => {
    const told = labelled(lines, 'Vents').join('\n');
    expect(told).toMatch(/Several small vents.*common practice, no source/);
    const [, small, low, high, wide] =
      /about ([\d.]+) g \(([\d.]+) to ([\d.]+) g\) through a vent of 2 mm, about ([\d.]+) g \(.*?\) through one of 6 mm/.exec(
        told,
      )!;
    // Both are told to two digits: (6/2)^4 = 81.
    expect(Number(wide) / Number(small)).toBeGreaterThan(81 * 0.95);
    expect(Number(wide) / Number(small)).toBeLessThan(81 * 1.05);
    // Foam of 10 to 1000 Pa s where 50 are assumed: five times as much to a twentieth, told to one digit at the low end.
    expect(Number(high) / Number(small)).toBeCloseTo(5, 0);
    expect(Number(low) / Number(small)).toBeGreaterThan(1 / 20 / 1.5);
    expect(Number(low) / Number(small)).toBeLessThan(1.5 / 20);
    expect(told).toMatch(/vents 15 mm long.*not known, assumed: 10 to 1.000 Pa s/);
  });

  it('numbers every place, in mm and sixteenths of an inch, as the card does', () => {
    const from = lines.findIndex((one) => one.startsWith('  No. '));
    const rows = lines.slice(from + 1).filter((one) => /^ {2}\d+ +/.test(one));
    expect(rows.map((row) => Number(row.trim().split(/\s/)[0]))).toEqual(rows.map((_, i) => i + 1));
    expect(rows[0]).toMatch(/0 \(0\).*Opening/);
    for (const row of rows) expect(row).toMatch(/\d+ \(\d+( \d+\/\d+)?\)|\d+ \(\d+\/\d+\)/);
  });

  it('warns of plug, opening and vents, and defers to the data sheets first', () => {
    const cautions = lines.filter((one) => /^ {2}(First|Caution) /.test(one));
    expect(cautions[0]).toMatch(/data sheets, local codes/);
    for (const words of [/plug or lid/i, /Never stand or lean over/, /before the mold is closed/, /Knife/])
      expect(cautions.join('\n')).toMatch(words);
  });

  it('sets today beside the best others', () => {
    const from = lines.findIndex((one) => one.startsWith('  Up when poured'));
    expect(lines[from + 1]).toMatch(/-z, upside down, its base up.*today/);
    expect(lines.slice(from + 1, from + 6).filter((one) => one.includes('best'))).toHaveLength(1);
    expect(lines[from]).toMatch(/Tilt +Air +Level +Vents +Holds/);
    // Its flat base is the ceiling: upside down it lies level.
    expect(lines[from + 1]).toMatch(/cm\u00b3 +\d+(\.\d+)? cm\u00b2 /);
  });
});

describe('a band without a width', () => {
  const lines = linesOf([
    ...['opening', 'ball.stl', '--file-unit', 'mm', '--accuracy', 'fast', '--base', 'closed', ...FOAM],
    ...['--opening', '0,0,100', '--opening-diameter', '19 mm', '--pour-within', '2 s'],
    ...['--foam-viscosity', '50 Pa s', '--liquid-volume', '300 cm3'],
  ]);
  const text = lines.join('\n');

  it('is told as none, with the ways out in newtons', () => {
    expect(labelled(lines, 'Band').join()).toMatch(
      /none: at least [\d.]+ mm \([\d.]+ in\) to pour in time, at most/,
    );
    const [, width, newtons, kPa] = /mouth of ([\d.]+) mm .*? about ([\d.]+) N \(([\d.]+) kPa/.exec(
      labelled(lines, 'Instead').join('\n'),
    )!;
    // Force is pressure times area; all three are told to two or three digits.
    const force = (Number(kPa) * Math.PI * Number(width) ** 2) / 4 / 1000;
    expect(Number(newtons) / force).toBeGreaterThan(0.93);
    expect(Number(newtons) / force).toBeLessThan(1.07);
    expect(text).toMatch(/vented plug that is held down/);
  });

  it('says that the pack is wasted where the mouth keeps little of its pressure', () => {
    expect(labelled(lines, 'Pressure').join()).toMatch(/pack is wasted/);
  });

  it('ends with the Stop', () => {
    expect(lines[lines.length - 1]).toMatch(/^ {2}Stop +do not pour on this plan: /);
  });
});

describe('a mushroom whose cap has to come through its stem', () => {
  const lines = linesOf([
    'opening',
    'mushroom.stl',
    '--file-unit',
    'mm',
    '--accuracy',
    'fast',
    '--show',
    'metric',
  ]);

  it('the slit runs down the whole stem, 40 mm, and ends in a hole; a knife is warned of', () => {
    const told = labelled(lines, 'Out').join('\n');
    expect(told).toMatch(
      /must stretch by 140 % .* over for usual rubber \(100 %\), within for a soft one \(230 %\)/,
    );
    const [, from, to] = /slit the rubber from \(([^)]*)\) mm to \(([^)]*)\) mm, 40 mm/.exec(told)!;
    const [x, y, z] = from!.split(', ').map(Number) as [number, number, number];
    expect([Math.round(Math.hypot(x, y)), z]).toEqual([10, 0]);
    expect(Number(to!.split(', ')[2])).toBe(40);
    expect(told).toMatch(/round hole/);
    expect(lines.join('\n')).toMatch(/Caution +Knife: Cut away from the hand/);
  });
});

describe('one system of units', () => {
  const BALL = ['opening', 'ball.stl', '--file-unit', 'mm', '--accuracy', 'fast'];
  const rest = (show: string): string =>
    linesOf([...BALL, '--show', show])
      .filter((one) => /^ {2}(Opening|Up|Air|Band|\d|No\.) /.test(one))
      .join('\n');

  it('metric alone, and US alone', () => {
    expect(rest('metric')).not.toMatch(/[\d)] in\b|gal|fl oz|sq in/);
    expect(rest('us')).not.toMatch(/\bmm\b|cm\u00b3/);
    expect(rest('us')).toMatch(/\d in\b/);
  });
});
