import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { readScan } from '../../../src/geometry';
import { makeSolid } from '../../../src/geometry/solids/makeSolid';
import { surfaceFile } from '../../../src/geometry/solids/surfaceFile';
import { expectClose } from '../../support/close';
import { sphereField, torusField } from '../../support/distances';
import { problemOf, valueOf } from '../../support/outcome';

const field = torusField(50, 12, [3.3, 4.4, 12]);
const input = { ...field, edgeMm: 2, levelMm: 6 };

describe('a level of a field as the bytes of a file', () => {
  it('STL: read back it is closed, whole and of the volume of the level (Pappus)', async () => {
    const bytes = valueOf(await surfaceFile({ ...input, fileName: 'skin.stl' }));
    const { mesh } = valueOf(readScan({ bytes, name: 'skin.stl' }));
    // Sides up to 2.6 mm on a curvature of 1/18: area x k L2 / 8 over the volume, 2 k L2 / 8.
    expectClose(valueOf(await makeSolid(mesh)).volumeMm3, field.volumeMm3(6), (2.6 / 18) ** 2 / 4);
  });

  it('STL cut at a base: still closed after the corners were rounded to float32 and welded again', async () => {
    for (const baseMm of [0.1, 5 / 3, 12]) {
      const bytes = valueOf(await surfaceFile({ ...input, baseMm, fileName: 'skin.stl' }));
      const { mesh } = valueOf(readScan({ bytes, name: 'skin.stl' }));
      expect(valueOf(await makeSolid(mesh)).volumeMm3).toBeLessThan(field.volumeMm3(6));
      const heights = new Set(mesh.positions.filter((_, i) => i % 3 === 2));
      expect(Math.min(...heights)).toBe(Math.fround(baseMm));
      expect([...heights].filter((z) => z < baseMm + 1e-4)).toEqual([Math.fround(baseMm)]);
    }
  });

  it('3MF: the unit is in the file', async () => {
    const bytes = valueOf(await surfaceFile({ ...input, fileName: 'skin.3mf' }));
    expect(strFromU8(unzipSync(bytes)['3D/3dmodel.model']!)).toContain('unit="millimeter"');
  });

  it.each(['skin.stl', 'skin.3mf'])('%s: the same field gives the same bytes', async (fileName) => {
    const bytes: Uint8Array[] = [];
    for (let time = 0; time < 2; time++)
      bytes.push(
        valueOf(await surfaceFile({ ...input, edgeMm: 4, baseMm: 1.1, simplifyMm: 0.05, fileName })),
      );
    expect(bytes[0]!.length).toBeGreaterThan(10_000);
    expect(Buffer.compare(bytes[0]!, bytes[1]!)).toBe(0);
  });
});

describe('no file', () => {
  it('of a kind that is not written: told before the field is asked', async () => {
    const never = (): number => {
      throw new Error('asked');
    };
    const problem = problemOf(await surfaceFile({ ...input, distanceAtMm: never, fileName: 'skin.obj' }));
    expect(problem.code).toBe('UNSUPPORTED_FORMAT');
  });

  it('of a level deeper than the solid', async () => {
    expect(problemOf(await surfaceFile({ ...input, levelMm: -13, fileName: 'a.stl' })).code).toBe(
      'ZERO_VOLUME',
    );
  });

  it('in float32 1 km away, where it steps by 0.0625 mm: half of it over the area of the ball, against its volume', async () => {
    const far = { ...sphereField(20, [1e6, 0, 0]), edgeMm: 4, levelMm: 0 };
    const problem = problemOf(await surfaceFile({ ...far, fileName: 'a.stl' }));
    expect(problem.code).toBe('PRECISION');
    expectClose(Number(problem.values.doubtShare), (0.0625 / 2) * (3 / 20), 0.02);
    expect(valueOf(await surfaceFile({ ...far, fileName: 'a.3mf' })).length).toBeGreaterThan(1000);
  });
});
