import type { Pour } from '../../plan';
import { gramsText } from '../../units';
import { pourNow, sizeNow } from '../ticket/now';
import type { Ticket } from '../ticket/state';
import { rangeText } from '../words/rangeText';
import { Letter } from './Letter';

/** Name of the ticket and what it has come to so far. */
export function Head({ ticket }: { ticket: Ticket }) {
  const { scan } = ticket;
  const size = sizeNow(ticket);
  const pour = pourNow(ticket);
  const volume = size.answer?.size.volumeCm3;
  return (
    <header className="head">
      <h1>Pour ticket</h1>
      <p className="of">
        {scan === undefined ? 'From a scan of a sculpt to the grams of A and B to weigh.' : scan.source.name}
      </p>
      <p className="sofar">
        <b>So far</b>
        {volume !== undefined && <strong>{rangeText(volume).value} cm³</strong>}
        {volume === undefined && <span>{size.state === 'working' ? 'working out …' : 'no volume'}</span>}
        {pour.answer !== undefined ? (
          <Grams pour={pour.answer} />
        ) : pour.state !== 'working' ? (
          <span>no grams</span>
        ) : (
          volume !== undefined && <span>working out the grams …</span>
        )}
      </p>
    </header>
  );
}

function Grams({ pour: { batch } }: { pour: Pour }) {
  return (
    <>
      <span className="pair">
        <span className="nb">
          <Letter of="A" /> <strong>{gramsText(batch.partAG, batch.stepG)} g</strong>
        </span>
        <span className="nb">
          <Letter of="B" /> <strong>{gramsText(batch.partBG, batch.stepG)} g</strong>
        </span>
      </span>
      <span>{gramsText(batch.totalG, batch.stepG)} g together</span>
    </>
  );
}
