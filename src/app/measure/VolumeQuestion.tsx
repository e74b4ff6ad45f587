import type { ReactNode } from 'react';
import type { Size } from '../../plan';
import { formatVolume } from '../../units';
import { assumptionLine } from '../../words/assumptionWords';
import { amount, percent } from '../../words/sentence';
import { sizeBecause } from '../../words/sizeWords';
import { Disclosure } from '../parts/Disclosure';
import { Figure, Verdict } from '../parts/Figure';
import { Question } from '../parts/Question';
import { SourceTag } from '../parts/SourceTag';
import { Working } from '../parts/Working';
import { sculptNow, sizeNow, volumeNow, type KnownVolume } from '../ticket/now';
import { rangeText, type RangeText } from '../../words/rangeText';
import { halfShare, volumeText, WIDE_SHARE } from '../words/wayWords';
import type { AskProps } from './askProps';
import { FillBeside } from './FillBeside';
import { WayTag } from './WayTag';
import { WaySum, wayBecause } from './WayVolume';
import { whyNoVolume } from './whyNoVolume';

const ASK = { ask: 'What volume do we pour for?' };

/** What Measure comes to, by the way in that wins. */
export function VolumeQuestion({ ticket, dispatch, mark, no }: AskProps & { no: number }) {
  const volume = volumeNow(ticket);
  const known = volume.answer;
  if (volume.state === 'working')
    return <Question {...ASK} no={no} mark={mark} busy answer={<Working what="the volume" tall />} />;
  if (known !== undefined && known.by !== 'scan')
    return <ByAnotherWay {...{ ticket, dispatch, mark, no, known }} />;
  const sized = known === undefined ? undefined : sizeNow(ticket).answer?.size;
  if (sized === undefined)
    return (
      <Question
        {...ASK}
        no={no}
        mark={mark}
        answer={<Verdict>No volume yet</Verdict>}
        because={whyNoVolume(ticket)}
      >
        <FillBeside {...{ ticket, dispatch }} />
      </Question>
    );
  return (
    <Question
      {...ASK}
      no={no}
      mark={mark}
      answer={
        <VolumeAnswer text={rangeText(sized.volumeCm3)}>
          <SourceTag from={sized.volumeCm3.from} />
          {!ticket.up.confirmed && <SourceTag from="assumed" />}
        </VolumeAnswer>
      }
      because={sizeBecause(sized)[0]}
      change={
        <Disclosure>
          <VolumeSum size={sized} />
        </Disclosure>
      }
    >
      <FillBeside {...{ ticket, dispatch }} />
    </Question>
  );
}

/** Water, a sunk sculpt or a tape: a volume with its range, and no shape. */
function ByAnotherWay({ ticket, dispatch, mark, no, known }: AskProps & { no: number; known: KnownVolume }) {
  const half = halfShare(known.volumeCm3);
  const because = wayBecause(ticket, known);
  const isBesideScan = known.by === 'fill' && sculptNow(ticket).answer !== undefined;
  return (
    <Question
      {...ASK}
      no={no}
      mark={mark}
      answer={
        <VolumeAnswer text={volumeText(known.by, known.volumeCm3)}>
          <WayTag {...known} />
        </VolumeAnswer>
      }
      because={isBesideScan ? because[1] : because[0]}
      change={
        <Disclosure>
          <WaySum {...{ ticket, known }} />
        </Disclosure>
      }
    >
      {half > WIDE_SHARE && (
        <p className="why">
          The range is {percent(half)} either way, and over {percent(WIDE_SHARE)} it says Look: the pack, the
          chance of a short fill and the spare in Batch go by it. A water fill of the mold narrows it.
        </p>
      )}
      <FillBeside {...{ ticket, dispatch }} />
    </Question>
  );
}

/** The volume with its range and where it is from. */
function VolumeAnswer({ text, children }: { text: RangeText; children: ReactNode }) {
  return (
    <>
      <Figure value={text.value} unit="cm³" />
      <span className="rng">
        {text.low} to {text.high} cm³, 19 times in 20
      </span>
      {children}
    </>
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
      {size.assumptions.map((assumption) => (
        <li key={assumption.name}>
          <span className="assumed">{assumptionLine(assumption)}</span>, assumed
        </li>
      ))}
    </ul>
  );
}
