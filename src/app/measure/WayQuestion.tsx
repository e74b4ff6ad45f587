import { Choices } from '../parts/Choices';
import { Complaint } from '../parts/Complaint';
import { Verdict } from '../parts/Figure';
import { Question } from '../parts/Question';
import type { Mark } from '../parts/StatusMark';
import { fillNow, sculptNow } from '../ticket/now';
import type { SizeWay } from '../ticket/sizingState';
import type { Ticket } from '../ticket/state';
import { isFillSaid } from '../ticket/wayReads';
import { WAY_BECAUSE, WAY_LABELS } from '../words/wayWords';
import { BodyFields } from './BodyFields';
import { FillFields } from './FillFields';
import { SunkFields } from './SunkFields';
import type { WayProps } from './wayProps';

/** The ways in, and the boxes of the chosen one. A scan has questions of its own, below. */
export function WayQuestion({ ticket, dispatch, piece, mark }: WayProps & { mark: Mark }) {
  const { way } = ticket.sizing;
  const isFilled = isFillSaid(ticket);
  return (
    <Question
      no={1}
      mark={mark}
      ask="How do we know its size?"
      answer={<Verdict>{verdictOf(ticket)}</Verdict>}
      because={isFilled && way !== 'tape' ? WAY_BECAUSE.fill : WAY_BECAUSE[way]}
    >
      <Choices<SizeWay>
        legend="Way in"
        name="size-way"
        value={way}
        options={(Object.keys(WAY_LABELS) as SizeWay[]).map((value) => ({ value, label: WAY_LABELS[value] }))}
        onChoose={(chosen) => dispatch({ do: 'sizeWay', way: chosen })}
      />
      {way === 'displace' && <SunkFields {...{ ticket, dispatch }} />}
      {way === 'tape' && <BodyFields {...{ ticket, dispatch }} />}
      {(way === 'fill' || isFilled) && <FillFields {...{ ticket, dispatch, piece }} />}
      {problemsOf(ticket).map((problem) => (
        <Complaint key={problem.code} problem={problem} />
      ))}
      {ticket.scan === undefined && way !== 'scan' && (
        <p className="note">
          Without a scan there are grams, a pack and the chance of a short fill. Silicone to buy, opening,
          vents, skin and pictures need one: there it says so.
        </p>
      )}
    </Question>
  );
}

function verdictOf(ticket: Ticket): string {
  const { way } = ticket.sizing;
  const isFilled = fillNow(ticket).state === 'answered';
  const sculpt = sculptNow(ticket).answer?.by;
  if (isFilled && ticket.filling.isAside)
    return sculpt === undefined
      ? 'The water fill stands aside'
      : `${BY[sculpt]}; the water fill stands aside`;
  if (isFilled) return sculpt === undefined ? BY.fill : `${BY[sculpt]}, then ${lower(BY.fill)}`;
  if (sculpt !== undefined) return BY[sculpt];
  return way === 'scan'
    ? ticket.scan === undefined
      ? 'Not known yet'
      : 'By a scan'
    : `Not yet ${NOT_YET[way]}`;
}

const lower = (words: string): string => words.charAt(0).toLowerCase() + words.slice(1);

const BY: Readonly<Record<SizeWay, string>> = {
  scan: 'By a scan',
  fill: 'By water in the mold',
  displace: 'By what the sculpt displaced',
  tape: 'By the tape',
};

const NOT_YET: Readonly<Record<Exclude<SizeWay, 'scan'>, string>> = {
  fill: 'filled',
  displace: 'sunk',
  tape: 'taped',
};

/** Why a way in gives no volume, where what was typed is the reason. */
function problemsOf(ticket: Ticket) {
  const { way } = ticket.sizing;
  const sculpt = way === 'displace' || way === 'tape' ? sculptNow(ticket).problem : undefined;
  return [sculpt, fillNow(ticket).problem].filter((one) => one !== undefined);
}
