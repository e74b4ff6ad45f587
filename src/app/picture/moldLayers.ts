import type { CutFaces, CutPlane, Paint, Shells } from '../../worker/protocol';
import type { CapLook } from '../../viewer/capMaterial';
import type { Cut } from '../../viewer/cut';
import type { Painted } from '../../viewer/ScanMesh';
import type { MmSeat, ShownCut, ShownShell } from '../../viewer/shown';
import { stepBorders } from '../../viewer/stepBorders';

/** The outer faces as they are drawn. Silicone is darker than a jacket; of a block the silicone is the block. */
export const shownShells = (shells: Shells): ShownShell[] =>
  shells.parts.map(({ part, surface }) => ({ surface, tone: part === 'jacket' ? 'stiff' : 'silicone' }));

const CAPS: Readonly<Record<CutFaces['faces'][number]['part'], CapLook>> = {
  sculpt: 'sculpt',
  skin: 'silicone',
  block: 'silicone',
  jacket: 'stiff',
};

export const shownCut = ({ plane, faces }: CutFaces, isMold: boolean): ShownCut => ({
  axis: plane.axis,
  faces: faces
    .filter(({ part }) => isMold || part === 'sculpt')
    .map(({ part, outlines }) => ({ look: CAPS[part], outlines })),
});

export function cutInUnits({ axis, atMm }: CutPlane, { mmPerUnit, middleUnits }: MmSeat): Cut {
  const k = { x: 0, y: 1, z: 2 }[axis];
  return { axis, at: atMm / mmPerUnit - middleUnits[k]! };
}

export interface PaintShown extends Painted {
  mostMm: number;
  hasUnknown: boolean;
}

/** The surface in steps, where anything is known of it. */
export function shownPaint({ thicknessMm }: Paint): PaintShown | undefined {
  const borders = stepBorders(thicknessMm);
  if (borders === undefined) return undefined;
  let [mostMm, hasUnknown] = [0, false];
  for (const value of thicknessMm) {
    if (Number.isNaN(value)) hasUnknown = true;
    else if (value > mostMm) mostMm = value;
  }
  return { values: thicknessMm, borders, mostMm, hasUnknown };
}
