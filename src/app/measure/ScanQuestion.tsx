import { useId, useState, type DragEvent } from 'react';
import { SCAN_FORMATS } from '../../geometry';
import { amount } from '../../words/sentence';
import { Complaint } from '../parts/Complaint';
import { Verdict } from '../parts/Figure';
import { Question } from '../parts/Question';
import type { Mark } from '../parts/StatusMark';
import { SAMPLE_SCANS, sourceOfFile, sourceOfSample } from '../ticket/sampleScans';
import type { Ticket } from '../ticket/state';
import type { ScanSource } from '../../worker/engine';

const KINDS = SCAN_FORMATS.map((format) => format.title).join(' or ');

export function ScanQuestion({
  ticket,
  mark,
  onOpen,
}: {
  ticket: Ticket;
  mark: Mark;
  onOpen: (source: ScanSource) => void;
}) {
  const { scan, opening } = ticket;
  return (
    <Question
      no={1}
      mark={mark}
      ask="What did you scan?"
      busy={opening.state === 'running'}
      answer={
        scan === undefined ? (
          <Verdict>No scan yet</Verdict>
        ) : (
          <>
            <Verdict>{scan.source.name}</Verdict>
            <span className="rng">
              {scan.opened.format.toUpperCase()}, {amount(scan.opened.triangles, 9)} triangles
            </span>
          </>
        )
      }
      because={
        scan === undefined
          ? `A mesh of the sculpt as ${KINDS}. It is read here; nothing leaves this device.`
          : undefined
      }
    >
      {opening.problem !== undefined && (
        <Complaint problem={opening.problem} about={opening.source?.name ?? ''} />
      )}
      {opening.problem !== undefined && scan !== undefined && (
        <p className="note">{scan.source.name} is still on the ticket, with all that was typed.</p>
      )}
      {opening.state === 'failed' && <p className="note">A fault of ours while reading: {opening.message}</p>}
      {opening.state === 'cancelled' && (
        <p className="note">Reading {opening.source?.name} was cancelled. Choose it again to go on.</p>
      )}
      <DropZone first={scan === undefined} onOpen={onOpen} />
      <Samples onOpen={onOpen} first={scan === undefined} />
    </Question>
  );
}

/** A native file input with its label as the target, and a place to drop a file on. */
function DropZone({ first, onOpen }: { first: boolean; onOpen: (source: ScanSource) => void }) {
  const id = useId();
  const [over, setOver] = useState(false);
  const take = (file: File | undefined): void => {
    if (file !== undefined) onOpen(sourceOfFile(file));
  };
  const onDrag = (event: DragEvent, isOver: boolean): void => {
    event.preventDefault();
    setOver(isOver);
  };
  return (
    <div
      className={over ? 'drop over' : 'drop'}
      onDragOver={(e) => onDrag(e, true)}
      onDragLeave={(e) => onDrag(e, false)}
      onDrop={(e) => {
        onDrag(e, false);
        take(e.dataTransfer.files[0]);
      }}
    >
      <input
        id={id}
        type="file"
        className="sr"
        accept={SCAN_FORMATS.map(({ key }) => `.${key}`).join(',')}
        onChange={(e) => {
          take(e.target.files?.[0]);
          e.target.value = '';
        }}
      />
      <label htmlFor={id} className={first ? 'btn' : 'btn line'}>
        {first ? 'Choose a scan' : 'Choose another scan'}
      </label>
      <span className="quiet">or drop the file here</span>
    </div>
  );
}

function Samples({ first, onOpen }: { first: boolean; onOpen: (source: ScanSource) => void }) {
  return (
    <details className="samples" open={first}>
      <summary>Samples to try, all made up</summary>
      <ul>
        {SAMPLE_SCANS.map((sample) => (
          <li key={sample.name}>
            <button type="button" className="act" onClick={() => onOpen(sourceOfSample(sample))}>
              {sample.title}
            </button>
            <span>{sample.about}</span>
          </li>
        ))}
      </ul>
    </details>
  );
}
