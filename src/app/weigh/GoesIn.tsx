import type { PourRow } from '../../job/book';
import type { Answers, WeighState } from '../../job/weighState';
import { formatGrams, formatVolume } from '../../units';
import { DayField } from '../parts/DayField';
import { BOX_WORDS } from '../words/weighWords';
import { MarkShape } from '../parts/StatusMark';
import { Letter } from '../parts/Letter';
import { bookDiffers } from './bookDiffers';
import { SlipQuestion } from './SlipQuestion';
import type { PlannedPour } from './pourOfWeigh';
import type { WeighNow } from './weighNow';

interface GoesInProps {
  now: WeighNow;
  state: WeighState;
  planned: PlannedPour | undefined;
  /** The row of this casting that is in the Book already. */
  known: PourRow | undefined;
  onSay: (more: Answers) => void;
  onAnswer: (state: WeighState) => void;
}

const FROM = {
  bench: 'B as read at the bench, with the A that it asks for',
  book: 'as in the Book',
  plan: 'as planned, not weighed',
} as const;

/** What goes into the row besides the boxes, and how it is known; and what of the boxes does not. */
export function GoesIn({ now, state, planned, known, onSay, onAnswer }: GoesInProps) {
  const { read, stepG, draft, asks } = now;
  const { parts, unread } = read;
  const grams = (massG: number): string => formatGrams(massG, stepG);
  const facts = [
    draft.foam,
    draft.lot === undefined ? undefined : `lot ${draft.lot}`,
    draft.pack === undefined ? undefined : `pack ${draft.pack.toFixed(2)}`,
    draft.colorG === undefined ? undefined : `color ${grams(draft.colorG)}`,
    draft.cavityCm3 === undefined ? undefined : `cavity ${formatVolume(draft.cavityCm3)}`,
  ].filter((fact) => fact !== undefined);
  return (
    <section className="goesin" aria-label="What else goes in">
      <h2>What else goes in</h2>
      <DayField
        label="Day of the pour"
        day={draft.day ?? ''}
        onDay={(day) => onSay({ day: day === '' ? undefined : day })}
      />
      {facts.length > 0 && <p>{facts.join(', ')}.</p>}
      {planned === undefined && (
        <p className="note quiet">
          The ticket has no batch worked out, so pack and cavity stay out of the row unless it has them
          already.
        </p>
      )}
      {parts !== undefined && (
        <p>
          <span className="nb">
            <Letter of="A" /> {grams(parts.aG)}
          </span>{' '}
          <span className="nb">
            <Letter of="B" /> {grams(parts.bG)}
          </span>
          , {FROM[parts.from]}.
        </p>
      )}
      {parts === undefined && planned !== undefined && (
        <p className="note quiet">
          {state.isPlanOut === true
            ? 'A and B stay out: nobody weighed them.'
            : `A and B stay out: the mix is not the ${grams(planned.totalG + (planned.colorG ?? 0))} that was planned, and nobody weighed them apart.`}
        </p>
      )}
      {(parts?.from === 'plan' || state.isPlanOut === true) && (
        <button type="button" className="act" onClick={() => onSay({ isPlanOut: state.isPlanOut !== true })}>
          {state.isPlanOut === true ? 'It was poured as planned' : 'Leave A and B out'}
        </button>
      )}
      {asks
        .filter(({ box }) => box === undefined)
        .map((ask) => (
          <SlipQuestion key={`${ask.slip.code}-${ask.slip.field}`} ask={ask} onAnswer={onAnswer} />
        ))}
      {unread.length > 0 && (
        <p className="err">
          <MarkShape mark="look" />
          <span>
            {unread.map((box) => BOX_WORDS[box].label).join(', ')}: what stands there has no one meaning, so
            it stays out of the Book until it has.
          </span>
        </p>
      )}
      {known !== undefined && <InTheBook others={bookDiffers(known, draft, stepG)} />}
    </section>
  );
}

const InTheBook = ({ others }: { others: readonly string[] }) => (
  <>
    <p className="note">This casting stands in the Book. Writing it again takes the place of its row.</p>
    {others.length > 0 && (
      <p className="err">
        <MarkShape mark="look" />
        <span>
          The Book has other figures: {others.join(', ')}. Writing it puts those of this page in their place.
        </span>
      </p>
    )}
  </>
);
