import { describe, expect, it } from 'vitest';
import { isSame, stableText } from '../../src/job/json';
import { merge } from '../../src/job/merge';

describe('two pages that changed the same record', () => {
  const base = { name: 'Troll', fields: { tape: { text: '290' }, pack: { text: '1.2' } }, list: [1, 2] };

  it('both keep their changes where they are of different boxes, whoever comes second', () => {
    const mine = { ...base, fields: { ...base.fields, tape: { text: '291' } } };
    const theirs = { ...base, name: 'Quay Troll', fields: { ...base.fields, pack: { text: '1.3' } } };
    const both = {
      name: 'Quay Troll',
      fields: { tape: { text: '291' }, pack: { text: '1.3' } },
      list: [1, 2],
    };
    expect(merge({ base, mine, theirs })).toEqual(both);
    expect(merge({ base, mine: theirs, theirs: mine })).toEqual(both);
  });

  it('of the same box keep what came last', () => {
    const mine = { ...base, name: 'Mine' };
    expect(merge({ base, mine, theirs: { ...base, name: 'Theirs' } }).name).toBe('Mine');
  });

  it('lose a key that one took away, unless the other has changed what stood there', () => {
    const mine: Partial<typeof base> = { ...base };
    delete mine.list;
    expect(merge<Partial<typeof base>>({ base, mine, theirs: { ...base, name: 'X' } })).toEqual({
      name: 'X',
      fields: base.fields,
    });
    expect(merge<Partial<typeof base>>({ base, mine, theirs: { ...base, list: [9] } }).list).toEqual([9]);
    expect(merge<Partial<typeof base>>({ base, mine: { ...base, name: 'X' }, theirs: mine })).toEqual({
      name: 'X',
      fields: base.fields,
    });
  });

  it('take lists whole and keep what both added', () => {
    expect(merge({ base, mine: { ...base, list: [3] }, theirs: { ...base, list: [1, 2, 4] } }).list).toEqual([
      3,
    ]);
    const none: Record<string, number> = {};
    expect(merge({ base: none, mine: { a: 1 }, theirs: { b: 2 } })).toEqual({ a: 1, b: 2 });
  });

  it('give what the other kept where nothing was changed here', () => {
    const theirs = { ...base, name: 'Theirs' };
    expect(merge({ base, mine: structuredClone(base), theirs })).toEqual(theirs);
  });
});

describe('stable text', () => {
  it('is the same for the same content, whatever the order it was said in, at every depth', () => {
    const one = { b: [{ y: 1, x: 2 }], a: { d: null, c: 'é' } };
    const other = { a: { c: 'é', d: null }, b: [{ x: 2, y: 1 }] };
    expect(stableText(one)).toBe('{"a":{"c":"é","d":null},"b":[{"x":2,"y":1}]}');
    expect(stableText(other)).toBe(stableText(one));
    expect(isSame(one, other)).toBe(true);
    expect(isSame(one, { ...other, e: 1 })).toBe(false);
    expect(isSame([1, 2], [2, 1])).toBe(false);
  });

  it('keeps a key called __proto__ a key', () => {
    const odd = JSON.parse('{"z":1,"__proto__":{"a":1}}') as object;
    expect(JSON.parse(stableText(odd))).toEqual(odd);
    expect(Object.keys(JSON.parse(stableText(odd)) as object)).toContain('__proto__');
  });
});
