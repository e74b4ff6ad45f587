import { bad, good, type Outcome } from '../../problem';
import type { Field } from '../field/buildField';
import { barredPull, jacketLeaving } from '../molds/jacketLeaving';
import type { MoldBody, MoldKey, MoldSettings } from '../molds/moldType';
import { numberIn } from '../molds/settle';
import { draftReachMm, sampleSkin } from '../molds/sweptBody';
import { blockShell } from './blockShell';
import { latticeOn, type Lattice } from './boardLayers';
import { flangeRoom, withFlange, type FlangeWish } from './flangeOn';
import { levelNets, type NetSurface } from './levelNets';
import type { MoldShell } from './moldShell';
import { sweptGrid } from './sweptGrid';

/**
 * Outer faces of the parts of a mold, from the inside out: of the rubber with its undercuts filled, which the jacket rests on, and of the jacket; or of the block.
 * The pull is that of `measureJacketed`. The flange on the board is with it, flush with its cover; keys, the flange of the seam, funnel, risers and spout are not. Errors: MOLD_NEEDS_SURFACE, JACKET_NOT_FREE, PULL_THROUGH_BOARD, STOPPED.
 */
export function moldShells(key: MoldKey, body: MoldBody, settings: MoldSettings): Outcome<MoldShell[]> {
  if (key === 'block') return good([blockShell(body.sculpt, settings)]);
  const { field } = body;
  if (field === undefined) return bad('MOLD_NEEDS_SURFACE', { what: 'a skin' });
  return jacketedShells({ ...body, field }, settings);
}

function jacketedShells(body: MoldBody & { field: Field }, settings: MoldSettings): Outcome<MoldShell[]> {
  const { sculpt, field } = body;
  const barred = barredPull(settings, sculpt);
  if (barred !== undefined) return barred;
  const [skinMm, jacketMm] = [numberIn(settings, 'skinMm'), numberIn(settings, 'jacketMm')];
  const tallMm = sculpt.bounds.max[2] - sculpt.bounds.min[2];
  const draftMm = draftReachMm(numberIn(settings, 'draftDegrees'), tallMm);
  const samples = sampleSkin(field, { skinMm, jacketMm, draftMm });
  if (!samples.ok) return samples;
  const left = jacketLeaving(body, samples.value, settings);
  if (!left.ok) return left;
  const lattice = latticeOn(field.grid, sweptGrid(field, samples.value, left.value.leaving));
  const widthMm = sculpt.boardMm === undefined ? 0 : numberIn(settings, 'flangeMm');
  const withinOf = latticesFor(lattice, { skinMm, widthMm });
  const shells: MoldShell[] = [];
  for (const [part, levelMm] of [
    ['skin', skinMm],
    ['jacket', skinMm + jacketMm],
  ] as const) {
    if (field.options.shouldStop?.() === true) return bad('STOPPED');
    shells.push(shellOf(part, toScan(field, levelNets(withinOf(levelMm), levelMm))));
  }
  return good(shells);
}

/** The values whose level is the face of a part, its flange with it: as high as the rubber is thick, and the jacket's cover on top. */
function latticesFor(lattice: Lattice, flange: FlangeWish): (levelMm: number) => Lattice {
  if (flange.widthMm === 0 || lattice.evenFrom === 1) return () => lattice;
  const room = flangeRoom(lattice, flange);
  return (levelMm) => withFlange(room.lattice, room.beyondMm, { widthMm: flange.widthMm, levelMm });
}

const shellOf = (part: MoldShell['part'], { mesh, normals }: NetSurface): MoldShell => ({
  part,
  chain: mesh,
  positions: Float32Array.from(mesh.positions),
  normals,
  index: Uint32Array.from(mesh.triangles),
});

/** From the field's frame into the scan's axes: the turn backward, by the columns of its rows. Changes the surface. */
function toScan({ surface: { frame } }: Field, surface: NetSurface): NetSurface {
  const { rows: r, originMm } = frame;
  const turn = (a: Float64Array | Float32Array, [ox, oy, oz]: readonly [number, number, number]): void => {
    for (let p = 0; p < a.length; p += 3) {
      const x = a[p]!;
      const y = a[p + 1]!;
      const z = a[p + 2]!;
      a[p] = ox + r[0] * x + r[3] * y + r[6] * z;
      a[p + 1] = oy + r[1] * x + r[4] * y + r[7] * z;
      a[p + 2] = oz + r[2] * x + r[5] * y + r[8] * z;
    }
  };
  turn(surface.mesh.positions, originMm);
  turn(surface.normals, [0, 0, 0]);
  return surface;
}
