import { cautionsOfPour } from '../../words/cautionsOfPour';
import { WARMTH_CAUTIONS } from '../../words/warmthWords';
import { CautionList } from '../parts/CautionList';
import type { PourOnPage } from '../../worker/pour';
import { pourCautions, type Caution, type PourCautionKey } from '../../words/cautions';

type Row = Caution & { key: string; from: string };

/** Cautions that stand beside the figure they are about, and not once more at the end. */
const BESIDE: readonly string[] = ['opening', 'color', ...Object.keys(WARMTH_CAUTIONS)];

/** What hurts people, in the words that the command line uses too. Never folded away. While nothing is known of the pour all of them stand. */
export function PourCautions({ pour }: { pour: PourOnPage | undefined }) {
  const all: readonly Row[] = pour === undefined ? pourCautions() : cautionsOfPour(pour);
  const isBeside = (key: string): boolean =>
    BESIDE.includes(key) || (key === 'plug-force' && pour?.forces.plugN !== undefined);
  return <CautionList of="the pour" cautions={all.filter(({ key }) => !isBeside(key))} />;
}

/** One caution, beside what it is about. */
export function CautionBeside({ of, plugN }: { of: PourCautionKey; plugN?: number }) {
  const cautions = pourCautions([of], plugN === undefined ? {} : { plugN });
  return <CautionList of={of} cautions={cautions.filter(({ key }) => key === of)} />;
}
