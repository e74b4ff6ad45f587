import { useState } from 'react';
import { isDrawn } from '../../viewer/PictureCard';
import { ErrorSummary } from '../parts/ErrorSummary';
import { Fault } from '../parts/Fault';
import type { FieldName } from '../ticket/fields';
import { PlacePicking } from '../picture/PlacePicking';
import { pictureNow, sizeNow } from '../ticket/now';
import { secondByOf } from '../ticket/scaleWishes';
import type { Ticket } from '../ticket/state';
import type { Bench } from '../ticket/useEngine';
import { fieldsOfWay } from '../ticket/wayReads';
import type { AskProps } from './askProps';
import { CutQuestion } from './CutQuestion';
import { isScanAsked, measureMarks } from './marks';
import type { PointHand } from './pointHand';
import { ScanPicture } from './ScanPicture';
import { ScanQuestion } from './ScanQuestion';
import { SoundQuestion } from './SoundQuestion';
import { UnitQuestion } from './UnitQuestion';
import { UpQuestion } from './UpQuestion';
import { VolumeQuestion } from './VolumeQuestion';
import type { WayProps } from './wayProps';
import { WayQuestion } from './WayQuestion';

export function Measure({ ticket, dispatch, bench, piece }: WayProps & { bench: Bench }) {
  const fault = sizeNow(ticket).message ?? pictureNow(ticket).message;
  const hand = usePointHand(ticket, dispatch);
  const marks = measureMarks(ticket);
  const [scan = 'open', up = 'open', unit = 'open', cut = 'open', sound = 'open'] = marks;
  const [way = 'open', volume = 'open'] = marks.slice(-2);
  return (
    <>
      <ErrorSummary ticket={ticket} names={boxesOf(ticket)} />
      {fault !== undefined && <Fault message={fault} onAgain={bench.again} />}
      <WayQuestion {...{ ticket, dispatch, piece }} mark={way} />
      {isScanAsked(ticket) && <ScanQuestion ticket={ticket} mark={scan} onOpen={bench.open} />}
      {!isScanAsked(ticket) ? (
        <VolumeQuestion ticket={ticket} dispatch={dispatch} mark={volume} no={2} />
      ) : ticket.scan === undefined ? (
        <p className="then">
          Then: which way is up, one taped height, anything to cut off, and whether the scan is sound. The
          volume follows.
        </p>
      ) : (
        <PlacePicking of={ticket.size.key}>
          <div className="two">
            <div>
              <UpQuestion ticket={ticket} dispatch={dispatch} mark={up} />
              <UnitQuestion ticket={ticket} dispatch={dispatch} mark={unit} hand={hand} />
              <CutQuestion ticket={ticket} dispatch={dispatch} mark={cut} />
            </div>
            <ScanPicture {...{ ticket, dispatch, bench, hand }} />
          </div>
          <SoundQuestion ticket={ticket} dispatch={dispatch} mark={sound} />
          <VolumeQuestion ticket={ticket} dispatch={dispatch} mark={volume} no={6} />
        </PlacePicking>
      )}
    </>
  );
}

function boxesOf(ticket: Ticket): FieldName[] {
  return [
    ...(ticket.scaleWay === 'tape' ? (['tape'] as const) : []),
    ...(secondByOf(ticket) === undefined ? [] : (['checkLength'] as const)),
    'cutHeight',
    ...fieldsOfWay(ticket),
  ];
}

/** Pointing ends with the scan it began on. */
function usePointHand(ticket: Ticket, dispatch: AskProps['dispatch']): PointHand {
  const [pointingAt, setPointingAt] = useState<number | undefined>(undefined);
  const picture = pictureNow(ticket).answer ?? ticket.picture.before;
  const canPoint = isDrawn(picture);
  return {
    canPoint,
    isPointing: canPoint && pointingAt !== undefined && pointingAt === ticket.scan?.no,
    onStart: () => {
      if (ticket.measuring.points.length === 2) dispatch({ do: 'clearPoints' });
      setPointingAt(ticket.scan?.no);
    },
    onLeave: () => setPointingAt(undefined),
  };
}
