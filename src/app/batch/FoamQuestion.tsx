import { useId } from 'react';
import type { FoamCard } from '../../yield';
import { formatDensity, formatRatio } from '../../units';
import { Choices } from '../parts/Choices';
import { Figure, Verdict } from '../parts/Figure';
import { Letter } from '../parts/Letter';
import { Question } from '../parts/Question';
import { QuantityField } from '../parts/QuantityField';
import { SourceTag } from '../parts/SourceTag';
import { SAMPLE_CARDS } from '../ticket/sampleCards';
import { amount } from '../../words/sentence';
import type { BatchProps } from './batchProps';

export function FoamQuestion({ no, ticket, dispatch, mark, card, problemOf }: BatchProps) {
  const { foam } = ticket;
  const field = { ticket, dispatch };
  return (
    <Question
      no={no}
      mark={mark}
      ask="Which foam?"
      answer={card?.ok === true ? <CardAnswer card={card.value} /> : <Verdict>No foam yet</Verdict>}
      because={
        card?.ok === true
          ? ratioWords(card.value)
          : 'From the data sheet of your own foam, or from a cup test of today. The samples are invented; no such product exists.'
      }
      change={SAMPLE_CARDS.map((sample) => (
        <button
          key={sample.key}
          type="button"
          className="act"
          onClick={() => dispatch({ do: 'card', card: sample })}
        >
          Use {sample.name}
        </button>
      ))}
    >
      <div className="fields">
        <NameField name={foam.name} onName={(name) => dispatch({ do: 'foam', foam: { name } })} />
        <QuantityField name="freeRise" label="Free-rise density" {...field} problem={problemOf('freeRise')} />
        <Choices
          legend="Density from"
          name="free-rise-from"
          value={foam.from}
          options={[
            { value: 'data-sheet', label: 'data sheet' },
            { value: 'cup-test', label: 'cup test of today' },
          ]}
          onChoose={(from) => dispatch({ do: 'foam', foam: { from } })}
        />
      </div>
      <div className="fields">
        <QuantityField
          name="partsA"
          label={
            <>
              <Letter of="A" /> Parts of A, the isocyanate
            </>
          }
          {...field}
          problem={problemOf('partsA')}
        />
        <QuantityField
          name="partsB"
          label={
            <>
              <Letter of="B" /> Parts of B, the polyol
            </>
          }
          {...field}
          problem={problemOf('partsB')}
        />
        <Choices
          legend="Ratio A:B is"
          name="ratio-by"
          value={foam.by}
          options={[
            { value: 'mass', label: 'by weight' },
            { value: 'volume', label: 'by volume' },
          ]}
          onChoose={(by) => dispatch({ do: 'foam', foam: { by } })}
        />
      </div>
      <div className="fields">
        <QuantityField
          name="densityA"
          label={`Density of part A${foam.by === 'volume' ? '' : ' (if known)'}`}
          {...field}
          problem={problemOf('densityA')}
        />
        <QuantityField
          name="densityB"
          label={`Density of part B${foam.by === 'volume' ? '' : ' (if known)'}`}
          {...field}
          problem={problemOf('densityB')}
        />
      </div>
    </Question>
  );
}

function NameField({ name, onName }: { name: string; onName: (name: string) => void }) {
  const id = useId();
  return (
    <div className="qty">
      <label htmlFor={id}>Name on the card</label>
      <div className="in">
        <input
          id={id}
          className="w"
          type="text"
          autoComplete="off"
          value={name}
          onChange={(e) => onName(e.target.value)}
        />
      </div>
    </div>
  );
}

function CardAnswer({ card }: { card: FoamCard }) {
  const [metric = '', us = ''] = [
    formatDensity(card.freeRiseKgM3, 'metric'),
    formatDensity(card.freeRiseKgM3, 'us'),
  ];
  return (
    <>
      <Verdict>{card.name}</Verdict>
      <Figure value={metric.split(' ')[0]!} unit="kg/m³" />
      <span className="rng">{us.replace('ft3', 'ft³')}, free rise</span>
      <SourceTag from={card.freeRiseFrom} />
    </>
  );
}

/** The ratio read back, A first. Which is weighed first is said where the grams are. */
function ratioWords({ ratio }: FoamCard): string {
  const by = ratio.by === 'mass' ? 'by weight' : 'by volume';
  return `A:B ${formatRatio(ratio)} ${by}: ${amount(ratio.a)} parts of A, the isocyanate, to ${amount(ratio.b)} parts of B, the polyol.`;
}
