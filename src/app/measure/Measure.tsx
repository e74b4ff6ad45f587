import { PictureCard } from '../../viewer/PictureCard';
import type { Bench } from '../ticket/useEngine';
import type { AskProps } from './askProps';
import { CutQuestion } from './CutQuestion';
import { pictureWords } from './pictureWords';
import { ScanQuestion } from './ScanQuestion';
import { SoundQuestion } from './SoundQuestion';
import { UnitQuestion } from './UnitQuestion';
import { UpQuestion } from './UpQuestion';
import { VolumeQuestion } from './VolumeQuestion';
import { measureMarks } from './marks';
import { ErrorSummary } from '../parts/ErrorSummary';
import { Fault } from '../parts/Fault';
import { pictureNow, sizeNow } from '../ticket/now';
import type { Ticket } from '../ticket/state';
import { sayOnPage } from '../words/sayOnPage';

export function Measure({ ticket, dispatch, bench }: Omit<AskProps, 'mark'> & { bench: Bench }) {
  const fault = sizeNow(ticket).message ?? pictureNow(ticket).message;
  const [scan = 'open', up = 'open', unit = 'open', cut = 'open', sound = 'open', volume = 'open'] =
    measureMarks(ticket);
  return (
    <section className="part" id="measure" aria-labelledby="measure-title" tabIndex={-1}>
      <h2 id="measure-title" tabIndex={-1}>
        Measure
      </h2>
      <ErrorSummary
        ticket={ticket}
        names={ticket.scaleWay === 'tape' ? ['tape', 'cutHeight'] : ['cutHeight']}
      />
      {fault !== undefined && <Fault message={fault} onAgain={bench.again} />}
      <ScanQuestion ticket={ticket} mark={scan} onOpen={bench.open} />
      {ticket.scan === undefined ? (
        <p className="then">
          Then: which way is up, one taped height, anything to cut off, and whether the scan is sound. The
          volume follows.
        </p>
      ) : (
        <>
          <div className="two">
            <div>
              <UpQuestion ticket={ticket} dispatch={dispatch} mark={up} />
              <UnitQuestion ticket={ticket} dispatch={dispatch} mark={unit} />
              <CutQuestion ticket={ticket} dispatch={dispatch} mark={cut} />
            </div>
            <ScanPicture ticket={ticket} />
          </div>
          <SoundQuestion ticket={ticket} mark={sound} />
          <VolumeQuestion ticket={ticket} mark={volume} />
        </>
      )}
    </section>
  );
}

/** The picture stands still on what was drawn last while another is worked out, and says so. */
function ScanPicture({ ticket }: { ticket: Ticket }) {
  const { state, problem, answer } = pictureNow(ticket);
  const isWorking = state === 'working';
  const size = sizeNow(ticket);
  const scale = ticket.size.answer ?? ticket.size.before;
  return (
    <PictureCard
      picture={isWorking ? (ticket.picture.answer ?? ticket.picture.before) : answer}
      mmPerUnit={scale?.size.scale.mmPerUnit}
      isScaleCurrent={size.state !== 'working'}
      note={
        isWorking
          ? 'The picture is being drawn.'
          : problem === undefined
            ? NOTES[state]
            : sayOnPage(problem).text
      }
      alternative={pictureWords(ticket)}
    />
  );
}

const NOTES: Partial<Record<string, string>> = {
  cancelled: 'No picture: it was cancelled.',
  failed: 'No picture: a fault of ours. The file is untouched.',
};
