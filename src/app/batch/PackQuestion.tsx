import { POUR_RULES, RULES, type SizeAwarePack } from '../../yield';
import { formatDensity } from '../../units';
import { chanceWords } from '../../words/chance';
import { amount } from '../../words/sentence';
import { Disclosure } from '../parts/Disclosure';
import { Figure } from '../parts/Figure';
import { Held } from '../parts/Held';
import { Question } from '../parts/Question';
import { SourceTag } from '../parts/SourceTag';
import { Working } from '../parts/Working';
import { between } from '../pour/figures';
import { PackChart } from '../pour/PackChart';
import { PackTable } from '../pour/PackTable';
import { PastField } from '../pour/PastField';
import { PourField } from '../pour/PourField';
import { SumOf } from '../pour/SumOf';
import type { BatchProps } from './batchProps';

/** Molded over free-rise density: packs side by side, and what the size of the part says of them. */
export function PackQuestion(props: BatchProps) {
  const { no, mark, pour } = props;
  const batch = pour.answer?.batch;
  const { value, from } = RULES.packFactor;
  return (
    <Question
      no={no}
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
              chance of a short fill {chanceWords(batch.shortFillChance)};{' '}
              {formatDensity(batch.moldedDensityKgM3)} in the mold
            </span>
            <SourceTag from={batch.packFrom} />
          </>
        )
      }
      because={
        batch === undefined
          ? 'Pack factor is density in the mold over free-rise density: what presses the foam into every corner.'
          : 'Density in the mold over free-rise density. More pack fills more surely, and presses more on the mold.'
      }
      change={
        <SumOf
          pour={pour}
          part="pack"
          lead={<p>For the chosen pack. Each column is the same sum with its own pack.</p>}
        />
      }
    >
      <Held busy={pour.state === 'working'}>
        <PackTable {...props} />
        <PackChart {...props} />
      </Held>
      <div className="fields">
        <PourField of={props} name="pack" label="Pack factor" assumed={{ value, unit: '', from }} />
      </div>
      {pour.answer?.sizeAware !== undefined && <SizeAdvice advice={pour.answer.sizeAware} />}
      {pour.answer !== undefined && props.ticket.scan === undefined && (
        <p className="why">What the skin alone takes is not checked: it goes by the surface of a scan.</p>
      )}
      <div className="more">
        <Disclosure title="Prices, castings of before, depth of the skin">
          <div className="fields">
            <PourField of={props} name="priceA" label="Part A costs" />
            <PourField of={props} name="priceB" label="Part B costs" />
            <PourField of={props} name="failPrice" label="A failed casting costs beside its mix" />
            <PastField {...props} />
            <PourField
              of={props}
              name="skinDepth"
              label="Depth of the skin"
              assumed={{
                value: POUR_RULES.skinDepth.value,
                unit: 'mm',
                from: POUR_RULES.skinDepth.from,
              }}
            />
          </div>
          <p>
            Pack factor and overpack percent are different figures: 1.25 is 25 % more than the free rise, and
            an overpack is counted from the least mass that fills the mold.
          </p>
        </Disclosure>
      </div>
    </Question>
  );
}

/** An advice, never taken by itself. */
function SizeAdvice({ advice: { leastPack, advisedPack } }: { advice: SizeAwarePack }) {
  return (
    <p className="why">
      For a part of this size the skin alone takes a pack of {amount(leastPack.value, 3)} (
      {between(leastPack, 3)}); {amount(advisedPack.value, 3)} leaves a margin. A small part is mostly skin
      and wants more: an estimate of ours from the surface of the scan, with the depth of the skin{' '}
      {leastPack.from === 'assumed' ? <span className="assumed">assumed</span> : 'as typed'}.
    </p>
  );
}
