import type { PourOnPage } from '../../worker/pour';
import { amount, percent } from '../../words/sentence';
import { TERM_WORDS } from '../../words/yieldWords';
import { MEASUREMENT_WORDS } from '../words/pourPhrases';
import type { BatchProps } from '../batch/batchProps';
import { Figure } from '../parts/Figure';
import { FigureTable } from '../parts/FigureTable';
import { PartQuestion } from './PartQuestion';

/** The budget of the mixed mass, and the one measurement that would buy most. */
export function SureQuestion(props: BatchProps) {
  const batch = props.pour.answer?.batch;
  const rows = batch?.uncertainty.filter(({ share }) => share >= 0.001) ?? [];
  return (
    <PartQuestion
      of={props}
      ask="How sure are we?"
      what="the doubt"
      tall
      answer={({ batch: { sigmaShare, mixedG } }) => (
        <>
          <Figure value={`± ${percent(sigmaShare)}`} unit="of the mix" />
          <span className="rng">± {amount(sigmaShare * mixedG, 2)} g, two times in three</span>
        </>
      )}
      because={(ready) =>
        ready === undefined
          ? 'Every figure behind the grams has a doubt; the largest decides.'
          : bestWords(ready)
      }
    >
      {rows.length > 0 && (
        <FigureTable
          head={['Doubt of', 'Moves the mix by']}
          caption="Added up as squares (JCGM 100, GUM): the share says how much of all the doubt a row is."
          rows={[...rows]
            .sort((one, other) => other.share - one.share)
            .map(({ input, contributionG, share }) => ({
              name: TERM_WORDS[input] ?? input,
              value: `± ${amount(contributionG, 2)} g`,
              where: `${percent(share)} of the doubt`,
            }))}
        />
      )}
    </PartQuestion>
  );
}

/** "A cup test today would halve it." */
function bestWords({ bestMeasurement: { gains } }: PourOnPage): string {
  const [best, next] = gains;
  if (best === undefined) return 'No single measurement would make it less.';
  const text = `${MEASUREMENT_WORDS[best.measurement]} would ${leftWords(best.leftShare)}.`;
  return next === undefined
    ? text
    : `${text} ${MEASUREMENT_WORDS[next.measurement]} would ${leftWords(next.leftShare)}.`;
}

function leftWords(leftShare: number): string {
  if (leftShare > 0.995) return 'hardly change it';
  if (leftShare > 0.42 && leftShare < 0.58) return 'about halve it';
  return `leave ${percent(leftShare)} of it`;
}
