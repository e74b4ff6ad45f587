import { gramsText } from '../../units';
import type { OpenedFigure } from '../../plan';
import { massRatio, RULES, targetAG, type MassRatio } from '../../yield';
import { amount } from '../../words/sentence';
import type { BatchProps } from '../batch/batchProps';
import { Disclosure } from '../parts/Disclosure';
import { Verdict } from '../parts/Figure';
import { Letter } from '../parts/Letter';
import { Question } from '../parts/Question';
import { readField, valueIn } from '../ticket/readField';
import { OpenedFigures } from './OpenedFigures';
import { PourField } from './PourField';
import { PrintSheet } from './PrintSheet';

/** At the bench: B as it lies in the cup, and the A that goes with it. Of the card alone: it waits for no engine. */
export function BenchQuestion(props: BatchProps) {
  const { no, mark, ticket, card, pour, piece } = props;
  const ratio = card?.ok === true ? massRatio(card.value.ratio, card.value.partDensities) : undefined;
  const bG = valueIn(ticket.fields, 'bInCup');
  const saidStepG = valueIn(ticket.fields, 'scaleStep');
  const stepG = saidStepG ?? RULES.scaleStep.value;
  const aG =
    ratio?.ok === true && bG !== undefined
      ? stepG * Math.round(targetAG(ratio.value, bG) / stepG)
      : undefined;
  const step =
    saidStepG === undefined ? { from: RULES.scaleStep.from, isAssumed: true as const } : { from: 'given' };
  const figure =
    ratio?.ok === true && bG !== undefined && aG !== undefined
      ? figureOfA({ aG, bG, stepG, ratio: ratio.value, by: ratioBy(card), step })
      : undefined;
  return (
    <Question
      no={no}
      mark={mark}
      ask="How much A goes onto the B in the cup?"
      answer={<Verdict>{aG === undefined ? waitWords(props) : `${gramsText(aG, stepG)} g of A`}</Verdict>}
      because="B never lands on the gram. Weigh it first, read the scale, type what it says: A follows, and the ratio stays right."
      change={
        figure !== undefined && (
          <Disclosure>
            <OpenedFigures figures={[figure]} />
          </Disclosure>
        )
      }
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
        <PrintSheet ticket={ticket} piece={piece} pour={pour} />
      </p>
    </Question>
  );
}

const ratioBy = (card: BatchProps['card']): string =>
  card?.ok === true && card.value.ratio.by === 'volume' ? 'by volume, through the densities' : 'given';

interface LiveA {
  aG: number;
  bG: number;
  stepG: number;
  ratio: MassRatio;
  by: string;
  step: Pick<OpenedFigure['inputs'][number], 'from' | 'isAssumed'>;
}

function figureOfA({ aG, bG, stepG, ratio, by, step }: LiveA): OpenedFigure {
  return {
    key: 'a_for_b_g',
    title: 'A for the B in the cup',
    value: aG,
    unit: 'g',
    shown: 'exact',
    formula: 'B x a / b, to the step of the scale',
    inputs: [
      { title: 'B in the cup, as read', value: bG, unit: 'g', from: 'weighed', shown: 'exact' },
      { title: 'a, parts A by weight', value: ratio.a, unit: '', from: by },
      { title: 'b, parts B by weight', value: ratio.b, unit: '', from: by },
      { title: 'step of the scale', value: stepG, unit: 'g', ...step },
    ],
    source: 'the ratio of the data sheet: the error of B is made good',
  };
}

function waitWords({ ticket, card }: BatchProps): string {
  if (card?.ok !== true) return 'No foam yet';
  const { kind } = readField('bInCup', ticket.fields.bInCup);
  return kind === 'ask' || kind === 'error' ? 'The scale cannot be read' : 'B is not weighed yet';
}
