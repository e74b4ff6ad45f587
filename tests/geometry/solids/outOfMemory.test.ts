import { afterEach, describe, expect, it, vi } from 'vitest';
import { levelSurface } from '../../../src/geometry/solids/levelSurface';
import { makeSolid } from '../../../src/geometry/solids/makeSolid';
import { withManifold } from '../../../src/geometry/solids/manifold';
import { SolidsOutOfMemory } from '../../../src/geometry/solids/solidsOutOfMemory';
import { readScan } from '../../../src/geometry';
import { offsetSurface } from '../../../src/plan/offsetSurface';
import { sphereField } from '../../support/distances';
import { valueOf } from '../../support/outcome';
import { box } from '../../support/shapes';
import { stlBytes } from '../../support/writeMesh';

afterEach(() => vi.restoreAllMocks());

/** No memory is to be had beyond what the wasm begins with: the browser, or Node, refuses to give more. */
function noMoreMemory(): void {
  vi.spyOn(WebAssembly.Memory.prototype, 'grow').mockImplementation(() => {
    throw new RangeError('WebAssembly.Memory.grow(): Maximum memory size exceeded');
  });
}

const volumeOf = async (size: [number, number, number]): Promise<number> =>
  valueOf(await makeSolid(box(size))).volumeMm3;
const fine = { ...sphereField(50), edgeMm: 0.5, levelMm: 0 };

describe('where the memory of the library runs out', () => {
  it('it is told as that, the library is not used again, and a small solid is right after it', async () => {
    const before = await withManifold(({ library }) => [library]);
    noMoreMemory();
    await expect(levelSurface(fine)).rejects.toThrow(SolidsOutOfMemory);
    vi.restoreAllMocks();
    expect((await withManifold(({ library }) => [library]))[0]).not.toBe(before[0]);
    // The product of the sides.
    expect(await volumeOf([1, 2, 3])).toBe(6);
    expect(await withManifold(({ library, own }) => own(library.Manifold.cube(2)).volume())).toBe(8);
  });

  it('while there is still none the small solid is right too: it needs no more than the library begins with', async () => {
    noMoreMemory();
    await expect(levelSurface(fine)).rejects.toThrow(SolidsOutOfMemory);
    expect(await volumeOf([1, 2, 3])).toBe(6);
  });

  it('a solid that is asked of a spent library without an error of its own is no solid', async () => {
    noMoreMemory();
    const made = withManifold(({ library }) => {
      try {
        library.Manifold.levelSet(
          ([x, y, z]) => 50 - Math.hypot(x, y, z),
          { min: [-60, -60, -60], max: [60, 60, 60] },
          0.5,
        );
      } catch {
        // As a library would that only gives a wrong answer then.
      }
      return 1;
    });
    await expect(made).rejects.toThrow(SolidsOutOfMemory);
    vi.restoreAllMocks();
    expect(await volumeOf([1, 2, 3])).toBe(6);
  });

  it('a surface is tried again with longer facets where the caller wants to be told, and else is not made', async () => {
    const scan = valueOf(readScan({ bytes: stlBytes(box([60, 60, 60])), name: 'box.stl' }));
    const wish = { fileUnit: 'mm', offsetMm: 5, fileName: 'skin.stl', voxelMm: 2 } as const;
    const coarser: number[] = [];
    const told = { ...wish, onCoarser: (edgeMm: number) => coarser.push(edgeMm) };
    const whole = valueOf(await offsetSurface(scan, told));
    expect(coarser).toEqual([]);
    await trapOnce();
    await expect(offsetSurface(scan, wish)).rejects.toThrow(SolidsOutOfMemory);
    await trapOnce();
    const less = valueOf(await offsetSurface(scan, told));
    // Twice the two voxels that it is else.
    expect(coarser).toEqual([8]);
    expect(less.length).toBeLessThan(whole.length);
    expect(await volumeOf([1, 2, 3])).toBe(6);
  });
});

/** The library that is loaded now ends its next level as wasm does where there is no memory. */
async function trapOnce(): Promise<void> {
  const [library] = await withManifold((scope) => [scope.library]);
  vi.spyOn(library.Manifold, 'levelSet').mockImplementationOnce(() => {
    throw new WebAssembly.RuntimeError('null function or function signature mismatch');
  });
}
