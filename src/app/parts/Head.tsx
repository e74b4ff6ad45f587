import type { PourOnPage } from '../../worker/pour';
import { gramsText } from '../../units';
import { pourNow, sizeNow } from '../ticket/now';
import type { Ticket } from '../ticket/state';
import { rangeText } from '../words/rangeText';
import { chosenNow } from '../mold/chosen';
import { totalKg } from '../words/moldFigures';
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
        <Silicone ticket={ticket} />
      </p>
    </header>
  );
}

/** Kept in its place while the mold is worked out, which takes longest. */
function Silicone({ ticket }: { ticket: Ticket }) {
  const { state, answer } = chosenNow(ticket);
  if (answer !== undefined) return <span className="nb">{totalKg(answer).value} kg of silicone</span>;
  return state === 'working' && sizeNow(ticket).answer !== undefined ? (
    <span className="nb">… kg of silicone</span>
  ) : null;
}

/** Of all cups. */
function Grams({ pour: { batch, cups } }: { pour: PourOnPage }) {
  const count = cups.cups.length;
  return (
    <>
      <span className="pair">
        <span className="nb">
          <Letter of="A" /> <strong>{gramsText(cups.partAG, batch.stepG)} g</strong>
        </span>
        <span className="nb">
          <Letter of="B" /> <strong>{gramsText(cups.partBG, batch.stepG)} g</strong>
        </span>
      </span>
      <span>
        {gramsText(cups.totalG, batch.stepG)} g {count > 1 ? `in ${count} cups` : 'together'}
      </span>
    </>
  );
}
