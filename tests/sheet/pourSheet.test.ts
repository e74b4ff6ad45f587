import { describe, expect, it } from 'vitest';
import { pourCautions } from '../../src/words/cautions';
import { finding } from '../../src/problem';
import { expectClose } from '../support/close';
import { pourOf, sheetOf, textOf } from '../support/sheetOf';

/** Cells of a row of the table of readings, as numbers. */
const readings = (html: string, label: string): number[] => {
  const cells = new RegExp(`<th>${label}</th>(.*?)</tr>`, 's').exec(html)![1]!;
  return [...cells.matchAll(/<td[^>]*>([\d\u202f.]+)<\/td>/g)].map(([, n]) =>
    Number(n!.replaceAll('\u202f', '')),
  );
};

describe('the grams', () => {
  it('A stands before B, in 28 pt, and both are those of the batch', () => {
    const prepared = pourOf();
    const html = sheetOf(prepared);
    const { partAG, partBG } = prepared.batch;
    expect(textOf(html)).toContain(`A ${partAG} g B ${partBG} g`);
    expect(html).toMatch(/\.mix b\s*\{[^}]*font-size:\s*28pt/);
    expect(html).toMatch(/font:\s*12pt/);
  });

  it('B is weighed first and read; for each reading stands the A that belongs to it: A = B x 100/55', () => {
    const prepared = pourOf();
    const html = sheetOf(prepared);
    const [b, a, both] = ['B read, g', 'then A is, g', 'scale not zeroed, g'].map((l) => readings(html, l));
    expect(b).toHaveLength(7);
    expect(b![3]).toBe(prepared.batch.partBG);
    expect(a![3]).toBe(prepared.batch.partAG);
    b!.forEach((bG, n) => {
      // The plan's own pair is rounded together, so that A + B is the total; all others to half a gram.
      const off = n === 3 ? Math.abs(prepared.batch.ratioErrorShare) * a![n]! + 1e-9 : 0.5;
      expect(Math.abs(a![n]! - (bG * 100) / 55)).toBeLessThanOrEqual(off);
      expect(both![n]).toBe(bG + a![n]!);
      if (n > 0) expect(bG).toBeGreaterThan(b![n - 1]!);
    });
    expectClose(b![0]! / b![3]!, 0.97, 5e-3, 'lowest reading');
    expect(textOf(html)).toMatch(/Weigh B into the mixing cup, read it .* then A is/);
  });

  it('a fine scale shows its decimals, a coarse one steps that are a step apart', () => {
    const fine = sheetOf(pourOf({}, { scaleStepG: { value: 0.1, from: 'given' } }));
    expect(textOf(fine)).toMatch(/A \d+\.\d g B \d+\.\d g/);
    const coarse = readings(sheetOf(pourOf({}, { scaleStepG: { value: 10, from: 'given' } })), 'B read, g');
    coarse.slice(1).forEach((bG, n) => expect(bG - coarse[n]!).toBeGreaterThanOrEqual(10));
  });

  it('several cups: a pair of grams for each, or for all alike', () => {
    const two = pourOf({ cups: { cupCm3: 1200, mixers: 2 } });
    expect(two.cups.cups.length).toBe(2);
    const { partAG, partBG } = two.cups.cups[0]!;
    const pair = `A ${partAG} g B ${partBG} g`;
    expect(textOf(sheetOf(two))).toContain(`cup 1 ${pair} cup 2 ${pair}`);
    const many = pourOf({ cups: { cupCm3: 400 } });
    expect(many.cups.cups.length).toBeGreaterThan(4);
    expect(textOf(sheetOf(many))).toContain(`each of ${many.cups.cups.length} cups A`);
  });

  it('by volume the label says so, and the grams are by weight all the same', () => {
    const html = sheetOf(
      pourOf({}, { ratio: { a: 1, b: 2, by: 'volume' }, partDensities: { aKgM3: 1220, bKgM3: 1050 } }),
    );
    expect(textOf(html)).toContain('A:B 1:2 by volume');
  });
});

describe('what else the caster holds', () => {
  it('color a cup by mass, with drops beside it', () => {
    const prepared = pourOf({
      cups: { cupCm3: 1200 },
      colors: [{ name: 'umber', share: 0.01, of: 'B', weighedDrops: { drops: 25, dropsG: 1.1 } }],
    });
    const { partBG } = prepared.cups.cups[0]!;
    const found = /umber ([\d.]+) g/.exec(textOf(sheetOf(prepared)))!;
    // A hundredth of the B of one cup; each cup holds a residue of its own, so the cups hold a little more than the batch.
    expectClose(Number(found[1]), partBG / 100, 0.07, 'color a cup');
    expect(textOf(sheetOf(prepared))).toContain('each cup');
  });

  it('temperatures to reach, straps and plug to hold, the window by the clock, and when to open', () => {
    const told = {
      warm: { wallMm: 10, sides: 1, surroundings: 'still box', airTempC: 50, targetTempC: 36 },
      roomC: 20,
      ingredientsC: 22,
      clamp: { projectedCm2: 300, plugCm2: 20 },
      foam: { creamS: 60, openMin: 25 },
    } as const;
    const prepared = pourOf(told);
    const text = textOf(sheetOf(prepared, { told }));
    expect(text).toContain('to reach 36 \u00b0C');
    expect(text).toContain('planned 22 \u00b0C');
    expect(text).toMatch(/pour within \d+ min/);
    expect(text).toMatch(/\d+ straps? at .* N/);
    expect(text).toMatch(/Plug in reach, vented, with what holds \d+ N/);
    expect(text).toContain('by 0:55 All poured');
    expect(text).toContain('25 min Open, if it is quiet and cool');
    for (const column of ['Clock', 'What', 'Time of day']) expect(text).toContain(column);
  });

  it('what is not known is a line to write on, not a guess', () => {
    const text = textOf(sheetOf(pourOf()));
    expect(text).toContain('27 \u00b0C to 45 \u00b0C is common');
    expect(text).toContain('time not known: write it down');
    expect(text).toContain('time not known; 20 to 60 min common');
  });

  it('blanks with their unit for the weigh-back', () => {
    const text = textOf(sheetOf(pourOf()));
    for (const what of ['A weighed', 'B weighed', 'Left in the cup', 'Trimmed off', 'Casting'])
      expect(text).toMatch(new RegExp(`${what} \\s*g`));
    expect(text).toMatch(/filled .* short/);
  });
});

describe('what the mold is known for', () => {
  const spot = (n: number, thicknessMm: number) =>
    ({ kind: 'thin foam', n, thicknessMm, slenderness: 3, atMm: [0, 0, 0], normal: [0, 0, 1] }) as const;

  it('thin places are freed first, the thinnest first, by their numbers on the place card; beyond three they are counted', () => {
    const places = [spot(4, 7.83), spot(5, 6.1), spot(7, 9.4), spot(8, 11)];
    const opening = { kind: 'opening', n: 1, diameterMm: 30, atMm: [0, 0, 0], normal: [0, 0, 1] } as const;
    const text = textOf(sheetOf(pourOf(), { places: [opening, ...places] }));
    expect(text).toContain('Free first, by place card: 5 (6.1 mm), 4 (7.8 mm) and 7 (9.4 mm), then 1 more');
    expect(textOf(sheetOf(pourOf(), { places: [opening] }))).not.toContain('Free first');
    expect(textOf(sheetOf(pourOf()))).not.toContain('Free first');
  });

  it('the last three pours out of it, a line each, with what was written down of them and no more', () => {
    const before = [1, 2, 3, 11].map((no) => ({ no, pack: 1 + no / 20 }));
    const text = textOf(
      sheetOf(pourOf(), {
        before: [
          ...before,
          { no: 12, mixedG: 577, pack: 1.3, moldC: 37, opening: 'plug', filled: 'full', skin: 3 },
          { no: 13 },
        ],
      }),
    );
    expect(text).toContain(
      'Last out of this mold No. 11: pack 1.55 No. 12: 577 g, pack 1.30, mold 37 \u00b0C, plugged, full, skin 3 of 5 No. 13: nothing written down',
    );
    expect(text).not.toContain('No. 3:');
    expect(textOf(sheetOf(pourOf()))).not.toContain('Last out of this mold');
  });
});

describe('cautions and checks', () => {
  it('every caution that applies is on it, by its name; one that does not is not', () => {
    const text = textOf(sheetOf(pourOf()));
    for (const { when } of pourCautions()) expect(text).toContain(when);
    const told = pourOf({
      moldC: 31,
      facts: { moldWater: 'none', mixingMethod: 'hand', plugN: 0 },
    });
    for (const key of ['damp-mold', 'cold-mold', 'drill', 'plug-force'])
      expect(sheetOf(told)).not.toContain(`data-key="${key}"`);
    for (const { key } of pourCautions([])) expect(sheetOf(told)).toContain(`data-key="${key}"`);
  });

  it('a cold mold, even foam by drill, colors that ruin the mix: in so many words', () => {
    const text = textOf(sheetOf(pourOf()));
    expect(text).toContain('rises less and leaves uneven places');
    expect(text).toContain('A drill gives a more even foam than mixing by hand alone');
    expect(text).toContain('Silicone, oil or acrylic color in the mix ruins it');
    expect(text).toContain('Do not pour until someone has confirmed that it is dry');
    expect(text).toContain('never in a closed bin');
    expect(text).toContain('Gloves off before you touch it');
  });

  it('heat and measure: warnings of a heat gun stand where one is used', () => {
    const gun = pourOf({
      warm: { wallMm: 10, sides: 1, surroundings: 'heat gun', airTempC: 200, targetTempC: 36 },
    });
    expect(textOf(sheetOf(gun))).toContain('Only on an empty, dry mold, away from solvent, release and wax');
    expect(textOf(sheetOf(pourOf()))).not.toContain('Keep it moving');
  });

  it('the push on a plug is in newtons, with the mass that would weigh as much', () => {
    const prepared = pourOf({ clamp: { plugCm2: 50 } });
    const kg = prepared.forces.plugN! / 9.80665;
    expect(textOf(sheetOf(prepared))).toContain(`as ${Number(kg.toPrecision(2))} kg would weigh`);
  });

  it('a plan that says Stop says so on the paper, and a Stop of the scan too', () => {
    const damp = textOf(sheetOf(pourOf({ facts: { moldWater: 'not confirmed dry' } })));
    expect(damp).toContain('Stop, do not pour on this plan');
    expect(textOf(sheetOf(pourOf()))).toContain('Checks: no Stop');
    const wall = finding('CORE_WALL', 'stop', { thinnestMm: 4, stopMm: 6, lookMm: 10 });
    expect(textOf(sheetOf(pourOf(), { findings: [wall] }))).toContain('thinnest wall');
  });
});

describe('the page as a file', () => {
  it('no script, nothing from elsewhere, text only as text', () => {
    const nasty = `<script>alert(1)</script>"&'`;
    const html = sheetOf(
      pourOf({ colors: [{ name: `<img src=x onerror=alert(1)>`, share: 0.01, of: 'B' }] }),
      { title: nasty, jobCode: nasty, lot: nasty, foam: nasty, date: nasty, version: nasty },
    );
    expect(html).not.toMatch(/<(script|img|link|iframe|object|embed|a|base|form)\b/i);
    const tags = html.match(/<[^>]+>/g)!.join('');
    expect(tags).not.toMatch(/\bsrc=|\bhref=|\son\w+=|url\(|https?:/i);
    expect(/<style>.*<\/style>/s.exec(html)![0]).not.toMatch(/url\(|@import|https?:/i);
    expect(textOf(html)).toContain(nasty);
    expect(html).toContain('<!doctype html>');
  });

  it('job code, version, and a date only if it is given: the clock is not read', () => {
    const html = sheetOf(pourOf(), { jobCode: 'TROLL-13', title: 'Quay Troll head', date: '2026-11-29' });
    for (const part of ['TROLL-13', 'Quay Troll head', '2026-11-29', '0.0.0-test'])
      expect(textOf(html)).toContain(part);
    expect(textOf(sheetOf(pourOf()))).not.toMatch(/\b20\d\d\b/);
    expect(sheetOf(pourOf())).toBe(sheetOf(pourOf()));
  });

  it('no hole in the text, whatever is known', () => {
    for (const prepared of [pourOf(), pourOf({ cups: { cupCm3: 300 } })])
      expect(textOf(sheetOf(prepared))).not.toMatch(/undefined|NaN|null|Infinity|\[object/);
  });

  it('one system on request', () => {
    expect(textOf(sheetOf(pourOf(), { show: 'us' }))).toContain('lb/ft\u00b3');
    expect(textOf(sheetOf(pourOf(), { show: 'us' }))).not.toContain('kg/m\u00b3');
    const ready = textOf(sheetOf(pourOf(), { show: 'us' })).split('Cautions')[0]!;
    expect(ready).toContain('80.6 \u00b0F to 113 \u00b0F is common');
    expect(ready).not.toContain('\u00b0C');
  });
});
