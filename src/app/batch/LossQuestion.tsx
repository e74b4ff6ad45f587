import { RULES, type Batch, type Rule } from '../../yield';
import { formatMass, formatVolume } from '../../units';
import { Verdict } from '../parts/Figure';
import { Question } from '../parts/Question';
import { QuantityField } from '../parts/QuantityField';
import { Working } from '../parts/Working';
import { pourNow } from '../ticket/now';
import type { BatchProps } from './batchProps';

const grams = ({ value, from }: Rule) => ({ text: `${value} g`, shown: `${value} g`, basis: from });

export function LossQuestion({ no, ticket, dispatch, mark, problemOf }: BatchProps) {
  const field = { ticket, dispatch };
  const { state, answer } = pourNow(ticket);
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
      </div>
    </Question>
  );
}

function LossAnswer({ batch: { inputs, assumptions } }: { batch: Batch }) {
  const isAssumed = (name: string): string | undefined =>
    assumptions.some((a) => a.name === name) ? 'assumed' : undefined;
  return (
    <Verdict>
      <span className={isAssumed('residue_g')}>{formatMass(inputs.residueG)} stay in the cup</span>,{' '}
      <span className={isAssumed('vents_g')}>{formatMass(inputs.ventsG)} leave by the vents</span>
      {inputs.riserCm3 > 0 && `, ${formatVolume(inputs.riserCm3).replace('cm3', 'cm³')} fill the riser`}
    </Verdict>
  );
}
