import { useMemo } from 'react';
import type { MmSeat } from '../../viewer/shown';
import type { StageLayers } from '../../viewer/Stage';
import type { CutFaces, CutPlane, Picture, Shells } from '../../worker/protocol';
import type { OpeningPlan } from '../../plan';
import { isSamePlane } from './cutControls';
import type { Look } from './LookChoice';
import { cutInUnits, shownCut, shownShells, type PaintShown } from './moldLayers';
import { planLevels } from './planMarks';
import { useLevelEnds } from './useLevelEnds';

interface LayerWish {
  picture: Picture | undefined;
  shells: Shells | undefined;
  cutFaces: CutFaces | undefined;
  plan: OpeningPlan | undefined;
  seat: MmSeat | undefined;
  plane: CutPlane | undefined;
  look: Look;
  painted: PaintShown | undefined;
}

const NO_LEVELS: [] = [];

/** What is drawn on and around the scan, one object each as long as it stays the same. */
export function useLayers(wish: LayerWish): StageLayers {
  const { picture, shells, cutFaces, plan, seat, plane, look, painted } = wish;
  const isMold = look === 'mold';
  const around = useMemo(
    () => (shells === undefined || !isMold ? undefined : shownShells(shells)),
    [shells, isMold],
  );
  const cut = useMemo(
    () => (plane === undefined || seat === undefined ? undefined : cutInUnits(plane, seat)),
    [plane, seat],
  );
  const faces = useMemo(
    () =>
      cutFaces === undefined || !isSamePlane(cutFaces.plane, plane) ? undefined : shownCut(cutFaces, isMold),
    [cutFaces, plane, isMold],
  );
  const levels = useMemo(
    () => (plan === undefined || seat === undefined ? NO_LEVELS : planLevels(plan, seat)),
    [plan, seat],
  );
  const levelEnds = useLevelEnds(picture, levels);
  const shown = look === 'thickness' ? painted : undefined;
  return useMemo(
    () => ({ seat, shells: around, cut, faces, painted: shown, levelEnds: isMold ? undefined : levelEnds }),
    [seat, around, cut, faces, shown, levelEnds, isMold],
  );
}
