import { expect, it } from 'vitest';
import { readBench, withBench } from '../../src/job/benchState';
import { nextCasting, nextMold } from '../../src/app/ticket/nextCasting';
import { newPiece } from '../../src/app/ticket/newPiece';
import { emptyCore } from '../../src/store';

it('begins a new casting without the bench and the weights of the one before, which keeps them', () => {
  const fresh = newPiece({ name: 'Quay Troll head', today: '2026-01-01', core: emptyCore() });
  const first = fresh.hand.casting;
  const benched = withBench(fresh, first, { ticks: { gloves: true }, isSoundOff: true });
  const weighed = {
    ...benched,
    castings: {
      [first]: Object.assign({ ...benched.castings[first]! }, { weigh: { casting: '511' }, later: 1 }),
    },
  };
  for (const next of [nextCasting(weighed, first), nextMold(weighed)]) {
    const casting = next.castings[next.hand.casting]!;
    expect(Object.keys(casting).sort()).toEqual(['after', 'choices', 'fields', 'later', 'mold', 'no']);
    expect(readBench(next, next.hand.casting).bench.ticks).toEqual({});
    expect(next.castings[first]).toEqual(weighed.castings[first]);
  }
});
