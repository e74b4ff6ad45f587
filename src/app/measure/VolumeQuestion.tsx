import type { Size } from '../../plan';
import { formatVolume } from '../../units';
import { amount } from '../../words/sentence';
import { sizeBecause } from '../../words/sizeWords';
import { Disclosure } from '../parts/Disclosure';
import { Figure, Verdict } from '../parts/Figure';
import { Question } from '../parts/Question';
import { SourceTag } from '../parts/SourceTag';
import type { AskProps } from './askProps';

export function VolumeQuestion({ ticket: { size, up }, mark }: Omit<AskProps, 'dispatch'>) {
  const sized = size.answer?.size;
  if (sized === undefined) {
    return (
      <Question
        no={6}
        mark={mark}
        ask="What volume do we pour for?"
        busy={size.state === 'running'}
        answer={<Verdict>No volume yet</Verdict>}
        because="The questions above come first."
      />
    );
  }
  const { value, low, high, from } = sized.volumeCm3;
  return (
    <Question
      no={6}
      mark={mark}
      ask="What volume do we pour for?"
      busy={size.state === 'running'}
      answer={
        <>
          <Figure value={amount(value)} unit="cm³" />
          <span className="rng">
            {amount(low, 5)} to {amount(high, 5)} cm³, 19 times in 20
          </span>
          <SourceTag from={from} />
          {!up.confirmed && <SourceTag from="assumed" />}
        </>
      }
      because={sizeBecause(sized)[0]}
      change={
        <Disclosure>
          <VolumeSum size={sized} />
        </Disclosure>
      }
    />
  );
}

function VolumeSum({ size }: { size: Size }) {
  return (
    <ul>
      <li>
        {formatVolume(size.volumeCm3.value)}; surface {amount(size.areaCm2)} cm²; {amount(size.triangles, 9)}{' '}
        triangles.
      </li>
      {sizeBecause(size).map((line) => (
        <li key={line}>{line}</li>
      ))}
      <li>The single doubts add as squares, being independent (JCGM 100:2008, 5.1.2).</li>
      {size.assumptions.map(({ name, value, unit }) => (
        <li key={name}>
          <span className="assumed">
            {name} is {value}
            {unit === '' ? '' : ` ${unit}`}
          </span>
          , assumed
        </li>
      ))}
    </ul>
  );
}
