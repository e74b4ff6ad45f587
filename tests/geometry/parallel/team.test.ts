import { describe, expect, it } from 'vitest';
import { HelperMissing, joinTeam, newControl, TeamStopped } from '../../../src/geometry/parallel/team';

describe('a team of one', () => {
  it('meets without waiting, in plain memory', () => {
    const alone = joinTeam(newControl(false), 0, 1);
    for (let i = 0; i < 100; i++) alone.meet();
    expect([alone.id, alone.size]).toEqual([0, 1]);
  });

  it('counts from zero, by ones or by runs, each counter for itself', () => {
    const alone = joinTeam(newControl(true), 0, 1);
    expect([alone.take(0), alone.take(0), alone.take(1, 512), alone.take(1, 512), alone.take(0)]).toEqual([
      0, 1, 0, 512, 2,
    ]);
  });
});

it('members take what is left of a common counter: together every piece once', () => {
  const control = newControl(true);
  const members = [0, 1, 2].map((id) => joinTeam(control, id, 3));
  const taken = Array.from({ length: 30 }, (_, i) => members[(i * i) % 3]!.take(2));
  expect(taken).toEqual(Array.from({ length: 30 }, (_, i) => i));
});

it('shares are runs that follow each other and cover all, the longest a piece longer than the shortest', () => {
  for (const size of [1, 2, 3, 4, 7])
    for (const total of [0, 1, 2, 6, 7, 100, 12345]) {
      const shares = Array.from({ length: size }, (_, id) =>
        joinTeam(newControl(false), id, size).share(total),
      );
      expect(shares[0]![0]).toBe(0);
      expect(shares.at(-1)![1]).toBe(total);
      shares.slice(1).forEach(([from], i) => expect(from).toBe(shares[i]![1]));
      const lengths = shares.map(([from, to]) => to - from);
      expect(Math.max(...lengths) - Math.min(...lengths)).toBeLessThanOrEqual(1);
    }
});

describe('a helper that does not come', () => {
  it('is not waited for without end: the caller is told, and a helper that comes late finds the team stopped', () => {
    const control = newControl(true);
    const caller = joinTeam(control, 0, 2, undefined, 60);
    expect(() => caller.meet()).toThrow(HelperMissing);
    expect(() => joinTeam(control, 1, 2).meet()).toThrow(TeamStopped);
  });
});

describe('a stop', () => {
  it('ends every member at its next meeting or take', () => {
    const control = newControl(true);
    const [one, other] = [0, 1].map((id) => joinTeam(control, id, 2)) as [
      ReturnType<typeof joinTeam>,
      ReturnType<typeof joinTeam>,
    ];
    expect(one.take(0)).toBe(0);
    one.stop();
    for (const member of [one, other]) {
      expect(() => member.take(0)).toThrow(TeamStopped);
      expect(() => member.meet()).toThrow(TeamStopped);
    }
  });

  it('can be asked for in the middle of a take or a meeting', () => {
    const control = newControl(false);
    const alone = joinTeam(control, 0, 1, () => alone.stop());
    expect(() => alone.take(0)).toThrow(TeamStopped);
    expect(() => joinTeam(control, 0, 1).meet()).toThrow(TeamStopped);
  });
});

it('is told of every take and meeting', () => {
  let told = 0;
  const alone = joinTeam(newControl(false), 0, 1, () => told++);
  alone.take(0);
  alone.meet();
  alone.take(1, 512);
  expect(told).toBe(3);
});
