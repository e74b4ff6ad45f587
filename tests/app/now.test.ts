import { describe, expect, it } from 'vitest';
import { bad, good } from '../../src/problem';
import { announce } from '../../src/app/words/announce';
import { asksOf } from '../../src/app/ticket/asks';
import { pourNow, sizeNow } from '../../src/app/ticket/now';
import { answer } from '../../src/worker/answer';
import type { Answers } from '../../src/worker/protocol';
import { expectClose } from '../support/close';
import { openBox, poured, settle, source, step, still, type } from './pageEngine';

describe('what the page may show as the answer', () => {
  it('drops volume and grams with the first keystroke, before anything is asked', () => {
    const { ticket } = poured();
    const typed = step(ticket, ...type('tape', '210'));
    expect(asksOf(typed)).toEqual([]);
    expect(sizeNow(typed)).toEqual({ state: 'working' });
    expect(pourNow(typed)).toEqual({ state: 'working' });
    expect(announce(typed)).not.toMatch(/\d/);
  });

  it('drops only the grams when the pack is typed', () => {
    const { ticket } = poured();
    const typed = step(ticket, ...type('pack', '1.4'));
    expect(sizeNow(typed).state).toBe('answered');
    expect(pourNow(typed)).toEqual({ state: 'working' });
  });

  it('shows the answer again at once where what was typed is what it was asked with', () => {
    const { ticket } = poured();
    const back = step(ticket, ...type('pack', '1.4'), ...type('pack', ''));
    expect(pourNow(back).answer).toBe(pourNow(ticket).answer);
  });

  it.each(['1,250', 'abc', '-5'])('has neither volume nor grams while the tape reads %s', (text) => {
    const { ticket } = poured();
    const typed = step(ticket, ...type('tape', text));
    expect(sizeNow(typed)).toEqual({ state: 'unread', field: 'tape' });
    expect(pourNow(typed).state).toBe('open');
    expect(asksOf(step(typed, still)).map(({ job }) => job)).toEqual([]);
  });

  it.each(['1,250', 'abc', ''])(
    'has neither volume nor grams while the height of a cut reads "%s"',
    (text) => {
      const { ticket, desk } = poured();
      const cut = settle(
        step(ticket, ...type('cutHeight', '20'), { do: 'cut', cut: { by: 'height' } }),
        desk,
      );
      expectClose(sizeNow(cut).answer!.cut!.heightMm, 20, 1e-6, 'height of the cut, mm');
      const typed = step(cut, ...type('cutHeight', text));
      expect(sizeNow(typed)).toEqual({ state: 'unread', field: 'cutHeight' });
      expect(pourNow(typed).state).toBe('open');
    },
  );

  it('has neither volume nor grams with no tape at all, and in the same step that refuses the size', () => {
    const { ticket, desk } = poured();
    const blank = step(ticket, ...type('tape', ''));
    expect(pourNow(blank)).toEqual({ state: 'working' });
    const refused = settle(blank, desk);
    expect(sizeNow(refused).problem?.code).toBe('SCALE_UNKNOWN');
    expect(pourNow(refused)).toEqual({ state: 'open' });
  });

  it('has no grams from the step on in which the size is cancelled or fails', () => {
    const { ticket } = poured();
    const typed = step(ticket, ...type('tape', '210'), still);
    const { job, key } = asksOf(typed)[0]!;
    const running = step(typed, { do: 'start', job, key });
    const cancelled = step(running, { do: 'cancel' });
    expect([sizeNow(cancelled).state, pourNow(cancelled).state]).toEqual(['cancelled', 'open']);
    const failed = step(running, { do: 'ended', job, key, ended: { how: 'failed', message: 'boom' } });
    expect(sizeNow(failed)).toEqual({ state: 'failed', message: 'boom' });
    expect(pourNow(failed).state).toBe('open');
    expect(announce(failed)).toContain('A fault of ours');
  });

  it('takes no answer to an older wish for one to the newest', () => {
    const { ticket } = poured();
    const first = step(ticket, ...type('tape', '210'), still);
    const old = asksOf(first)[0]!;
    const second = step(first, { do: 'start', job: 'size', key: old.key }, ...type('tape', '220'), still);
    const started = step(second, { do: 'start', job: 'size', key: asksOf(second)[0]!.key });
    const late = step(started, {
      do: 'ended',
      job: 'size',
      key: old.key,
      ended: { how: 'answered', answer: good(ticket.size.answer!) },
    });
    expect(sizeNow(late)).toEqual({ state: 'working' });
  });

  it('asks for the pour in the step in which the size is answered: only typing waits', () => {
    const { ticket, desk } = poured();
    const typed = step(ticket, ...type('tape', '210'));
    expect(asksOf(typed)).toEqual([]);
    const { job, key, request } = asksOf(step(typed, still))[0]!;
    expect(job).toBe('size');
    const sized = step(
      typed,
      still,
      { do: 'start', job, key },
      {
        do: 'ended',
        job,
        key,
        ended: { how: 'answered', answer: answer(desk, request, () => undefined) as Answers['size'] },
      },
    );
    expect(asksOf(sized).map((ask) => ask.job)).toEqual(['pour', 'mold']);
  });

  it('shows no number of the first scan while a second is read, and all of them when that is refused', () => {
    const { ticket } = poured();
    const reading = step(ticket, { do: 'opening', source: { ...source, name: 'b.stl' } });
    expect([sizeNow(reading).state, pourNow(reading).state]).toEqual(['working', 'working']);
    expect(announce(reading)).toBe('Reading b.stl.');
    const refused = step(reading, {
      do: 'opened',
      source: { ...source, name: 'b.stl' },
      ended: { how: 'answered', answer: bad('EMPTY_FILE') },
    });
    expect(sizeNow(refused).answer).toBe(sizeNow(ticket).answer);
    expect(pourNow(refused).answer).toBe(pourNow(ticket).answer);
  });

  it('shows nothing of the first scan once the second is there, even where all that is asked is the same', () => {
    const { ticket, desk } = poured();
    const second = step(openBox(ticket, desk), ...type('tape', '200'), { do: 'up', axis: '+z' });
    expect(sizeNow(second)).toEqual({ state: 'working' });
    expect(pourNow(second)).toEqual({ state: 'working' });
  });
});

describe('what is announced', () => {
  it('names the file and is not held by a refusal that came before', () => {
    const { ticket, desk } = poured();
    const refused = step(
      ticket,
      { do: 'opening', source: { ...source, name: 'b.stl' } },
      {
        do: 'opened',
        source: { ...source, name: 'b.stl' },
        ended: { how: 'answered', answer: bad('EMPTY_FILE') },
      },
    );
    expect(announce(refused)).toMatch(/^b\.stl: /);
    const again = settle(step(refused, ...type('tape', '100')), desk);
    // A box of half the size in all three directions: 2000 cm3 / 8.
    expect(announce(again)).toMatch(
      /^box\.stl: Volume 250\.0 cubic centimeters\. A \d+ grams, B \d+ grams\.$/,
    );
  });
});
