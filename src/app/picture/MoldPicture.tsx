import { memo, useMemo, useState } from 'react';
import type { OpeningPlan } from '../../plan';
import type { Eye } from '../../viewer/eye';
import { isDrawn, PictureCard } from '../../viewer/PictureCard';
import type { MmSeat } from '../../viewer/shown';
import { VIEWS } from '../../viewer/views';
import type { CutFaces, CutPlane, Paint, Picture, Shells } from '../../worker/protocol';
import { halvesAround } from './boxes';
import { CutControls } from './CutControls';
import { cutWords, isSamePlane, middlePlane, type CutWay } from './cutControls';
import { CutKey } from './CutKey';
import { LookChoice, type Look } from './LookChoice';
import { shownPaint } from './moldLayers';
import { moldPictureWords, pickedWords } from './moldPictureWords';
import { planMarks, pouredUp } from './planMarks';
import { usePickerFor } from './placePicker';
import { ThicknessLegend } from './ThicknessLegend';
import { useBoxes } from './useBoxes';
import { useCutting } from './useCutting';
import { useLayers } from './useLayers';
import { useLook } from './useLook';

export interface MoldPictureProps {
  picture: Picture | undefined;
  mmPerUnit: number | undefined;
  /** Not so while anything of it is worked out anew: the picture stands still, and says no length. */
  isCurrent: boolean;
  shells?: Shells | undefined;
  /** May lag behind: shown only where its plane is the one asked for. */
  cutFaces?: CutFaces | undefined;
  /** Of the vertices of `picture`. */
  paint?: Paint | undefined;
  plan?: OpeningPlan | undefined;
  /** The kind of mold, in words. */
  typeWords?: string | undefined;
  onCut: (plane: CutPlane | undefined) => void;
  /** Why there is no picture, or that there will be another. */
  note: string | undefined;
}

const TITLES: Readonly<Record<Look, string>> = {
  mold: 'The mold around the sculpt',
  contours: 'The sculpt',
  thickness: 'Where the foam is thin',
};

/** The sculpt, the mold around it cut open, thin places and every numbered place: what makes the numbers of the tables plain. */
export const MoldPicture = memo(function MoldPicture(props: MoldPictureProps) {
  const { picture, mmPerUnit, isCurrent, shells, cutFaces, plan, onCut, note } = props;
  const [eye, setEye] = useState<Eye | undefined>(undefined);
  const middleUnits = picture?.middleUnits;
  const seat = useMemo<MmSeat | undefined>(
    () => (middleUnits === undefined || mmPerUnit === undefined ? undefined : { mmPerUnit, middleUnits }),
    [middleUnits, mmPerUnit],
  );
  const { sculpt, box } = useBoxes(picture, seat, shells);
  const paint = isOf(props.paint, picture) ? props.paint : undefined;
  const painted = useMemo(() => (paint === undefined ? undefined : shownPaint(paint)), [paint]);
  const picker = usePickerFor(isDrawn(picture));
  const { look, looks, setLook } = useLook({
    hasMold: shells !== undefined && seat !== undefined,
    hasPaint: painted !== undefined,
    asked: picker?.asked,
    plan,
  });
  const isMold = look === 'mold';
  const { plane, setPlane } = useCutting(isMold, sculpt, onCut);
  const layers = useLayers({ picture, shells, cutFaces, plan, seat, plane, look, painted });
  const drawn = isMold ? box : sculpt;
  const marks = useMemo(
    () =>
      plan === undefined || seat === undefined || drawn === undefined ? [] : planMarks(plan, seat, drawn),
    [plan, seat, drawn],
  );
  const halfUnits = useMemo(
    () => (drawn === undefined || seat === undefined ? undefined : halvesAround(drawn, seat)),
    [drawn, seat],
  );
  const up = useMemo(() => (plan === undefined ? undefined : pouredUp(plan)), [plan]);
  const picked = picker?.picked?.label;
  const onWay = ({ axis, view }: CutWay): void => {
    if (sculpt !== undefined) setPlane(middlePlane(axis, sculpt));
    const straight = VIEWS.find(({ key }) => key === view);
    if (straight !== undefined) eye?.look(straight);
  };
  return (
    <PictureCard
      title={TITLES[look]}
      label={isMold ? 'Picture of the mold and the sculpt' : 'Picture of the sculpt'}
      {...{ picture, mmPerUnit, marks, layers, halfUnits, up, note }}
      isScaleCurrent={isCurrent}
      picking={picker === undefined ? undefined : { picked, asked: picker.asked, onPick: picker.pick }}
      onEye={setEye}
      alternative={moldPictureWords({
        sizeMm: sculpt?.max.map((high, k) => high - sculpt.min[k]!),
        typeWords: isMold ? props.typeWords : undefined,
        cutWords: plane === undefined || sculpt === undefined ? undefined : cutWords(plane, sculpt),
        isPainted: look === 'thickness',
        plan,
      })}
      choices={
        <>
          <LookChoice {...{ look, looks }} onLook={setLook} />
          {sculpt !== undefined && drawn !== undefined && (
            <CutControls {...{ plane, sculpt, onWay }} box={drawn} onPlane={setPlane} />
          )}
        </>
      }
      prompt={
        <p className="said" role="status">
          {plan !== undefined && picked !== undefined ? pickedWords(plan, picked) : ''}
        </p>
      }
      legend={
        <>
          {look === 'thickness' && painted !== undefined && paint !== undefined && (
            <ThicknessLegend {...painted} cappedMm={paint.cappedMm} />
          )}
          {cutFaces !== undefined && plane !== undefined && isSamePlane(cutFaces.plane, plane) && (
            <CutKey
              parts={cutFaces.faces.map(({ part }) => part).filter((part) => isMold || part === 'sculpt')}
            />
          )}
        </>
      }
    />
  );
});

/** Paint of another picture has other vertices. */
const isOf = (paint: Paint | undefined, picture: Picture | undefined): boolean =>
  paint !== undefined && picture !== undefined && 3 * paint.thicknessMm.length === picture.positions.length;
