import { describe, expect, it } from 'vitest';
import { lcg } from '../support/lcg';
import { CALLS } from './calls';
import { NUMBERS } from './numbers';
import { PARSERS } from './parsers';
import { seedOf, type Target } from './target';

/** A short run of `npm run fuzz` with a fixed seed: a mutant that fails is run again with `npm run fuzz -- --only NAME --seed 20261130 --at N`. */
const SEED = 20261130;

const ROOMS = [
  ...PARSERS.map((room) => ({ room, count: 200 })),
  { room: NUMBERS, count: 2000 },
  { room: CALLS, count: 80 },
] as { room: Target<unknown>; count: number }[];

describe(`mutants, seed ${SEED}`, () => {
  it.each(ROOMS.map(({ room, count }) => ({ name: room.name, room, count })))(
    '$count of $name are read right, refused, or warned of',
    async ({ room, count }) => {
      const answers = { read: 0, refused: 0 };
      for (let n = 0; n < count; n++) {
        const { answer, fault } = await room.check(room.make(lcg(seedOf(SEED, n))));
        expect(fault, `seed ${SEED}, ${room.name} ${n}`).toBeUndefined();
        answers[answer]++;
      }
      // A run in which everything is refused, or nothing, asks nothing.
      expect(Math.min(answers.read, answers.refused)).toBeGreaterThan(count / 50);
    },
  );

  it('the mutant of a number is the same each time', () => {
    for (const { room } of ROOMS) {
      const [one, other] = [0, 0].map(() => room.fileOf(room.make(lcg(seedOf(SEED, 7)))).bytes);
      expect(Buffer.from(one!).equals(other!)).toBe(true);
    }
  });
});
