import { describe, expect, it } from 'vitest';
import { planMold, type Mold, type MoldAsk } from '../../src/plan';
import { finding } from '../../src/problem';
import { moldSheet, type SectionFaces } from '../../src/sheet';
import { sectionDrawing } from '../../src/sheet/sectionDrawing';
import { gramsText } from '../../src/units';
import { benchOf } from '../support/moldBench';
import { ballOn } from '../support/moldShapes';
import { valueOf } from '../support/outcome';
import { textOf } from '../support/sheetOf';

const META = { title: 'A ball', version: '0.0.0-test' };
const bench = benchOf(ballOn(50), { accuracy: 'fast' });
const moldOf = (ask: Partial<MoldAsk> = {}): Mold =>
  valueOf(planMold(bench, { type: 'blanket', settings: { base: 'open', skinMm: 10 }, ...ask }));

/** A circle in the plane y = 0, counter-clockwise seen from +y. */
const circle = (radiusMm: number, sides = 360): Float64Array =>
  Float64Array.from({ length: 3 * sides }, (_, i) => {
    const turn = (2 * Math.PI * Math.floor(i / 3)) / sides;
    return [radiusMm * Math.sin(turn), 0, radiusMm * Math.cos(turn)][i % 3]!;
  });

const SHELLS: SectionFaces = {
  plane: { axis: 'y', atMm: 0 },
  faces: [
    { part: 'sculpt', outlines: [circle(50)] },
    { part: 'skin', outlines: [circle(60)] },
    { part: 'jacket', outlines: [circle(66)] },
  ],
};

/** Left and right end of the outline of a part, mm on paper. */
function endsOf(svg: string, part: string): [number, number] {
  const d = new RegExp(`class="${part}"[^>]* d="([^"]+)"`).exec(svg)![1]!;
  const xs = [...d.matchAll(/[ML](-?[\d.]+) /g)].map(([, x]) => Number(x));
  return [Math.min(...xs), Math.max(...xs)];
}

describe('a mold cut open', () => {
  const svg = sectionDrawing(SHELLS);
  const scale = Number(/data-scale="([\d.]+)"/.exec(svg)![1]);

  it('shows every wall in its true thickness, at a round scale', () => {
    expect(scale).toBe(2);
    const [skin, jacket] = [endsOf(svg, 'skin'), endsOf(svg, 'jacket')];
    // Written to a hundredth of a millimeter on paper.
    expect(Math.abs(jacket[1] - skin[1] - 6 / scale)).toBeLessThan(0.011);
    expect(Math.abs(skin[1] - skin[0] - 120 / scale)).toBeLessThan(0.021);
  });

  it('says how long its bar is, and the bar is that long', () => {
    const [, onPaperMm, lengthMm] = /class="bar"><svg width="([\d.]+)mm".*?<\/svg> (\d+) mm/.exec(svg)!;
    expect(Number(onPaperMm) * scale).toBeCloseTo(Number(lengthMm), 9);
  });

  it('is seen from the front with the right of the piece at the left of the paper', () => {
    const off: SectionFaces = {
      plane: { axis: 'y', atMm: 0 },
      faces: [
        { part: 'sculpt', outlines: [circle(10).map((c, i) => (i % 3 === 0 ? c + 40 : c))] },
        { part: 'block', outlines: [circle(60)] },
      ],
    };
    const drawn = sectionDrawing(off);
    const inner = [...drawn.matchAll(/class="sculpt" d="([^"]+)"/g)].at(-1)![1]!;
    const xs = [...inner.matchAll(/[ML](-?[\d.]+) /g)].map(([, x]) => Number(x));
    // Its own right, +x, lies left of the middle of the block.
    const [from, to] = endsOf(drawn, 'block');
    expect(Math.max(...xs)).toBeLessThan((from + to) / 2);
  });

  it('is nothing where nothing lies at the plane', () => {
    expect(
      sectionDrawing({ plane: { axis: 'z', atMm: 900 }, faces: [{ part: 'sculpt', outlines: [] }] }),
    ).toBe('');
  });
});

describe('the mold sheet', () => {
  const mold = moldOf({ silicone: { kits: [{ massKg: 1.1 }] } });

  it('has the grams of base and catalyst of the plan, mix by mix, and they add up', () => {
    const text = textOf(moldSheet(mold, META));
    const { baseG, catalystG, totalG, pours } = mold.silicone;
    const step = pours[0]!.order.stepG;
    expect(text).toContain(`base ${gramsText(baseG, step)} g`);
    expect(text).toContain(`catalyst ${gramsText(catalystG, step)} g`);
    expect(baseG + catalystG).toBeCloseTo(totalG, 9);
    expect(text).toMatch(/To buy: \d kits? of 1\.1 kg/);
    const boxes = (moldSheet(mold, META).match(/class="box"/g) ?? []).length;
    expect(boxes).toBe(pours.reduce((sum, { order }) => sum + order.mixes.length, 0));
  });

  it('says what each wall of the section is, and that there is none where it was not cut', () => {
    expect(textOf(moldSheet(mold, { ...META, section: SHELLS }))).toMatch(
      /seen from its front.*White: the sculpt.*close lines: silicone; wide lines: jacket/,
    );
    expect(textOf(moldSheet(mold, META))).toContain('no section is drawn');
  });

  it('says a Stop of the scan in a frame, and takes no tag from a title', () => {
    const stop = finding('LOCKED_PIECE', 'stop', { n: 1, neckMm: 94, bulbMm: 251, stretchShare: 1.1 });
    const page = moldSheet(mold, { ...META, title: '<b>x</b>', findings: [stop] });
    expect(textOf(page)).toMatch(/Stop, do not build on this plan: .*Part 1 is locked/);
    expect(page).not.toContain('<b>x</b>');
  });

  it('same mold and meta, same bytes', () => {
    expect(moldSheet(mold, { ...META, section: SHELLS })).toBe(moldSheet(mold, { ...META, section: SHELLS }));
  });
});
