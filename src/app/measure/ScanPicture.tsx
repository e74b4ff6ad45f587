import { useEffect, useMemo, useRef, useState, type Dispatch } from 'react';
import { turnUp, type Ray, type Vector } from '../../geometry';
import { PictureCard } from '../../viewer/PictureCard';
import type { Plane } from '../../viewer/drawable';
import type { Mark } from '../../viewer/mark';
import { nearestNormal } from '../../viewer/nearestNormal';
import { unitsOf } from '../../viewer/shown';
import type { Size } from '../../plan';
import type { Picture } from '../../worker/protocol';
import { fieldId } from '../parts/fieldId';
import { usePickerFor } from '../picture/placePicker';
import { pictureNow, sizeNow } from '../ticket/now';
import { valueOf } from '../ticket/readField';
import type { Action } from '../ticket/reducer';
import { secondByOf } from '../ticket/scaleWishes';
import type { Ticket } from '../ticket/state';
import type { Bench } from '../ticket/useEngine';
import { sayOnPage } from '../words/sayOnPage';
import { PICK_BUTTON } from './pickButton';
import { pictureWords } from './pictureWords';
import type { PointHand } from './pointHand';
import { soundRows, type SoundRow } from './soundRows';

interface ScanPictureProps {
  ticket: Ticket;
  dispatch: Dispatch<Action>;
  bench: Bench;
  hand: PointHand;
}

/** The picture stands still on what was drawn last while another is worked out, and says so. */
export function ScanPicture({ ticket, dispatch, bench, hand }: ScanPictureProps) {
  const { state, problem, answer } = pictureNow(ticket);
  const isWorking = state === 'working';
  const size = sizeNow(ticket);
  const scale = ticket.size.answer ?? ticket.size.before;
  const picture = isWorking ? (ticket.picture.answer ?? ticket.picture.before) : answer;
  const pointing = usePointed({ ticket, dispatch, bench, hand, picture: isWorking ? undefined : picture });
  const plane = usePlane(ticket, picture);
  const { marks, rows, points } = useMarks(ticket, picture);
  const picker = usePickerFor(hand.canPoint);
  const picked = picker?.picked?.label;
  const row = rows.find(({ no }) => no === picked);
  return (
    <PictureCard
      picture={picture}
      mmPerUnit={scale?.size.scale.mmPerUnit}
      isScaleCurrent={size.state !== 'working'}
      marks={marks}
      joined={points === 2}
      picking={picker === undefined ? undefined : { picked, asked: picker.asked, onPick: picker.pick }}
      plane={plane}
      pointing={pointing.pointing}
      prompt={
        <>
          {pointing.prompt}
          <p className="said" role="status">
            {row === undefined ? '' : `${row.no}: ${row.text} ${row.where ?? ''}.`}
          </p>
        </>
      }
      note={
        isWorking
          ? 'The picture is being drawn.'
          : problem === undefined
            ? NOTES[state]
            : sayOnPage(problem).text
      }
      alternative={`${pictureWords(ticket)}${markWords(points, marks)}`}
    />
  );
}

const NOTES: Partial<Record<string, string>> = {
  cancelled: 'No picture: it was cancelled.',
  failed: 'No picture: a fault of ours. The file is untouched.',
};

/** A place of the file as the picture has it. */
const inPicture = (at: Vector, { place, middleUnits }: Picture): Vector => {
  const [x, y, z] = turnUp(at, place.up);
  return [x - middleUnits[0], y - middleUnits[1], z - middleUnits[2]];
};

const NO_ROWS: readonly SoundRow[] = [];

/** The points that were picked, and the place of every finding that has one: one list as long as neither changes. */
function useMarks(
  ticket: Ticket,
  picture: Picture | undefined,
): { marks: readonly Mark[]; rows: readonly SoundRow[]; points: number } {
  const { points } = ticket.measuring;
  const byPoints = secondByOf(ticket) === 'points';
  const size = sizeNow(ticket).answer?.size;
  const isSecondScale = ticket.measuring.isSecondScale;
  // Only the verbs of the rows hang on more of the ticket, and marks have none.
  const rows = useMemo(
    () => (size === undefined ? NO_ROWS : soundRows(size, ticket)),
    // eslint-disable-next-line react-hooks/exhaustive-deps
    [size, isSecondScale],
  );
  const marks = useMemo(
    () =>
      picture === undefined
        ? []
        : [...(byPoints ? pointMarks(points, picture) : []), ...rowMarks(rows, size, picture)],
    [picture, points, byPoints, rows, size],
  );
  return { marks, rows, points: byPoints ? points.length : 0 };
}

const pointMarks = (points: readonly Vector[], picture: Picture): Mark[] =>
  points.map((at, n) => ({ label: String(n + 1), at: inPicture(at, picture) }));

/** A finding's place is in mm on the placed piece, so it needs the scale it was found with. */
function rowMarks(rows: readonly SoundRow[], size: Size | undefined, picture: Picture): Mark[] {
  if (size === undefined || size.up !== picture.place.up) return [];
  const seat = { mmPerUnit: size.scale.mmPerUnit, middleUnits: picture.middleUnits };
  return rows.flatMap(({ no, at: { xMm, yMm, zMm } = {} }) => {
    if (xMm === undefined || yMm === undefined || zMm === undefined) return [];
    const at = unitsOf([xMm, yMm, zMm], seat);
    return [{ label: no, at, normal: nearestNormal(picture, at), isRow: true }];
  });
}

/** Where the typed plane lies, drawn before anything is cut. It follows the box; the volume is asked when it stands still. */
function usePlane({ fields, cut, keep, size }: Ticket, picture: Picture | undefined): Plane | undefined {
  const heightMm = valueOf('cutHeight', fields.cutHeight);
  const sized = size.answer ?? size.before;
  const isHere = picture !== undefined && sized !== undefined && sized.size.up === picture.place.up;
  const atUnits =
    cut?.by === 'floor' || heightMm === undefined || !isHere
      ? undefined
      : sized.whole.lowestUnits + heightMm / sized.size.scale.mmPerUnit - picture.middleUnits[2];
  // One object as long as it lies where it lay: the picture is drawn anew for another.
  return useSame(
    atUnits === undefined ? undefined : { atUnits, takes: keep === 'above' ? 'below' : 'above' },
  );
}

function useSame(plane: Plane | undefined): Plane | undefined {
  const [held, setHeld] = useState(plane);
  if (held?.atUnits === plane?.atUnits && held?.takes === plane?.takes) return held;
  setHeld(plane);
  return plane;
}

function markWords(points: number, marks: readonly Mark[]): string {
  const rings = points === 0 ? '' : ` Rings 1 and 2: the points you picked.`;
  const rows = marks.filter(({ isRow }) => isRow === true).map(({ label }) => label);
  const [first, ...others] = rows;
  if (first === undefined) return rings;
  return others.length === 0
    ? `${rings} Box ${first}: the place of that finding.`
    : `${rings} Boxes ${rows.join(', ')}: the places of those findings.`;
}

/** Points at the drawn picture and hears from the engine what was hit: on the facets of the file, not of the picture. */
function usePointed({
  ticket,
  dispatch,
  bench,
  hand,
  picture,
}: ScanPictureProps & { picture: Picture | undefined }) {
  const [missed, setMissed] = useState(false);
  const isBusy = useRef(false);
  const { points } = ticket.measuring;
  const { isPointing, onLeave } = hand;
  useEffect(() => () => setMissed(false), [isPointing]);
  if (!isPointing) return { pointing: undefined, prompt: undefined };

  const onPoint = async (ray: Ray): Promise<void> => {
    if (picture === undefined || isBusy.current) return;
    isBusy.current = true;
    const [x, y, z] = ray.from.map((c, k) => c + picture.middleUnits[k]!);
    const picked = await bench.pick({ from: [x!, y!, z!], direction: ray.direction }, picture.place);
    isBusy.current = false;
    if (picked === undefined) return;
    setMissed(picked.at === undefined);
    if (picked.at === undefined) return;
    dispatch({ do: 'pickPoint', at: picked.at });
    if (points.length !== 1) return;
    onLeave();
    document.getElementById(fieldId('checkLength'))?.focus();
  };
  return {
    pointing: {
      onPoint: (ray: Ray) => void onPoint(ray),
      onLeave: () => {
        onLeave();
        document.getElementById(PICK_BUTTON)?.focus();
      },
    },
    prompt: (
      <p className="prompt" role="status">
        {missed ? 'Nothing is there: point at the piece. ' : ''}
        {points.length === 1 ? 'Point 1 stands. Now point 2' : 'Point 1'}: click the piece, or move the cross
        with the arrow keys and press Enter. Escape leaves.
      </p>
    ),
  };
}
