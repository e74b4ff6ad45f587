import { amount } from '../../words/sentence';
import type { Ticket } from '../ticket/state';
import { gramsText } from '../../units';
import { Letter } from './Letter';

/** Name of the ticket and what it has come to so far. */
export function Head({ ticket: { scan, size, pour } }: { ticket: Ticket }) {
  const volume = size.answer?.size.volumeCm3;
  const batch = pour.answer?.batch;
  return (
    <header className="head">
      <h1>Pour ticket</h1>
      <p className="of">
        {scan === undefined ? 'From a scan of a sculpt to the grams of A and B to weigh.' : scan.source.name}
      </p>
      <p className="sofar">
        <b>So far</b>
        {volume === undefined && <span>no volume, no grams</span>}
        {volume !== undefined && <strong>{amount(volume.value)} cm³</strong>}
        {volume !== undefined && batch === undefined && <span>no grams</span>}
        {batch !== undefined && (
          <>
            <span className="nb">
              <Letter of="A" /> <strong>{gramsText(batch.partAG, batch.stepG)} g</strong>
            </span>
            <span className="nb">
              <Letter of="B" /> <strong>{gramsText(batch.partBG, batch.stepG)} g</strong>
            </span>
            <span>{gramsText(batch.totalG, batch.stepG)} g together</span>
          </>
        )}
      </p>
    </header>
  );
}
