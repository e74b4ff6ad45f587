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

export function Measure({ ticket, dispatch, bench }: Omit<AskProps, 'mark'> & { bench: Bench }) {
  const [scan = 'open', up = 'open', unit = 'open', cut = 'open', sound = 'open', volume = 'open'] =
    measureMarks(ticket);
  return (
    <section className="part" id="measure" aria-labelledby="measure-title" tabIndex={-1}>
      <h2 id="measure-title">Measure</h2>
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
            <PictureCard
              picture={ticket.picture.answer}
              mmPerUnit={ticket.size.answer?.size.scale.mmPerUnit}
              alternative={pictureWords(ticket)}
            />
          </div>
          <SoundQuestion ticket={ticket} mark={sound} />
          <VolumeQuestion ticket={ticket} mark={volume} />
        </>
      )}
    </section>
  );
}
