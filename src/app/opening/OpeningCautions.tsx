import type { OpeningPlan } from '../../plan';
import { pourCautions } from '../../words/cautions';
import { openingCautions } from '../../words/openingCautions';
import { PLACE_CAUTIONS } from '../../words/placeWords';
import { CautionList } from '../parts/CautionList';

/** What hurts people where a mold is opened, vented and cut, in the words of the command line. Before there is a plan: those that hold for any. */
export function OpeningCautions({ plan }: { plan: OpeningPlan | undefined }) {
  const cautions =
    plan === undefined
      ? [
          ...pourCautions().filter(({ key }) => key === 'mold'),
          ...PLACE_CAUTIONS.map(({ what, from }) => ({ key: 'vents', when: 'Vents', what, from })),
        ]
      : openingCautions(plan);
  return (
    <CautionList
      of="opening and vents"
      cautions={cautions.map((caution, i) => ({ ...caution, key: `${caution.key} ${i}` }))}
    />
  );
}
