import {
  buildField,
  moldType,
  moldWork,
  settleMold,
  standSculpt,
  type BaseChoice,
  type Field,
  type MoldKey,
  type MoldShape,
  type MoldWish,
  type Sculpt,
  type TriangleMesh,
} from '../../src/geometry';
import { measured } from './measured';
import { valueOf } from './outcome';

/** A mold around a mesh, without any plan: the sculpt stood, a field built (and kept for the next call on the same mesh), the type's build. */

interface Standing {
  base: BaseChoice;
  voxelMm: number;
  reachMm: number;
  field: Field;
}

interface Memory {
  fields: WeakMap<TriangleMesh, Standing[]>;
  sculpts: Readonly<Record<BaseChoice, WeakMap<TriangleMesh, Sculpt>>>;
}

const blank = (): Memory => ({
  fields: new WeakMap(),
  sculpts: { open: new WeakMap(), closed: new WeakMap() },
});

let kept = blank();

/** At the end of every file that uses `moldOf`: a field that reaches further, built for another file, would tell in the last digits of the next one. */
export const forgetMolds = (): void => void (kept = blank());

/** The sculpt as molds see it, kept for the next call. */
export function stood(mesh: TriangleMesh, base: BaseChoice = 'open'): Sculpt {
  const known = kept.sculpts[base].get(mesh) ?? valueOf(standSculpt(measured(mesh), base));
  kept.sculpts[base].set(mesh, known);
  return known;
}

/**
 * @param wish parameters of the type; a skin of 0 mm, less than the type lets anyone ask for, shows the sculpt's own undercuts
 * @param coatsMm thickness after each coat
 */
export function moldOf(
  mesh: TriangleMesh,
  key: MoldKey,
  wish: MoldWish,
  { voxelMm = 1, coatsMm = [] }: { voxelMm?: number; coatsMm?: readonly number[] } = {},
): MoldShape {
  const type = moldType(key);
  const isBare = wish.skinMm === 0;
  const settled = valueOf(settleMold(type, isBare ? { ...wish, skinMm: undefined } : wish));
  const settings = isBare ? { ...settled, skinMm: 0 } : settled;
  const sculpt = stood(mesh, settings.base === 'closed' ? 'closed' : 'open');
  const reachMm = moldWork(key).reachMm(settings, sculpt);
  const body = reachMm === 0 ? { sculpt } : { sculpt, field: fieldOn(mesh, sculpt, { voxelMm, reachMm }) };
  return valueOf(moldWork(key).build({ ...body, coatsMm }, settings));
}

/** Volume of a named part of the rubber, cm3. */
export const partCm3 = ({ rubber }: MoldShape, name: string): number => {
  const part = rubber.find((one) => one.name === name);
  if (part === undefined)
    throw new Error(`partCm3: expected a part ${name}, got ${rubber.map((r) => r.name).join(', ')}`);
  return part.volumeMm3 / 1000;
};

function fieldOn(
  mesh: TriangleMesh,
  { chain, bounds, boardMm }: Sculpt,
  { voxelMm, reachMm }: { voxelMm: number; reachMm: number },
): Field {
  if (chain === undefined) throw new Error('fieldOn: expected a sculpt with a surface, got a soup');
  const base = boardMm === undefined ? 'closed' : 'open';
  const known = (kept.fields.get(mesh) ?? []).find(
    (one) => one.base === base && one.voxelMm === voxelMm && one.reachMm >= reachMm,
  );
  if (known !== undefined) return known.field;
  const field = valueOf(
    buildField(chain, bounds, {
      voxelMm,
      levelsMm: [reachMm],
      ...(boardMm === undefined ? {} : { baseMm: boardMm }),
    }),
  );
  kept.fields.set(mesh, [...(kept.fields.get(mesh) ?? []), { base, voxelMm, reachMm, field }]);
  return field;
}
