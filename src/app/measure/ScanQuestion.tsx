import { amount } from '../../words/sentence';
import { Complaint } from '../parts/Complaint';
import { Fault } from '../parts/Fault';
import { Verdict } from '../parts/Figure';
import { FileButton } from '../parts/FileButton';
import { Question } from '../parts/Question';
import type { Mark } from '../parts/StatusMark';
import { SCAN_ENDINGS, SCAN_KINDS } from '../shelf/scanNames';
import { SAMPLE_SCANS, sourceOfFile, sourceOfSample } from '../ticket/sampleScans';
import type { Ticket } from '../ticket/state';
import type { KeptSource } from '../ticket/keptSource';

export function ScanQuestion({
  ticket,
  mark,
  onOpen,
}: {
  ticket: Ticket;
  mark: Mark;
  onOpen: (source: KeptSource) => void;
}) {
  const { scan, reading } = ticket;
  return (
    <Question
      mark={mark}
      ask="What did you scan?"
      busy={reading.state === 'running'}
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
          ? `A mesh of the sculpt as ${SCAN_KINDS}. It is read here; nothing leaves this device.`
          : undefined
      }
    >
      {reading.problem !== undefined && (
        <Complaint problem={reading.problem} about={reading.source?.name ?? ''} />
      )}
      {reading.problem !== undefined && scan !== undefined && (
        <p className="note">{scan.source.name} is still on the ticket, with all that was typed.</p>
      )}
      {reading.message !== undefined && (
        <Fault
          message={`${reading.source?.name ?? 'the scan'}: ${reading.message}`}
          onAgain={() => reading.source !== undefined && onOpen(reading.source)}
        />
      )}
      {reading.state === 'cancelled' && (
        <p className="note">Reading {reading.source?.name} was cancelled. Choose it again to go on.</p>
      )}
      <FileChoice first={scan === undefined} onOpen={onOpen} />
      <Samples onOpen={onOpen} first={scan === undefined} />
    </Question>
  );
}

/** A file can be dropped anywhere; here it is said. */
function FileChoice({ first, onOpen }: { first: boolean; onOpen: (source: KeptSource) => void }) {
  return (
    <div className="drop">
      <FileButton
        label={first ? 'Choose a scan' : 'Choose another scan'}
        accept={SCAN_ENDINGS}
        className={first ? 'btn' : 'btn line'}
        onFile={(file) => onOpen(sourceOfFile(file))}
      />
      <span className="quiet">or drop the file anywhere on this page</span>
    </div>
  );
}

function Samples({ first, onOpen }: { first: boolean; onOpen: (source: KeptSource) => void }) {
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
