import type { FoamCard } from '../../yield';
import { formatDensity } from '../../units';
import { Figure, Verdict } from '../parts/Figure';
import { Question } from '../parts/Question';
import { SourceTag } from '../parts/SourceTag';
import { SumOf } from '../pour/SumOf';
import { ratioWords } from '../words/ratioWords';
import type { BatchProps } from './batchProps';
import { FoamCardVerbs } from './FoamCardVerbs';
import { FoamFields } from './FoamFields';

export function FoamQuestion({ no, ticket, dispatch, mark, card, problemOf, pour }: BatchProps) {
  return (
    <Question
      no={no}
      mark={mark}
      ask="Which foam?"
      answer={card?.ok === true ? <CardAnswer card={card.value} /> : <Verdict>No foam yet</Verdict>}
      because={
        card?.ok === true
          ? ratioWords(card.value)
          : 'From the data sheet of your own foam, or from a cup test of today. Once it is filled in it can be kept in the shop, for every pour after this one.'
      }
      change={<SumOf pour={pour} part="foam" />}
    >
      <FoamCardVerbs ticket={ticket} dispatch={dispatch} />
      <FoamFields ticket={ticket} dispatch={dispatch} problemOf={problemOf} />
    </Question>
  );
}

function CardAnswer({ card }: { card: FoamCard }) {
  return (
    <>
      <Verdict>{card.name}</Verdict>
      <Figure value={formatDensity(card.freeRiseKgM3, 'metric').split(' ')[0]!} unit="kg/m³" />
      <span className="rng">{formatDensity(card.freeRiseKgM3, 'us')}, free rise</span>
      <SourceTag from={card.freeRiseFrom} />
    </>
  );
}
