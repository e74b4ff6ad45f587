import { describe, expect, it } from 'vitest';
import { createSaver, type Saving } from '../../src/store/saver';

/** A write that ends when it is told to. */
function slowWrite() {
  const ends: { ok: () => void; fail: (fault: Error) => void }[] = [];
  const write = (): Promise<void> => new Promise((ok, fail) => ends.push({ ok, fail }));
  return { ends, write };
}
const turn = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

describe('the saver', () => {
  it('writes one at a time, and what came meanwhile in one more', async () => {
    const { ends, write } = slowWrite();
    const told: Saving['state'][] = [];
    const saver = createSaver(write, ({ state }) => told.push(state));
    saver.save();
    saver.save();
    saver.save();
    expect(ends).toHaveLength(1);
    expect(saver.isKept()).toBe(false);
    ends[0]!.ok();
    await turn();
    expect(ends).toHaveLength(2);
    ends[1]!.ok();
    await saver.settled();
    expect(ends).toHaveLength(2);
    expect(told).toEqual(['keeping', 'keeping', 'kept']);
    expect(saver.isKept()).toBe(true);
  });

  it('tells a write that failed, is not settled as kept, and tries again with the next', async () => {
    const { ends, write } = slowWrite();
    const told: Saving[] = [];
    const saver = createSaver(write, (saving) => told.push(saving));
    saver.save();
    ends[0]!.fail(new Error('no room'));
    await saver.settled();
    expect(told.at(-1)).toEqual({ state: 'failed', fault: new Error('no room') });
    expect(saver.isKept()).toBe(false);
    await turn();
    saver.save();
    expect(ends).toHaveLength(2);
    ends[1]!.ok();
    await saver.settled();
    expect(saver.isKept()).toBe(true);
  });
});
