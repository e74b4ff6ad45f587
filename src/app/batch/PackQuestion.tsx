import { RULES } from '../../yield';
import { formatDensity } from '../../units';
import { chanceWords } from '../../words/chance';
import { Figure } from '../parts/Figure';
import { Question } from '../parts/Question';
import { QuantityField } from '../parts/QuantityField';
import { SourceTag } from '../parts/SourceTag';
import { Working } from '../parts/Working';
import { pourNow } from '../ticket/now';
import type { BatchProps } from './batchProps';

/** Molded over free-rise density. */
export function PackQuestion({ ticket, dispatch, mark, problemOf }: BatchProps) {
  const pour = pourNow(ticket);
  const batch = pour.answer?.batch;
  const { value, from } = RULES.packFactor;
  const text = value.toFixed(2);
  return (
    <Question
      no={2}
      mark={mark}
      ask="How hard do we pack it?"
      busy={pour.state === 'working'}
      answer={
        batch === undefined ? (
          pour.state === 'working' && <Working what="the density in the mold" tall />
        ) : (
          <>
            <span className={batch.packFrom === 'assumed' ? 'assumed' : undefined}>
              <Figure value={batch.packFactor.toFixed(2)} unit="pack factor" />
            </span>
            <span className="rng">
              {formatDensity(batch.moldedDensityKgM3).replaceAll('m3', 'm³').replaceAll('ft3', 'ft³')} in the
              mold
            </span>
            <SourceTag from={batch.packFrom} />
          </>
        )
      }
      because={
        batch === undefined
          ? 'Pack factor is density in the mold over free-rise density: what presses the foam into every corner.'
          : `At this pack the chance of a short fill is ${chanceWords(batch.shortFillChance)}. More pack means more pressure on the mold.`
      }
    >
      <div className="fields">
        <QuantityField
          name="pack"
          label="Pack factor"
          ticket={ticket}
          dispatch={dispatch}
          problem={problemOf('pack')}
          assumed={{ text, shown: text, basis: from }}
        />
      </div>
    </Question>
  );
}
