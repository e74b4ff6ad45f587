import type { Size } from '../../plan';
import { formatVolume } from '../../units';
import { amount, percent } from '../../words/sentence';
import { fillAgainst } from '../../yield';
import { sizeBecause } from '../../words/sizeWords';
import type { Sized } from '../../worker/protocol';
import { Disclosure } from '../parts/Disclosure';
import { Figure, Verdict } from '../parts/Figure';
import { Question } from '../parts/Question';
import { SourceTag } from '../parts/SourceTag';
import { Working } from '../parts/Working';
import { StatusMark } from '../parts/StatusMark';
import { fillNow, sculptNow, sizeNow, volumeNow, type KnownVolume, type Said } from '../ticket/now';
import type { SizeWay } from '../ticket/sizingState';
import type { Ticket } from '../ticket/state';
import { fieldWords } from '../words/fieldWords';
import { rangeText } from '../words/rangeText';
import { againstWords, halfShare, VOLUME_BY, volumeText, WIDE_SHARE } from '../words/wayWords';
import type { AskProps } from './askProps';
import { isAboutScale } from './marks';
import { WayTag } from './WayTag';
import { WaySum, wayBecause } from './WayVolume';

const ASK = { ask: 'What volume do we pour for?' };

/** What Measure comes to, by the way in that wins. */
export function VolumeQuestion({ ticket, dispatch, mark, no }: AskProps & { no: number }) {
  const volume = volumeNow(ticket);
  const known = volume.answer;
  if (volume.state === 'working')
    return <Question {...ASK} no={no} mark={mark} busy answer={<Working what="the volume" tall />} />;
  if (known !== undefined && known.by !== 'scan')
    return <ByAnotherWay {...{ ticket, dispatch, mark, no, known }} />;
  const size = sizeNow(ticket);
  const sized = known === undefined ? undefined : size.answer?.size;
  if (sized === undefined)
    return (
      <Question
        {...ASK}
        no={no}
        mark={mark}
        answer={<Verdict>No volume yet</Verdict>}
        because={whyNoneOf(ticket, size)}
      >
        <FillBeside {...{ ticket, dispatch }} />
      </Question>
    );
  const text = rangeText(sized.volumeCm3);
  return (
    <Question
      {...ASK}
      no={no}
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
    >
      <FillBeside {...{ ticket, dispatch }} />
    </Question>
  );
}

/** Water, a sunk sculpt or a tape: a volume with its range, and no shape. */
function ByAnotherWay({ ticket, dispatch, mark, no, known }: AskProps & { no: number; known: KnownVolume }) {
  const text = volumeText(known.by, known.volumeCm3);
  const half = halfShare(known.volumeCm3);
  const because = wayBecause(ticket, known);
  const isBesideScan = known.by === 'fill' && sculptNow(ticket).answer !== undefined;
  return (
    <Question
      {...ASK}
      no={no}
      mark={mark}
      answer={
        <>
          <Figure value={text.value} unit="cm³" />
          <span className="rng">
            {text.low} to {text.high} cm³, 19 times in 20
          </span>
          <WayTag {...known} />
        </>
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

/** A water fill beside what is known of the sculpt: how far apart, and the choice between them. */
function FillBeside({ ticket, dispatch }: Pick<AskProps, 'ticket' | 'dispatch'>) {
  const fill = fillNow(ticket).answer;
  if (fill === undefined) return null;
  const sculpt = sculptNow(ticket).answer;
  const { isAside } = ticket.filling;
  const against = sculpt === undefined ? undefined : fillAgainst(sculpt.volumeCm3, fill.volumeCm3);
  return (
    <>
      {sculpt !== undefined && against !== undefined && (
        <div className="agree" role="status">
          <StatusMark mark={against.isFar ? 'look' : 'fine'} />
          <p>{againstWords(sculpt, fill.volumeCm3, against)}</p>
        </div>
      )}
      <div className="chg">
        {isAside ? (
          <button type="button" className="act" onClick={() => dispatch({ do: 'fillAside', isAside: false })}>
            Use the water fill
          </button>
        ) : (
          sculpt !== undefined && (
            <button
              type="button"
              className="act"
              onClick={() => dispatch({ do: 'fillAside', isAside: true })}
            >
              Use {VOLUME_BY[sculpt.by]}
            </button>
          )
        )}
      </div>
    </>
  );
}

function whyNoneOf(ticket: Ticket, size: Said<Sized>): string {
  const volume = volumeNow(ticket);
  const { way } = ticket.sizing;
  if (volume.state === 'unread' && volume.field !== 'kits' && way !== 'scan')
    return `${fieldWords(volume.field)} is not read yet.`;
  if (way === 'scan' || (way === 'fill' && ticket.scan !== undefined)) return whyNone(size, ticket.scaleWay);
  return volume.state === 'refused' ? 'Question 1 says why.' : WAITS_FOR[way];
}

const WAITS_FOR: Readonly<Record<Exclude<SizeWay, 'scan'>, string>> = {
  fill: 'The water that fills the mold comes first.',
  displace: 'What the sculpt pushes out comes first.',
  tape: 'Every side of every body comes first: one left out would be poured short.',
};

function whyNone(size: Said<Sized>, way: Ticket['scaleWay']): string {
  switch (size.state) {
    case 'unread':
      return size.field === 'cutHeight' || size.field === 'kits'
        ? 'The height of the cut is not read yet.'
        : `${fieldWords(size.field)} is not read yet.`;
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
