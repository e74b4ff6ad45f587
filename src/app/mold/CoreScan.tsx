import { useState } from 'react';
import type { Core } from '../../plan';
import type { Problem } from '../../problem';
import { Complaint } from '../parts/Complaint';
import { Fault } from '../parts/Fault';
import { FileButton } from '../parts/FileButton';
import { FindingsTable } from '../parts/FindingsTable';
import { UNIT_NAMES } from '../../words/unitNames';
import { SCAN_ENDINGS } from '../shelf/scanNames';
import type { MoldProps } from './moldProps';

type Props = Pick<MoldProps, 'ticket' | 'dispatch' | 'bench'>;

/** What came of the last file: nothing of it is kept but the volume, in its box. */
type Read =
  | { state: 'working'; name: string }
  /** The sculpt had no volume, so there was nothing to lay the core into. */
  | { state: 'too early'; name: string }
  | { state: 'answered'; name: string; core: Core; scanNo: number }
  | { state: 'refused'; problem: Problem }
  | { state: 'failed'; message: string; file: File };

const unitOf = ({ ownUnit }: Core): string =>
  ownUnit === undefined ? 'the units' : `its own unit (${UNIT_NAMES[ownUnit].one})`;

/** Measures a core from its own scan, where it lies in the units and axes of the sculpt's, and types its volume. */
export function CoreScan({ ticket, dispatch, bench }: Props) {
  const [read, setRead] = useState<Read>();
  const scanNo = ticket.scan?.no ?? 0;
  const open = async (file: File): Promise<void> => {
    setRead({ state: 'working', name: file.name });
    const source = { name: file.name, byteCount: file.size, bytes: () => file.arrayBuffer() };
    const ended = await bench.core(source);
    if (ended === undefined) return setRead({ state: 'too early', name: file.name });
    if (ended.how === 'dropped') return setRead(undefined);
    if (ended.how === 'failed') return setRead({ state: 'failed', message: ended.message, file });
    if (!ended.answer.ok) return setRead({ state: 'refused', problem: ended.answer.problem });
    const core = ended.answer.value;
    setRead({ state: 'answered', name: file.name, core, scanNo });
    if (core.coreCm3 !== undefined)
      dispatch({ do: 'type', field: 'coreVolume', text: `${core.coreCm3.value.toFixed(1)} cm3` });
  };
  const isOfThis = read?.state === 'answered' && read.scanNo === scanNo;
  return (
    <>
      <div className="chg">
        <FileButton
          label="Measure the core from its scan"
          accept={SCAN_ENDINGS}
          onFile={(file) => void open(file)}
        />
      </div>
      <div role="status">
        {read?.state === 'working' && <p className="note">Measuring {read.name} …</p>}
        {read?.state === 'too early' && (
          <p className="note">
            {read.name} was not read: the scan of the sculpt has no volume at the moment. Choose it again once
            Measure has one.
          </p>
        )}
        {isOfThis && (
          <p className="note">
            {read.name} was read in {unitOf(read.core)} and on the axes of the scan; its volume is in the box.
          </p>
        )}
      </div>
      {isOfThis && <FindingsTable findings={read.core.findings} caption="The core and the wall around it" />}
      {read?.state === 'refused' && <Complaint problem={read.problem} />}
      {read?.state === 'failed' && <Fault message={read.message} onAgain={() => void open(read.file)} />}
    </>
  );
}
