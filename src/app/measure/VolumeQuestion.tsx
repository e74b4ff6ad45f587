import type { Size } from '../../plan';
import { formatVolume } from '../../units';
import { amount } from '../../words/sentence';
import { sizeBecause } from '../../words/sizeWords';
import type { Sized } from '../../worker/protocol';
import { Disclosure } from '../parts/Disclosure';
import { Figure, Verdict } from '../parts/Figure';
import { Question } from '../parts/Question';
import { SourceTag } from '../parts/SourceTag';
import { Working } from '../parts/Working';
import { sizeNow, type Said } from '../ticket/now';
import type { Ticket } from '../ticket/state';
import { rangeText } from '../words/rangeText';
import type { AskProps } from './askProps';
import { isAboutScale } from './marks';

const ASK = { no: 6, ask: 'What volume do we pour for?' };

export function VolumeQuestion({ ticket, mark }: Omit<AskProps, 'dispatch'>) {
  const size = sizeNow(ticket);
  const sized = size.answer?.size;
  if (size.state === 'working')
    return <Question {...ASK} mark={mark} busy answer={<Working what="the volume" tall />} />;
  if (sized === undefined)
    return (
      <Question
        {...ASK}
        mark={mark}
        answer={<Verdict>No volume yet</Verdict>}
        because={whyNone(size, ticket.scaleWay)}
      />
    );
  const text = rangeText(sized.volumeCm3);
  return (
    <Question
      {...ASK}
      mark={mark}
      answer={
        <>
          <Figure value={text.value} unit="cm³" />
          <span className="rng">
            {text.low} to {text.high} cm³, 19 times in 20
          </span>
          <SourceTag from={sized.volumeCm3.from} />
          {!ticket.up.confirmed && <SourceTag from="assumed" />}
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

function whyNone(size: Said<Sized>, way: Ticket['scaleWay']): string {
  switch (size.state) {
    case 'unread':
      return size.field === 'tape'
        ? 'The taped length is not read yet.'
        : 'The height of the cut is not read yet.';
    case 'cancelled':
      return 'Measuring was cancelled. “Measure again”, at the top, takes it up.';
    case 'failed':
      return 'A fault of ours stopped the measuring. “Try again”, at the top of Measure, takes it up.';
    case 'refused':
      if (size.problem.code === 'CUT_EMPTY') return 'Question 4 says why.';
      if (!isAboutScale(size.problem)) return 'Question 5 says why.';
      return way === 'tape' ? 'A taped length comes first.' : 'The unit of the file comes first.';
    case 'open':
    case 'working':
    case 'answered':
      return 'The questions above come first.';
  }
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
