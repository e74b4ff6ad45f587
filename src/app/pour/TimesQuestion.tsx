import { POUR_RULES } from '../../yield';
import type { PourOnPage } from '../../worker/pour';
import type { BatchProps } from '../batch/batchProps';
import { Figure, Verdict } from '../parts/Figure';
import { SourceTag } from '../parts/SourceTag';
import { between, minutesWords } from './figures';
import { PartQuestion } from './PartQuestion';
import { CautionBeside } from './PourCautions';
import { PourField } from './PourField';

/** Heat of the reaction, from the user's data only, and when the mold may be opened. */
export function TimesQuestion(props: BatchProps) {
  return (
    <PartQuestion
      of={props}
      part="times"
      group="times"
      ask="How hot does the core get, and when may we open?"
      what="the core"
      tall
      answer={(ready) => <CoreAnswer pour={ready} />}
      because={(ready) => (ready === undefined ? WHY : openWords(ready))}
      sum="times"
      sumMore={({ times: { exotherm } }) =>
        exotherm.known && (
          <p>
            A rise of {between(exotherm.riseK)} K by the low and the high end of published heats of reaction.
            A larger part is no hotter inside, only longer so.
          </p>
        )
      }
    >
      <div className="fields">
        <PourField of={props} name="nco" label="NCO content of A, data sheet" />
        <PourField of={props} name="water" label="Water in B, data sheet" />
        <PourField of={props} name="openTime" label="May be opened after, data sheet" />
      </div>
      <CautionBeside of="opening" />
    </PartQuestion>
  );
}

const WHY = 'A foam heats itself from inside. The skin, not the clock, says when to open.';

function CoreAnswer({ pour: { times } }: { pour: PourOnPage }) {
  const { exotherm } = times;
  if (!exotherm.known) return <Verdict>The core is not known</Verdict>;
  const { lookC, stopC } = { lookC: POUR_RULES.coreLook.value, stopC: POUR_RULES.coreStop.value };
  return (
    <>
      <Figure value={between(exotherm.coreC, 3)} unit="°C" />
      <span className="rng">
        look over {lookC} °C, stop over {stopC} °C
      </span>
      <SourceTag from={exotherm.coreC.from} />
    </>
  );
}

const MISSING = {
  ncoShare: 'the NCO content of A',
  waterShare: 'the water in B',
  startC: 'the temperature of A and B or of the room',
};

function openWords({ times: { exotherm, openMin, openCommonMin } }: PourOnPage): string {
  const core = exotherm.known
    ? ''
    : `For the core ${exotherm.missing.map((name) => MISSING[name]).join(' and ')} would have to be known; the data sheet or its maker has it. `;
  const common = `${between(openCommonMin)} min is common for a casting opened warm (common practice, no source).`;
  if (openMin === undefined) return `${core}When it may be opened is not known: ${common}`;
  const range = `${between(openMin)} min`;
  const spread = range === minutesWords(openMin.value) ? '' : ` (${range})`;
  return `${core}Open after ${minutesWords(openMin.value)}${spread} by the data sheet in today’s warmth, and not while it is hot or hisses; ${common}`;
}
