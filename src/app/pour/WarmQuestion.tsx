import { WARM_BASIS } from '../../plan';
import type { PourOnPage } from '../../worker/pour';
import { WARMTH_RULES } from '../../yield';
import { formatLength } from '../../units';
import { amount, percent } from '../../words/sentence';
import { WARMTH_CAUTIONS } from '../../words/warmthWords';
import { AROUND_WORDS } from '../words/pourPhrases';
import type { BatchProps } from '../batch/batchProps';
import { foundIn } from '../batch/findings';
import { chosenNow } from '../mold/chosen';
import { Verdict } from '../parts/Figure';
import { FigureTable } from '../parts/FigureTable';
import { FindingsTable } from '../parts/FindingsTable';
import { SelectField } from '../parts/SelectField';
import { minutesWords } from './figures';
import { PartQuestion } from './PartQuestion';
import { CautionList } from '../parts/CautionList';
import { PourField } from './PourField';
import { warmRows } from './warmRows';

/** How long a wall of rubber takes to warm through, and how long it stays so. */
export function WarmQuestion(props: BatchProps) {
  const { pour } = props;
  const warmth = pour.answer?.refused.warm === undefined ? pour.answer?.warmth : undefined;
  const found = pour.answer === undefined ? [] : foundIn(pour.answer.findings, 'warm');
  return (
    <PartQuestion
      of={props}
      part="warm"
      group="warm"
      ask="How long must the mold warm?"
      what="the warming"
      answer={(ready) => <Verdict>{warmWords(ready)}</Verdict>}
      because={(ready) =>
        ready?.warmth.coolDown === undefined
          ? 'Rubber warms slowly: its face is warm long before its depth is. Give the wall and the air around it.'
          : `Pour within ${minutesWords(ready.warmth.coolDown.pourWithinMin)} of taking it out: then its face has cooled half-way back to the room.`
      }
      sum="warm"
      sumMore={({ warmth: { warmUp } }) => warmUp !== undefined && <ShortcutWords warmUp={warmUp} />}
    >
      {warmth?.warmUp !== undefined && (
        <FigureTable
          rows={warmRows(warmth)}
          caption="The range holds everything that is assumed of rubber and air. Measure, then touch: a surface can burn before the depth is warm."
        />
      )}
      <WarmForm {...props} />
      {found.length > 0 && <FindingsTable findings={found} caption="Checks of warming" />}
      <CautionList
        of="warming"
        cautions={(warmth?.cautions ?? []).map((key) => ({ key, ...WARMTH_CAUTIONS[key] }))}
      />
    </PartQuestion>
  );
}

function WarmForm(props: BatchProps) {
  const { ticket, dispatch } = props;
  const { pouring } = ticket;
  const { moldFine } = WARMTH_RULES;
  return (
    <>
      <div className="fields">
        <PourField of={props} name="warmWall" label="Thickness of the rubber" />
        <SelectField
          label="Warmed from"
          value={pouring.sides}
          blank="not said"
          assumed={{ value: '1', shown: 'one side', basis: WARM_BASIS.sides }}
          options={[
            { value: '1', label: 'one side' },
            { value: '2', label: 'both sides' },
          ]}
          onChoose={(sides) => dispatch({ do: 'pouring', pouring: { sides: sides as typeof pouring.sides } })}
        />
        <SelectField
          label="It stands"
          value={pouring.surroundings}
          blank="not said"
          assumed={{
            value: 'still box',
            shown: AROUND_WORDS['still box'],
            basis: WARM_BASIS.surroundings,
          }}
          options={Object.entries(AROUND_WORDS).map(([value, label]) => ({ value, label }))}
          onChoose={(value) =>
            dispatch({ do: 'pouring', pouring: { surroundings: value as typeof pouring.surroundings } })
          }
        />
        <PourField of={props} name="warmAir" label="Air around it" />
        <PourField
          of={props}
          name="warmTarget"
          label="Temperature wanted"
          assumed={{ value: moldFine.value, unit: 'C', from: moldFine.from }}
        />
        <PourField of={props} name="warmJacket" label="Plaster jacket left on, its thickness" />
      </div>
      <ThickestOfMold {...props} />
    </>
  );
}

/** The mold of the ticket knows its thickest place, a block only its wall. Taken only when asked. */
function ThickestOfMold({ ticket, dispatch }: BatchProps) {
  const shape = chosenNow(ticket).answer?.shape;
  if (shape === undefined || ticket.fields.warmWall.text.trim() !== '') return null;
  const text = formatLength(shape.thickestMm, 'metric');
  return (
    <div className="chg">
      <button type="button" className="act" onClick={() => dispatch({ do: 'type', field: 'warmWall', text })}>
        Take {text},{' '}
        {shape.hasThickerPlaces === true
          ? 'the wall of the mold; its hollows and corners are thicker and take longer'
          : 'the thickest place of the mold'}
      </button>
    </div>
  );
}

function warmWords({ warmth: { warmUp } }: PourOnPage): string {
  if (warmUp === undefined) return 'Not asked yet';
  const { low, value, high } = warmUp.deepFaceMin;
  return `${minutesWords(value)} until it is warm through (${minutesWords(low)} to ${minutesWords(high)})`;
}

function ShortcutWords({ warmUp }: { warmUp: NonNullable<PourOnPage['warmth']['warmUp']> }) {
  const { biot, isLumpedFair, lumpedMin, lumpedShare } = warmUp;
  return (
    <p>
      Biot number {amount(biot, 2)}:{' '}
      {isLumpedFair
        ? 'one temperature throughout would be a fair shortcut'
        : `the shortcut of one temperature throughout would say ${amount(lumpedMin, 2)} min, ${percent(lumpedShare)} of it, and does not hold`}
      . The ranges hold every end of what is assumed of rubber and air.
    </p>
  );
}
