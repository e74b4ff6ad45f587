import { gramsText } from '../../units';
import type { PourOnPage } from '../../worker/pour';
import { RULES } from '../../yield';
import { chanceWords } from '../../words/chance';
import { amount, percent } from '../../words/sentence';
import { TERM_WORDS } from '../../words/yieldWords';
import type { BatchProps } from '../batch/batchProps';
import { Verdict } from '../parts/Figure';
import { FigureTable } from '../parts/FigureTable';
import { MEASUREMENT_WORDS } from '../words/pourPhrases';
import { PartQuestion } from './PartQuestion';
import { fillsText } from './packChart';

/** The chance that the mold is not filled, what would just fill it, and what the doubt is made of. */
export function ShortQuestion(props: BatchProps) {
  return (
    <PartQuestion
      of={props}
      ask="Could it come up short?"
      what="the chance of a short fill"
      answer={(ready) => (
        <>
          <Verdict>{upperFirst(chanceWords(ready.batch.shortFillChance))}</Verdict>
          <span className="rng">{fillsWords(ready)}</span>
        </>
      )}
      because={(ready) =>
        ready === undefined
          ? 'Every figure behind the grams has a doubt; the largest decides.'
          : `${overWords(ready)} ${bestWords(ready)}`
      }
      sum="short"
      more={{
        title: 'Show what the doubt is made of',
        of: (ready) => <DoubtTable pour={ready} />,
      }}
    />
  );
}

const upperFirst = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** Every cup more keeps one residue more. */
const moreCupsG = ({ cups, batch }: PourOnPage): number => (cups.cups.length - 1) * batch.inputs.residueG;

function fillsOf(pour: PourOnPage): { low: string; high: string; highG: number } | undefined {
  const { justFills, batch } = pour;
  if (justFills === undefined) return undefined;
  const moreG = moreCupsG(pour);
  const { low, high } = fillsText(
    {
      ...justFills,
      lowG: justFills.lowG + moreG,
      valueG: justFills.valueG + moreG,
      highG: justFills.highG + moreG,
    },
    batch.stepG,
  );
  return { low, high, highG: Math.ceil((justFills.highG + moreG) / batch.stepG) * batch.stepG };
}

function fillsWords(pour: PourOnPage): string {
  const fills = fillsOf(pour);
  return fills === undefined
    ? 'what just fills is known too poorly to say'
    : `just filling takes ${fills.low} to ${fills.high} g, 9 times in 10`;
}

/** To the step of the scale, so that it is the difference of what is shown. */
function overWords(pour: PourOnPage): string {
  const fills = fillsOf(pour);
  if (fills === undefined) return '';
  const { cups, batch } = pour;
  const overG = cups.totalG - fills.highG;
  const off = gramsText(Math.abs(overG), batch.stepG);
  return overG >= 0
    ? `You pour ${off} g more than the top of that range.`
    : `You pour ${off} g less than the top of that range.`;
}

/** "The free-rise density is most of the doubt: a cup test today would about halve it." */
function bestWords({ batch, bestMeasurement: { gains } }: PourOnPage): string {
  const [most] = [...batch.uncertainty].sort((one, other) => other.share - one.share);
  const largest =
    most === undefined
      ? ''
      : `The ${TERM_WORDS[most.input] ?? most.input} is ${MOST(most.share)} of the doubt.`;
  const [best] = gains;
  return best === undefined
    ? `${largest} No single measurement would make it less.`
    : `${largest} ${MEASUREMENT_WORDS[best.measurement]} would ${leftWords(best.leftShare)}.`;
}

const MOST = (share: number): string => (share > 0.5 ? 'most' : 'the largest part');

function leftWords(leftShare: number): string {
  if (leftShare > 0.995) return 'hardly change it';
  if (leftShare > 0.42 && leftShare < 0.58) return 'about halve it';
  return `leave ${percent(leftShare)} of it`;
}

function DoubtTable({ pour: { batch, bestMeasurement } }: { pour: PourOnPage }) {
  const rows = batch.uncertainty.filter(({ share }) => share >= 0.001);
  const { sigmaShare, mixedG } = batch;
  const isRaised = batch.assumptions.some(({ name }) => name === 'sigma_floor');
  const floor = isRaised
    ? ` and raised to ${percent(RULES.minSigmaNoCup.value)}, since no cup was tested today`
    : '';
  return (
    <>
      <FigureTable
        head={['Doubt of', 'Moves the mix by']}
        caption={`Added up as squares (JCGM 100, GUM)${floor}: ± ${percent(sigmaShare)} of the mix, ± ${amount(sigmaShare * mixedG, 2)} g, two times in three. The share says how much of all the doubt a row is.`}
        rows={[...rows]
          .sort((one, other) => other.share - one.share)
          .map(({ input, contributionG, share }) => ({
            name: TERM_WORDS[input] ?? input,
            value: `± ${amount(contributionG, 2)} g`,
            where: `${percent(share)} of the doubt`,
          }))}
      />
      <FigureTable
        head={['One measurement', 'Leaves of the doubt']}
        caption="Each tried in the same sum, alone."
        rows={bestMeasurement.gains.map(({ measurement, leftShare, uG }) => ({
          name: MEASUREMENT_WORDS[measurement],
          value: percent(leftShare),
          where: `± ${amount(uG, 2)} g`,
        }))}
      />
    </>
  );
}
