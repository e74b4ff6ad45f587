import { describe, expect, it } from 'vitest';
import { seenCasting, seenSculpt, type Outline } from '../../src/job/seen';
import { outlineOf } from '../../src/app/shelf/outlineOf';
import { newPiece } from '../../src/app/ticket/newPiece';
import { pourNow, sizeNow } from '../../src/app/ticket/now';
import { pieceWith } from '../../src/app/ticket/record';
import { seenNow, withSeen } from '../../src/app/ticket/seenNow';
import { wordsOf } from '../../src/app/ticket/words';
import { emptyCore } from '../../src/store';
import { expectClose } from '../support/close';
import { poured, settle, step, type } from './pageEngine';
import { box, sphere } from '../support/shapes';

const OUTLINE: Outline = { view: 'front', wide: 500, tall: 1000, lines: [[0, 0, 500, 0, 500, 1000]] };
const version = '1';
const piece = newPiece({ name: 'Box', today: '2026-01-01', core: emptyCore() });

describe('what is kept for the Shelf', () => {
  it('is what the ticket says: the size, its range and source, and the grams of all cups', () => {
    const { ticket } = poured();
    const kept = pieceWith(piece, wordsOf(ticket));
    const seen = withSeen(kept, seenNow(ticket, { piece: kept, outline: OUTLINE, version }));
    const { size } = sizeNow(ticket).answer!;
    const { batch, cups } = pourNow(ticket).answer!;
    expect(seenSculpt(seen, version)).toMatchObject({
      outline: OUTLINE,
      size: { extentsMm: [100, 100, 200], volumeCm3: size.volumeCm3 },
    });
    expect(seenCasting(seen, seen.hand.casting, version)).toMatchObject({
      partAG: cups.partAG,
      partBG: cups.partBG,
      packFactor: batch.packFactor,
      day: ticket.today,
    });
  });

  it('is nothing from the first keystroke on that changes it, and is there again when it is worked out', () => {
    const { ticket, desk } = poured();
    const kept = pieceWith(piece, wordsOf(ticket));
    const seen = withSeen(kept, seenNow(ticket, { piece: kept, outline: OUTLINE, version }));
    const typed = step(ticket, ...type('tape', '210'));
    expect(seenNow(typed, { piece: seen, outline: undefined, version })).toEqual({});
    const changed = pieceWith(seen, wordsOf(typed));
    expect(seenSculpt(changed, version)).toBeUndefined();
    expect(seenCasting(changed, changed.hand.casting, version)).toBeUndefined();
    const worked = settle(typed, desk);
    const again = withSeen(changed, seenNow(worked, { piece: changed, outline: undefined, version }));
    // A cube of the scale: 2000 cm3 at 200 mm.
    expectClose(seenSculpt(again, version)!.size!.volumeCm3.value, 2000 * 1.05 ** 3, 1e-9);
  });

  it('keeps the outline that was drawn for the same words while a new one is drawn, and drops one of other words', () => {
    const { ticket } = poured();
    const kept = pieceWith(piece, wordsOf(ticket));
    const seen = withSeen(kept, seenNow(ticket, { piece: kept, outline: OUTLINE, version }));
    const now = seenNow(ticket, { piece: seen, outline: undefined, version });
    expect(now.sculpt?.outline).toEqual(OUTLINE);
    const turned = step(ticket, { do: 'up', axis: '+x' });
    expect(seenNow(turned, { piece: seen, outline: undefined, version }).sculpt).toBeUndefined();
  });

  it('looked at on another day is as old as it is', () => {
    const { ticket, desk } = poured();
    const on = (today: string) => settle({ ...ticket, today }, desk);
    const kept = pieceWith(piece, wordsOf(ticket));
    const seen = withSeen(kept, seenNow(on('2026-01-05'), { piece: kept, outline: OUTLINE, version }));
    const later = seenNow(on('2026-02-05'), { piece: seen, outline: OUTLINE, version });
    expect(later.casting?.seen.day).toBe('2026-01-05');
    expect(withSeen(seen, later)).toEqual(seen);
  });

  it('goes to the casting it was said of, although another is in hand meanwhile', () => {
    const { ticket } = poured();
    const kept = pieceWith(piece, wordsOf(ticket));
    const now = seenNow(ticket, { piece: kept, outline: undefined, version });
    const { casting, mold } = kept.hand;
    const moved = {
      ...kept,
      castings: { ...kept.castings, other: { no: 2, mold, fields: {}, choices: {} } },
      hand: { mold, casting: 'other' },
    };
    const seen = withSeen(moved, now);
    expect(seenCasting(seen, casting, version)).toBeDefined();
    expect('seen' in seen.castings.other!).toBe(false);
  });
});

describe('the outline of a piece', () => {
  it('is a box as wide and as tall as it is, from the front', () => {
    const outline = outlineOf(box([100, 50, 200]))!;
    expect(outline).toMatchObject({ view: 'front', tall: 1000 });
    expect(Math.abs(outline.wide - 500)).toBeLessThanOrEqual(1);
    const [line] = outline.lines;
    expect(outline.lines).toHaveLength(1);
    const xs = line!.filter((_, i) => i % 2 === 0);
    const ys = line!.filter((_, i) => i % 2 === 1);
    expect([Math.min(...xs), Math.min(...ys), Math.max(...ys)]).toEqual([0, 0, 1000]);
  });

  it('is from above where it lies flat', () => {
    expect(outlineOf(box([500, 140, 60]))!.view).toBe('top');
    expect(outlineOf(box([400, 300, 250]))!.view).toBe('front');
  });

  it('of a ball is a circle to half a hundredth of its width, in few points', () => {
    const { lines, wide, tall } = outlineOf(sphere(50, 96))!;
    expect([wide, tall]).toEqual([1000, 1000]);
    const [line] = lines;
    expect(line!.length).toBeLessThan(120);
    for (let i = 0; i < line!.length; i += 2)
      expect(Math.abs(Math.hypot(line![i]! - 500, line![i + 1]! - 500) - 500)).toBeLessThan(5);
  });

  it('of nothing is none', () => {
    expect(outlineOf({ positions: new Float64Array(), triangles: new Int32Array() })).toBeUndefined();
  });

  it('has its own right at the left of whoever looks at its front', () => {
    // A box with a thin arm on its +x side, which is its own right.
    const body = box([100, 50, 100]);
    const arm = box([100, 20, 20]);
    for (let i = 0; i < arm.positions.length; i += 3) arm.positions[i]! += 100;
    const both = {
      positions: Float64Array.from([...body.positions, ...arm.positions]),
      triangles: Int32Array.from([
        ...body.triangles,
        ...Array.from(arm.triangles, (v) => v + body.positions.length / 3),
      ]),
    };
    const outline = outlineOf(both)!;
    const full = outline.lines.flat().filter((_, i) => i % 2 === 0 && outline.lines.flat()[i + 1]! < 10);
    expect(Math.min(...full)).toBeGreaterThan(outline.wide / 3);
  });
});
