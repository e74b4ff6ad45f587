import { useEffect, useRef } from 'react';
import type { OpeningPlan } from '../../plan';
import { assumptionLine } from '../../words/assumptionWords';
import { openingBecause } from '../../words/openingBecause';
import { ventWords } from '../../words/openingVents';
import { Complaint } from '../parts/Complaint';
import { Disclosure } from '../parts/Disclosure';
import { Fault } from '../parts/Fault';
import { Verdict } from '../parts/Figure';
import { FigureTable } from '../parts/FigureTable';
import { FindingsTable } from '../parts/FindingsTable';
import { Question } from '../parts/Question';
import { SourceTag } from '../parts/SourceTag';
import { Working } from '../parts/Working';
import { fieldId } from '../parts/fieldId';
import type { Mark } from '../parts/StatusMark';
import { fieldOfOpening } from '../ticket/openingBounds';
import { halfPlaces, openingAskOf } from '../ticket/openingWishes';
import type { Ticket } from '../ticket/state';
import type { FieldName } from '../ticket/fields';
import { fieldWords } from '../words/fieldWords';
import { fillSentence, LOWER_BOUND, stretchSentence } from '../words/openingPhrases';
import { bandRows, demoldRows, offerRows } from '../words/openingRows';
import { OpeningCautions } from './OpeningCautions';
import { OpeningForm } from './OpeningForm';
import type { OpeningProps } from './openingProps';
import { OwnBar } from './OwnBar';
import { PrintCard } from './PrintCard';
import { Spots } from './Spots';
import { Ways } from './WaysTable';

type Props = OpeningProps & { no: number; mark: Mark; onCancel: () => void };

/** Opening, vents, way up, thin places and the way out. Begun when it comes into view: it takes seconds. */
export function OpeningQuestion(props: Props) {
  const { ticket, dispatch, now, no, mark } = props;
  const want = (): void => dispatch({ do: 'wantOpening' });
  const seen = useSeen(!ticket.venting.isWanted, want);
  const plan = now.answer;
  return (
    <div ref={seen}>
      <Question
        no={no}
        mark={mark}
        ask="Will it fill, and come out?"
        busy={now.state === 'working'}
        answer={<Answer now={now} />}
        because={LOWER_BOUND}
        change={
          <>
            <PrintCard ticket={ticket} plan={plan} />
            {plan !== undefined && <Sum ticket={ticket} plan={plan} />}
          </>
        }
      >
        <OpeningForm {...props} />
        <WhyNone {...props} onWant={want} />
        <OpeningCautions plan={plan ?? ticket.opening.before} />
        {plan !== undefined && <Found {...props} plan={plan} />}
      </Question>
    </div>
  );
}

function Answer({ now: { state, answer } }: Pick<OpeningProps, 'now'>) {
  if (state === 'working') return <Working what="air, thin places and the way out" />;
  if (answer === undefined) return <Verdict>Not worked out yet</Verdict>;
  const { assumptions, demold } = answer;
  return (
    <>
      <Verdict>{fillSentence(answer)}</Verdict>
      <span className="rng">{stretchSentence(answer)}</span>
      <SourceTag from={answer.filling.trappedCm3.from} />
      {(assumptions.length > 0 || demold?.allowedStretch.from === 'assumed') && <SourceTag from="assumed" />}
    </>
  );
}

function Found(props: Props & { plan: OpeningPlan }) {
  const { plan } = props;
  const offers = offerRows(plan);
  return (
    <>
      <FindingsTable
        findings={[...plan.findings, ...plan.checks]}
        caption="Checks of opening, vents and the way out"
      />
      <FigureTable
        rows={bandRows(plan)}
        head={['Opening', 'Diameter']}
        caption="The advised band of diameters. Too wide an opening gives a worse skin (common practice, no source)."
      />
      {offers.length > 0 && (
        <FigureTable
          rows={offers}
          head={['Ways out of an empty band', 'What it takes']}
          caption="No single opening both pours in time and stays within what is advised."
        />
      )}
      <Spots plan={plan} />
      {plan.demold !== undefined && (
        <FigureTable
          rows={demoldRows(plan.demold, plan.card.boundsMm)}
          head={['The way out', 'Figure']}
          caption="Girths measured on the scan along the way the opening faces."
        />
      )}
      <Ways {...props} />
    </>
  );
}

/** Why there is no answer: what is under way, what stops it, or the way to the box that does. */
function WhyNone({ ticket, now, dispatch, onCancel, onWant }: Props & { onWant: () => void }) {
  // While the molds have the engine, theirs is the bar.
  if (now.state === 'working' && ticket.opening.state === 'running' && ticket.mold.state !== 'running')
    return (
      <OwnBar
        what="Working out opening, vents and the way out"
        share={ticket.opening.share}
        stop="opening, vents and the way out"
        onCancel={onCancel}
      />
    );
  if (now.message !== undefined) return <Fault message={now.message} onAgain={onWant} />;
  if (now.state === 'cancelled')
    return (
      <div className="chg">
        <p className="note">It was cancelled. All that was typed is still here.</p>
        <button type="button" className="act" onClick={() => dispatch({ do: 'wantOpening' })}>
          Work it out again
        </button>
      </div>
    );
  const field =
    now.state === 'unread' ? now.field : now.problem === undefined ? undefined : fieldOfOpening(now.problem);
  if (field !== undefined && field !== 'kits')
    return <ToField field={field} isHalf={halfPlaces(ticket).includes(field)} />;
  return now.problem === undefined ? null : <Complaint problem={now.problem} />;
}

const ToField = ({ field, isHalf }: { field: FieldName; isHalf: boolean }) => (
  <p className="note">
    {isHalf
      ? 'A place needs x, y and z. Type the others too, or leave all of them blank: '
      : 'It is not worked out until one field is put right: '}
    <a className="act" href={`#${fieldId(field)}`}>
      {fieldWords(field)}
    </a>
  </p>
);

/** How the figures came about, why the vents are small, and what was taken for granted. */
function Sum({ ticket, plan }: { ticket: Ticket; plan: OpeningPlan }) {
  const ask = openingAskOf(ticket) ?? {};
  return (
    <Disclosure>
      {[...openingBecause(plan, ask), ...ventWords(plan, ask)].map((line) => (
        <p key={line}>{line}</p>
      ))}
      {plan.assumptions.length > 0 && (
        <ul>
          {plan.assumptions.map((assumption) => (
            <li key={assumption.name}>
              <span className="assumed">{assumptionLine(assumption)}</span>
            </li>
          ))}
        </ul>
      )}
    </Disclosure>
  );
}

/** Told once, when it comes into view while it `is` of interest. */
function useSeen(is: boolean, onSeen: () => void): React.RefObject<HTMLDivElement | null> {
  const box = useRef<HTMLDivElement>(null);
  const told = useRef(onSeen);
  useEffect(() => {
    told.current = onSeen;
  });
  useEffect(() => {
    const element = box.current;
    if (!is || element === null) return;
    const watch = new IntersectionObserver((entries) => {
      if (entries.some(({ isIntersecting }) => isIntersecting)) told.current();
    });
    watch.observe(element);
    return () => watch.disconnect();
  }, [is]);
  return box;
}
