import { ENDS_Z } from '../../plan';
import { RULES, type Batch, type Rule } from '../../yield';
import { formatMass, formatVolume } from '../../units';
import { Verdict } from '../parts/Figure';
import { Question } from '../parts/Question';
import { QuantityField } from '../parts/QuantityField';
import { SourceTag } from '../parts/SourceTag';
import { Working } from '../parts/Working';
import { SumOf } from '../pour/SumOf';
import { rangeText } from '../../words/rangeText';
import type { BatchProps } from './batchProps';

const grams = ({ value, from }: Rule) => ({ text: `${value} g`, shown: `${value} g`, basis: from });

export function LossQuestion({ no, ticket, dispatch, mark, problemOf, pour }: BatchProps) {
  const field = { ticket, dispatch };
  const { state, answer } = pour;
  return (
    <Question
      no={no}
      mark={mark}
      ask="What never reaches the mold?"
      busy={state === 'working'}
      answer={
        state === 'working' ? <Working what="the losses" /> : answer && <LossAnswer batch={answer.batch} />
      }
      because="What stays in the cup and what leaves by the riser, the vents or as gas is mixed on top."
      change={<SumOf pour={pour} part="losses" />}
    >
      <div className="fields">
        <QuantityField
          name="riser"
          label="Riser volume"
          {...field}
          problem={problemOf('riser')}
          assumed={{
            text: `${RULES.riser.value} cm3`,
            shown: `${RULES.riser.value} cm³`,
            basis: RULES.riser.from,
          }}
        />
        <QuantityField
          name="vents"
          label="Foam out of the vents"
          {...field}
          problem={problemOf('vents')}
          assumed={grams(RULES.vents)}
        />
        <QuantityField
          name="residue"
          label="Residue in the cup"
          {...field}
          problem={problemOf('residue')}
          assumed={grams(RULES.residue)}
        />
        <QuantityField
          name="scaleStep"
          label="Step of the scale"
          {...field}
          problem={problemOf('scaleStep')}
          assumed={grams(RULES.scaleStep)}
        />
        <QuantityField
          name="scaleMost"
          label="The most the scale takes"
          {...field}
          problem={problemOf('scaleMost')}
        />
      </div>
    </Question>
  );
}

function LossAnswer({ batch }: { batch: Batch }) {
  const { inputs, assumptions } = batch;
  const isAssumed = (name: string): string | undefined =>
    assumptions.some((a) => a.name === name) ? 'assumed' : undefined;
  const text = residueText(batch);
  return (
    <>
      <Verdict>
        <span className={isAssumed('residue_g')}>{formatMass(inputs.residueG)} stay in the cup</span>,{' '}
        <span className={isAssumed('vents_g')}>{formatMass(inputs.ventsG)} leave by the vents</span>
        {inputs.riserCm3 > 0 && `, ${formatVolume(inputs.riserCm3)} fill the riser`}
      </Verdict>
      <span className="rng">
        {text.low} to {text.high} g in the cup, 9 times in 10
      </span>
      <SourceTag from={isAssumed('residue_g') === undefined ? 'given' : 'assumed'} />
    </>
  );
}

/** What is left in a cup, with the doubt that the budget has of it. */
function residueText({ inputs, uncertainty, stepG }: Batch) {
  const uG = uncertainty.find(({ input }) => input === 'residue')?.contributionG ?? 0;
  const { residueG } = inputs;
  const half = ENDS_Z * uG;
  return rangeText(
    { value: residueG, low: Math.max(0, residueG - half), high: residueG + half },
    { step: stepG },
  );
}
