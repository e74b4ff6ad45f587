import Module from 'manifold-3d';
import { boundsOf, type BoxShape, type TriangleMesh } from '../../src/geometry';
import { turned } from './meshTools';

/**
 * Second opinion on a block of rubber: a box or a cylinder less the sculpt, split at a level, by the booleans of the Manifold library (Lalish and others). It takes
 * vertices as float32: some 1e-7 of a size.
 */
const wasm = await Module();
wasm.setup();

type Solid = InstanceType<typeof wasm.Manifold>;

/** So many corners leave a circle short by 2e-6 of its area. */
const CIRCLE = 2048;

export interface BlockHalves {
  upperMm3: number;
  lowerMm3: number;
  /** Sides of the sculpt in plan, turned as the box is. */
  planMm: readonly [number, number];
}

/** @param underMm rubber below the lowest point; a cylinder stands about the middle of the bounds, which must be that of the plan */
export function blockByManifold(
  sculpt: TriangleMesh,
  { kind, innerMm, turnDegrees }: Pick<BoxShape, 'kind' | 'innerMm' | 'turnDegrees'>,
  { underMm, partingMm }: { underMm: number; partingMm: number },
): BlockHalves {
  const half = (-turnDegrees * Math.PI) / 360;
  const mesh = turnDegrees === 0 ? sculpt : turned(sculpt, [Math.cos(half), 0, 0, Math.sin(half)]);
  const { min, max } = boundsOf(mesh);
  const made: Solid[] = [];
  const keep = (solid: Solid): Solid => {
    made.push(solid);
    return solid;
  };
  const [x, y, tall] = innerMm;
  const upright = keep(
    kind === 'box' ? wasm.Manifold.cube([x, y, tall]) : wasm.Manifold.cylinder(tall, x / 2, x / 2, CIRCLE),
  );
  const [cx, cy] = [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2];
  const corner = kind === 'box' ? [cx - x / 2, cy - y / 2] : [cx, cy];
  const box = keep(upright.translate([corner[0]!, corner[1]!, min[2] - underMm]));
  const rubber = keep(box.subtract(keep(solidOf(mesh))));
  const [upper, lower] = rubber.splitByPlane([0, 0, 1], min[2] + partingMm);
  made.push(upper, lower);
  const halves = { upperMm3: upper.volume(), lowerMm3: lower.volume() };
  for (const solid of made) solid.delete();
  return { ...halves, planMm: [max[0] - min[0], max[1] - min[1]] };
}

function solidOf({ positions, triangles }: TriangleMesh): Solid {
  const solid = new wasm.Manifold(
    new wasm.Mesh({
      numProp: 3,
      vertProperties: Float32Array.from(positions),
      triVerts: Uint32Array.from(triangles),
    }),
  );
  if (solid.status() !== 'NoError') throw new Error(String(solid.status()));
  return solid;
}
