import { WARMTH_RULES } from '../../yield';
import { formatDensity } from '../../units';
import type { PourOnPage } from '../../worker/pour';
import { amount } from '../../words/sentence';
import type { BatchProps } from '../batch/batchProps';
import { foundIn } from '../batch/findings';
import { Disclosure } from '../parts/Disclosure';
import { Figure, Verdict } from '../parts/Figure';
import { FindingsTable } from '../parts/FindingsTable';
import { SourceTag } from '../parts/SourceTag';
import { between } from './figures';
import { PartQuestion } from './PartQuestion';
import { PourField } from './PourField';

const BANDS: Record<PourOnPage['warmth']['band'], string> = {
  cold: 'cold',
  cool: 'cool',
  fine: 'in the common band',
  warm: 'warmer than usual',
  hot: 'hot',
  'too hot': 'too hot to pour',
  unknown: 'not measured',
};

/** Air and warmth of the day: what they do to the free rise, and how warm the mold is. */
export function DayQuestion(props: BatchProps) {
  const { pour } = props;
  const found = pour.answer === undefined ? [] : foundIn(pour.answer.findings, 'day');
  return (
    <PartQuestion
      of={props}
      part="day"
      ask="What is the day like?"
      what="the free rise of today"
      tall
      answer={(ready) => <DayAnswer pour={ready} />}
      because={(ready) =>
        ready === undefined
          ? 'Thin air and warm parts let foam rise more. The grams follow.'
          : correctedWords(ready)
      }
      sum="day"
    >
      <div className="fields">
        <PourField of={props} name="pourRoom" label="Room" />
        <PourField of={props} name="ingredients" label="A and B, as they are mixed" />
        <PourField of={props} name="moldTemp" label="Mold, measured inside" />
        <PourField of={props} name="altitude" label="Height above the sea" />
        <PourField of={props} name="station" label="Barometer on the bench" />
      </div>
      <p className="note quiet">
        A weather report tells the pressure as it would be at sea level: give the height instead of it.
      </p>
      <div className="more">
        <Disclosure title="What the data sheet was found in">
          <div className="fields">
            <PourField of={props} name="sheetTemp" label="Its density and times hold at" />
            <PourField
              of={props}
              name="sheetAltitude"
              label="Found at a height of"
              assumed={{ value: 0, unit: 'm', from: 'sea level, as data sheets say nothing of it' }}
            />
          </div>
        </Disclosure>
      </div>
      {pour.answer !== undefined && <MoldLine pour={pour.answer} />}
      {found.length > 0 && <FindingsTable findings={found} caption="Checks of the air" />}
    </PartQuestion>
  );
}

function DayAnswer({ pour: { air, batch } }: { pour: PourOnPage }) {
  if (air === undefined) return <Verdict>The free rise is taken as the card has it</Verdict>;
  const { freeRiseKgM3, applied } = air.correction;
  return (
    <>
      <Figure value={amount(batch.inputs.freeRiseKgM3)} unit="kg/m³" />
      <span className="rng">
        {applied.length === 0
          ? 'free rise, not corrected'
          : `${between(freeRiseKgM3, 4)} by the air alone; the card has ${formatDensity(air.cardKgM3, 'metric')}`}
      </span>
      {applied.length > 0 && <SourceTag from={freeRiseKgM3.from} />}
    </>
  );
}

const OF = { pressure: 'the air pressure', warmth: 'the warmth of A and B' };
const SAME_DAY = 'a cup test of the same day and room already holds it';
/** A correction has two ends: the warmth of A and B and that of the data sheet. */
const NOT_TOLD = {
  pressure: 'it was not told',
  warmth: 'it takes both theirs and that of the data sheet, and one of them was not told',
};

/** What was corrected for, and what was not and why. */
function correctedWords({ air }: PourOnPage): string {
  if (air === undefined)
    return 'Not corrected: neither height nor barometer nor temperatures with those of the data sheet were told.';
  const { applied, because } = air.correction;
  const done = applied.length === 0 ? '' : `Corrected for ${applied.map((what) => OF[what]).join(' and ')}. `;
  const left = because.map(
    ({ left: what, why }) => `Not for ${OF[what]}: ${why === 'not told' ? NOT_TOLD[what] : SAME_DAY}.`,
  );
  return `${done}${left.join(' ')}`;
}

function MoldLine({ pour: { warmth } }: { pour: PourOnPage }) {
  const { low, high } = WARMTH_RULES.moldFine;
  return (
    <p className="why">
      The mold is <b>{BANDS[warmth.band]}</b>; {amount(low)} to {amount(high)} °C inside is common
      {warmth.contactC === undefined
        ? '.'
        : `. Where foam meets it, it is ${amount(warmth.contactC, 3)} °C at first.`}{' '}
      <small className="quiet">({WARMTH_RULES.moldFine.from})</small>
    </p>
  );
}
