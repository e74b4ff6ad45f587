import { MOLD_TYPES } from '../../geometry';
import { amount } from '../../words/sentence';
import { Complaint } from '../parts/Complaint';
import { Verdict } from '../parts/Figure';
import { Question } from '../parts/Question';
import { SourceTag } from '../parts/SourceTag';
import { Working } from '../parts/Working';
import { fieldId } from '../parts/fieldId';
import { typeOf } from '../ticket/moldState';
import { moldNow } from '../ticket/now';
import type { Ticket } from '../ticket/state';
import { fieldWords, lowerFirst } from '../words/fieldWords';
import { shellWords } from '../words/moldFigures';
import { fieldOfMold } from './fieldProblem';
import { liveSilicone } from './liveSilicone';
import { needKg } from './liveWords';
import type { MoldProps } from './moldProps';
import { ParameterForm } from './ParameterForm';
import { TypeTable } from './TypeTable';

export function TypeQuestion({ ticket, dispatch, mark, now, problemOf }: MoldProps) {
  const type = typeOf(ticket.molding);
  const isChosen = ticket.molding.type !== undefined;
  return (
    <Question
      no={1}
      mark={mark}
      ask="Which kind of mold?"
      busy={now.state === 'working'}
      answer={
        <>
          {now.state === 'working' ? (
            <LiveType ticket={ticket} />
          ) : (
            <Verdict>
              <span className={isChosen ? undefined : 'assumed'}>
                {type.title}
                {now.answer === undefined
                  ? ': no figures'
                  : `, ${amount(now.answer.shape.wallMm, 3)} mm, ${shellWords(now.answer)}`}
              </span>
            </Verdict>
          )}
          <SourceTag from={isChosen ? 'chosen' : 'assumed'} />
        </>
      }
      because={type.goodFor}
      change={
        isChosen ? undefined : (
          <button
            type="button"
            className="act"
            onClick={() => dispatch({ do: 'molding', molding: { type: type.key } })}
          >
            Confirm {lowerFirst(type.title)}
          </button>
        )
      }
    >
      <TypeTable ticket={ticket} dispatch={dispatch} />
      <ParameterForm {...{ type, ticket, dispatch, problemOf, now }} />
      <WhyNone ticket={ticket} now={now} />
      <OtherReasons ticket={ticket} />
    </Question>
  );
}

/** While another thickness is worked out: what the measured rungs say of it, else that it is worked out. */
function LiveType({ ticket }: { ticket: Ticket }) {
  const live = liveSilicone(ticket);
  if (live.state !== 'told') return <Working what="the molds" />;
  return (
    <Verdict>
      {typeOf(ticket.molding).title}, {amount(live.mm, 3)} mm, about {needKg(live.need).value} kg of silicone
    </Verdict>
  );
}

/** Below the boxes, so that it does not push them about. A problem of a box is told by the box; here is the way to it. */
function WhyNone({ ticket, now }: Pick<MoldProps, 'ticket' | 'now'>) {
  if (now.state === 'unread' && now.field === 'kits')
    return <p className="note">The kits, in question 3, cannot be read. Until they can there is no mold.</p>;
  const field =
    now.state === 'unread'
      ? now.field
      : now.problem === undefined
        ? undefined
        : fieldOfMold(ticket, now.problem);
  if (field !== undefined && field !== 'kits')
    return (
      <p className="note">
        There is no mold until one field is put right:{' '}
        <a className="act" href={`#${fieldId(field)}`}>
          {fieldWords(field)}
        </a>
      </p>
    );
  return now.problem === undefined ? null : <Complaint problem={now.problem} />;
}

/** Why another type has no figures in the table. */
function OtherReasons({ ticket }: { ticket: Ticket }) {
  const { answer } = moldNow(ticket);
  const others = MOLD_TYPES.filter(({ key }) => key !== typeOf(ticket.molding).key);
  return (
    <>
      {others.map(({ key, title }) => {
        const mold = answer?.find(({ type }) => type === key)?.mold;
        return mold?.ok === false ? <Complaint key={key} problem={mold.problem} about={title} /> : null;
      })}
    </>
  );
}
