import { gramsText } from '../../units';
import { massRatio, RULES, targetAG } from '../../yield';
import { amount } from '../../words/sentence';
import type { BatchProps } from '../batch/batchProps';
import { Verdict } from '../parts/Figure';
import { Letter } from '../parts/Letter';
import { Question } from '../parts/Question';
import { readField, valueIn } from '../ticket/readField';
import { PourField } from './PourField';
import { PrintSheet } from './PrintSheet';

/** At the bench: B as it lies in the cup, and the A that goes with it. Of the card alone: it waits for no engine. */
export function BenchQuestion(props: BatchProps) {
  const { no, mark, ticket, card, pour } = props;
  const ratio = card?.ok === true ? massRatio(card.value.ratio, card.value.partDensities) : undefined;
  const bG = valueIn(ticket.fields, 'bInCup');
  const stepG = valueIn(ticket.fields, 'scaleStep') ?? RULES.scaleStep.value;
  const aG =
    ratio?.ok === true && bG !== undefined
      ? stepG * Math.round(targetAG(ratio.value, bG) / stepG)
      : undefined;
  return (
    <Question
      no={no}
      mark={mark}
      ask="How much A goes onto the B in the cup?"
      answer={<Verdict>{aG === undefined ? waitWords(props) : `${gramsText(aG, stepG)} g of A`}</Verdict>}
      because="B never lands on the gram. Weigh it first, read the scale, type what it says: A follows, and the ratio stays right."
    >
      <div className="fields">
        <PourField
          of={props}
          name="bInCup"
          label={
            <>
              <Letter of="B" /> in the cup, as read
            </>
          }
        />
      </div>
      {aG !== undefined && (
        <div className="grams one" aria-live="polite">
          <div>
            <p className="l">
              <Letter of="A" small={false} /> <span>set the scale to zero, then add A to</span>
            </p>
            <p className="w" data-part="A-live">
              {gramsText(aG, stepG)}
              <small>g</small>
            </p>
            <p className="sc">scale reads {gramsText(aG + (bG ?? 0), stepG)} g if it was not set to zero</p>
          </div>
        </div>
      )}
      {ratio?.ok === true && (
        <p className="why">
          {amount(ratio.value.a)} of A to {amount(ratio.value.b)} of B by weight.
        </p>
      )}
      <p className="print">
        <PrintSheet ticket={ticket} pour={pour} />
      </p>
    </Question>
  );
}

function waitWords({ ticket, card }: BatchProps): string {
  if (card?.ok !== true) return 'No foam yet';
  const { kind } = readField('bInCup', ticket.fields.bInCup);
  return kind === 'ask' || kind === 'error' ? 'The scale cannot be read' : 'B is not weighed yet';
}
