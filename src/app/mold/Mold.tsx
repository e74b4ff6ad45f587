import type { Problem } from '../../problem';
import type { AskProps } from '../measure/askProps';
import { ErrorSummary } from '../parts/ErrorSummary';
import { Fault } from '../parts/Fault';
import { Verdict } from '../parts/Figure';
import { Question } from '../parts/Question';
import type { FieldName } from '../ticket/fields';
import { moldFields } from '../ticket/moldWishes';
import { fieldOfOpening } from '../ticket/openingBounds';
import { openingFields } from '../ticket/openingWishes';
import { castingNow, filledNow, openingNow, sizeNow } from '../ticket/now';
import type { Ticket } from '../ticket/state';
import type { Bench } from '../ticket/useEngine';
import { BearQuestion } from './BearQuestion';
import { CavityQuestion } from './CavityQuestion';
import { chosenNow } from './chosen';
import { fieldOfMold } from './fieldProblem';
import { FinishQuestion } from './FinishQuestion';
import { HoldQuestion } from './HoldQuestion';
import { moldMarks } from './marks';
import { SiliconeQuestion } from './SiliconeQuestion';
import { MoldView } from './MoldView';
import { OpeningQuestion } from '../opening/OpeningQuestion';
import { PlacePicking } from '../picture/PlacePicking';
import { TypeQuestion } from './TypeQuestion';

const QUESTIONS = [
  TypeQuestion,
  HoldQuestion,
  SiliconeQuestion,
  BearQuestion,
  CavityQuestion,
  FinishQuestion,
];

export function Mold({ ticket, dispatch, bench }: Omit<AskProps, 'mark'> & { bench: Bench }) {
  const now = chosenNow(ticket);
  const problems = [now.problem, castingNow(ticket).problem, filledNow(ticket).problem].filter(
    (one) => one !== undefined,
  );
  const opening = openingNow(ticket);
  const openingProblem = (field: FieldName): Problem | undefined =>
    opening.problem !== undefined && fieldOfOpening(opening.problem) === field ? opening.problem : undefined;
  const problemOf = (field: FieldName | 'kits'): Problem | undefined =>
    problems.find((problem) => fieldOfMold(ticket, problem) === field);
  const marks = moldMarks(ticket);
  const fault = now.message ?? castingNow(ticket).message;
  return (
    <>
      {!hasSize(ticket) ? (
        <NotYet ticket={ticket} />
      ) : (
        <>
          <ErrorSummary
            ticket={ticket}
            names={[...moldFields(ticket), ...openingFields(ticket)]}
            problemOf={(field) => problemOf(field) ?? openingProblem(field)}
          />
          {fault !== undefined && <Fault message={fault} onAgain={bench.again} />}
          <PlacePicking of={opening.answer}>
            <div className="two">
              <div>
                {QUESTIONS.map((Ask, i) => (
                  <Ask key={i} {...{ ticket, dispatch, now, problemOf, bench }} mark={marks[i] ?? 'open'} />
                ))}
                <OpeningQuestion
                  {...{ ticket, dispatch }}
                  no={QUESTIONS.length + 1}
                  now={opening}
                  problemOf={openingProblem}
                  mark={marks[QUESTIONS.length] ?? 'open'}
                  onCancel={bench.cancel}
                />
              </div>
              <MoldView {...{ ticket, dispatch }} />
            </div>
          </PlacePicking>
        </>
      )}
    </>
  );
}

/** Shown from the first size on: what is typed here must not go away while another size is worked out. */
const hasSize = (ticket: Ticket): boolean =>
  ticket.scan !== undefined && (ticket.size.answer ?? ticket.size.before) !== undefined;

function NotYet({ ticket }: { ticket: Ticket }) {
  const isWorking = sizeNow(ticket).state === 'working';
  return (
    <Question
      no={1}
      mark="open"
      ask="Which kind of mold?"
      busy={isWorking}
      answer={<Verdict>No mold yet</Verdict>}
      because={
        ticket.scan === undefined
          ? 'Measure comes first: a mold is built around a scan whose size is known. A volume alone gives grams in Batch, but no wall, no skin and no silicone.'
          : 'Measure comes first: the scan has no size yet.'
      }
    >
      <p className="why">
        Then: the types side by side, what must hold, the silicone to mix and buy, whether the materials bear
        each other, the cavity when the foam is poured, and whether it will fill and come out.
      </p>
    </Question>
  );
}
