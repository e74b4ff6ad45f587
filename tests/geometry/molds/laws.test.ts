import { afterAll, describe, expect, it } from 'vitest';
import { MOLD_TYPES, type MoldParameter, type MoldWish, type TriangleMesh } from '../../../src/geometry';
import { expectClose } from '../../support/close';
import { scaled, turned } from '../../support/meshTools';
import { forgetMolds, moldOf, partCm3 } from '../../support/moldOf';
import { CLEAN_TROLL, HAND, MUSHROOM, TILTED_BOX } from '../../support/moldSamples';

afterAll(forgetMolds);

const PULLS: Readonly<Record<string, MoldWish>> = {
  block: { parts: '2' },
  skin: { parts: '1', pull: '+z' },
  blanket: { parts: '2', pull: '1,1,0' },
};

/** Every length of a type times k. */
const lengthsTimes = (parameters: readonly MoldParameter[], k: number): MoldWish =>
  Object.fromEntries(
    parameters
      .filter(({ kind }) => kind === 'length' || kind === 'height')
      .map(({ key, default: value }) => [key, k * Number(value)]),
  );

describe.each(MOLD_TYPES.map((type) => [type.title, type] as const))(
  '%s: everything k times as long takes k^3 times as much',
  (_, { key, parameters }) => {
    it.each([
      ['mushroom', MUSHROOM, 1.5],
      ['mushroom', MUSHROOM, 0.7],
      ['tilted box', TILTED_BOX, 1.3],
    ] as const)('%s', (_name, mesh, k) => {
      const one = moldOf(mesh, key, { ...lengthsTimes(parameters, 1), ...PULLS[key] }, { voxelMm: 2 });
      const other = moldOf(
        scaled(mesh, k),
        key,
        { ...lengthsTimes(parameters, k), ...PULLS[key] },
        { voxelMm: 2 * k },
      );
      // The same grid k times as wide: what differs is the rounding of float32 distances.
      other.rubber.forEach(({ name, volumeMm3 }, n) =>
        expect(Math.abs(volumeMm3 - k ** 3 * one.rubber[n]!.volumeMm3), name).toBeLessThan(
          1e-4 * other.rubberMm3,
        ),
      );
      expectClose(other.rubberMm3, k ** 3 * one.rubberMm3, 1e-4);
      if (one.jacket !== undefined)
        expectClose(other.jacket!.volumeMm3, k ** 3 * one.jacket.volumeMm3, 1e-4, 'jacket');
    });
  },
);

describe('turned about the vertical by 33 degrees nothing changes', () => {
  const angle = (33 * Math.PI) / 360;
  const about = (mesh: TriangleMesh): TriangleMesh => turned(mesh, [Math.cos(angle), 0, 0, Math.sin(angle)]);

  it.each([
    ['clean troll', CLEAN_TROLL, 1.5],
    ['hand scan', HAND, 1],
  ] as const)(
    '%s: skin, fill under a jacket lifted up, flange and jacket stay within a thousandth',
    (_, mesh, voxelMm) => {
      const wish = { parts: '1', pull: '+z' };
      const [one, other] = [mesh, about(mesh)].map((m) => moldOf(m, 'skin', wish, { voxelMm })) as [
        ReturnType<typeof moldOf>,
        ReturnType<typeof moldOf>,
      ];
      expectClose(partCm3(other, 'skin'), partCm3(one, 'skin'), 1e-3, 'skin');
      expectClose(partCm3(other, 'undercut fill'), partCm3(one, 'undercut fill'), 1e-3, 'fill');
      expectClose(partCm3(other, 'flange'), partCm3(one, 'flange'), 1e-3, 'flange');
      expectClose(other.jacket!.volumeMm3, one.jacket!.volumeMm3, 1e-3, 'jacket');
    },
  );

  it('a block in its tightest box', () => {
    const [one, other] = [CLEAN_TROLL, about(CLEAN_TROLL)].map((m) =>
      moldOf(m, 'block', { shape: 'turned' }),
    ) as [ReturnType<typeof moldOf>, ReturnType<typeof moldOf>];
    expectClose(other.rubberMm3, one.rubberMm3, 1e-6);
  });
});
