import { expect, it } from 'vitest';
import { sizeScan } from '../../src/plan';
import { joined, reversed } from '../support/meshTools';
import { valueOf } from '../support/outcome';
import { box, icosphere } from '../support/shapes';

const ball = (radiusMm: number): number => ((4 / 3) * Math.PI * radiusMm ** 3) / 1000;

const offsetsOf = (mesh: ReturnType<typeof box>, offsetsMm: readonly number[], voxelMm?: number) =>
  valueOf(
    sizeScan(
      { mesh, format: 'stl', trianglesRead: mesh.triangles.length / 3, coordinateStep: 0, findings: [] },
      { fileUnit: 'mm', offsetsMm, ...(voxelMm === undefined ? {} : { voxelMm }) },
    ),
  );

it('a shell of 3 mm and offsets near its surface: both walls, each once (balls in closed form)', () => {
  const shell = joined(icosphere(60, 6), reversed(icosphere(57, 6)));
  const offsets = [-0.9, -0.5, -0.2, 0.2, 0.5, 1];
  const size = offsetsOf(shell, offsets, 0.8);
  size.offsets!.volumes.forEach(({ volumeCm3: { value, low, high } }, i) => {
    const truth = ball(60 + offsets[i]!) - ball(57 - offsets[i]!);
    // Where two voxels of wall are left; facets lie up to 0.01 mm inside their balls.
    if (offsets[i]! > -0.6) expect(Math.abs(value / truth - 1), `${offsets[i]!} mm`).toBeLessThan(0.005);
    expect(low).toBeLessThanOrEqual(truth);
    expect(high).toBeGreaterThanOrEqual(truth);
  });
});

/** As many voxels as are ever planned, beside other work on a slow machine. */
const FINEST_MS = 90_000;

it(
  'a box with walls of 0.3 mm: close offsets are told to be unsure, and the range holds the truth',
  { timeout: FINEST_MS },
  () => {
    const inner = reversed(box([99.4, 99.4, 99.4], [0.3, 0.3, 0.3]));
    const size = offsetsOf(joined(box([100, 100, 100]), inner), [10, -5, -0.1]);
    const { low, high } = size.offsets!.volumes[2]!.volumeCm3;
    const truth = (99.8 ** 3 - 99.6 ** 3) / 1000;
    expect(low).toBeLessThanOrEqual(truth);
    expect(high).toBeGreaterThanOrEqual(truth);
    expect(size.findings.map(({ code }) => code)).toContain('THIN');
  },
);

it.each([[[0.2, 0.2, 300]], [[300, 300, 0.1]], [[1000, 1000, 2]]])(
  'a needle or plate of %j mm takes no more voxels than are planned, whatever its offset',
  (sides) => {
    const size = offsetsOf(box(sides as [number, number, number]), [0.02]);
    const { voxelMm } = size.offsets!.voxel;
    // The grid lies turned by 0.1 rad about z, then 0.07 about y.
    const [c, s, d, t] = [Math.cos(0.1), Math.sin(0.1), Math.cos(0.07), Math.sin(0.07)];
    const [x, y, z] = sides as [number, number, number];
    const turned = [d * c * x + d * s * y + t * z, s * x + c * y, t * c * x + t * s * y + d * z];
    expect(turned.reduce((product, mm) => product * (mm / voxelMm + 12), 1)).toBeLessThan(6e7);
  },
  FINEST_MS,
);
