import type { Manifold } from 'manifold-3d';
import { describe, expect, it, vi } from 'vitest';
import { levelShell, levelSurface } from '../../../src/geometry/solids/levelSurface';
import { withManifold } from '../../../src/geometry/solids/manifold';
import { makeSolid } from '../../../src/geometry/solids/makeSolid';
import { sphereField } from '../../support/distances';
import { valueOf } from '../../support/outcome';
import { box } from '../../support/shapes';

// First, before anything has loaded the library.
it('an address where no wasm lies rejects, and does not spoil the next call', async () => {
  await expect(
    withManifold(() => 1, { wasmUrl: new URL('no-such-file.wasm', import.meta.url).href }),
  ).rejects.toThrow();
  expect(await withManifold(({ library }) => typeof library.Manifold.cube)).toBe('function');
});

it('the library is loaded once', async () => {
  const [one, two] = await Promise.all([withManifold((s) => [s.library]), withManifold((s) => [s.library])]);
  expect(one[0]).toBe(two[0]);
});

/** What embind says of its own object; not in the types of the library. */
const isFreed = (made: unknown): boolean => (made as { isDeleted: () => boolean }).isDeleted();

describe('everything owned is freed when the scope ends', () => {
  it('in the reverse order, after the result was read', async () => {
    const freed: string[] = [];
    const made: Manifold[] = [];
    const volume = await withManifold(({ library, own }) => {
      made.push(own(library.Manifold.cube(2)), own(library.Manifold.sphere(1)));
      own({ delete: () => freed.push('first') });
      own({ delete: () => freed.push('second') });
      expect(made.some(isFreed)).toBe(false);
      return made[0]!.volume();
    });
    expect(volume).toBe(8);
    expect(made.map(isFreed)).toEqual([true, true]);
    expect(freed).toEqual(['second', 'first']);
  });

  it('when the work throws, and the error comes through', async () => {
    const made: Manifold[] = [];
    const work = withManifold(({ library, own }) => {
      made.push(own(library.Manifold.cube(2)));
      throw new Error('halfway');
    });
    await expect(work).rejects.toThrow('halfway');
    expect(made.map(isFreed)).toEqual([true]);
  });

  it('a promise from the work is refused: its objects would be gone before it settles', async () => {
    await expect(withManifold(() => Promise.resolve(1))).rejects.toThrow(/expected plain data/);
  });

  it('levels, shells, cuts, simplified ones and failed ones: nothing made by our code stays in the library', async () => {
    const { made, restore } = await watchMade();
    try {
      const field = sphereField(10);
      const options = { ...field, edgeMm: 2, baseMm: -3, simplifyMm: 0.05 };
      valueOf(await levelSurface({ ...options, levelMm: 0 }));
      valueOf(await levelShell({ ...options, innerMm: 0, outerMm: 3 }));
      valueOf(await makeSolid(box([1, 2, 3])));
      await expect(levelSurface({ ...options, distanceAtMm: () => NaN, levelMm: 0 })).rejects.toThrow('NaN');
    } finally {
      restore();
    }
    // One level, its simplification and its cut; two of each, their difference and its cut; and the failed level.
    expect(made.length).toBe(3 + 6 + 1);
    expect(made.filter((one) => !isFreed(one))).toEqual([]);
  });
});

/** Every Manifold object that the calls our code uses hand out. */
async function watchMade(): Promise<{ made: unknown[]; restore: () => void }> {
  const made: unknown[] = [];
  const noted = (one: Manifold): Manifold => {
    made.push(one);
    return one;
  };
  const [library, methods] = await withManifold(({ library, own }) => {
    const prototype = Object.getPrototypeOf(own(library.Manifold.cube(1))) as Manifold;
    return [library, prototype] as const;
  });
  const levelSet = library.Manifold.levelSet.bind(library.Manifold);
  const spies = [
    vi.spyOn(library.Manifold, 'levelSet').mockImplementation((...args) => noted(levelSet(...args))),
    ...(['trimByPlane', 'subtract', 'simplify'] as const).map((name) => {
      const original = Reflect.get(methods, name) as (...args: unknown[]) => Manifold;
      return vi.spyOn(methods, name).mockImplementation(function (this: Manifold, ...args: unknown[]) {
        return noted(original.apply(this, args));
      });
    }),
  ];
  return { made, restore: () => spies.forEach((spy) => spy.mockRestore()) };
}
