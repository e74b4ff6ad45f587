import type { OpeningPlan } from '../plan';
import { lidForceN } from '../yield';
import { pourCautions, type PourCautionKey } from './cautions';
import { PLACE_CAUTIONS } from './placeWords';

export interface OpeningCaution {
  key: string;
  when: string;
  what: string;
  from: string;
}

const COMMON = 'common practice, no source';

const ALWAYS: readonly PourCautionKey[] = ['first', 'mold', 'heat', 'opening'];

const KNIFE: OpeningCaution = {
  key: 'knife',
  when: 'Knife',
  what: 'Cut away from the hand that holds the rubber, with a new blade and a glove that resists cuts on that hand; a board behind the cut, nobody in its line. A hot needle or wire burns, and its smoke is not for breathing.',
  from: COMMON,
};

/** Those of the pour that belong to opening, vents and the way out: the plug with its push where one is offered, the knife where rubber is pierced or cut. */
export function openingCautions({ opening, demold, places }: OpeningPlan): OpeningCaution[] {
  const plugN = plugForceN(opening);
  const keys: readonly PourCautionKey[] = [...ALWAYS, 'plug-force'];
  const ofPour = pourCautions(keys, plugN === undefined ? {} : { plugN }).filter(({ key }) =>
    keys.includes(key),
  );
  const isCut =
    demold !== undefined &&
    (demold.slit !== undefined || demold.locked.length > 0 || demold.caught.length > 0);
  const isPierced = places.some(({ kind }) => kind === 'vent advised' || kind === 'vent planned');
  return [
    ...ofPour,
    ...PLACE_CAUTIONS.slice(0, 2).map(({ what, from }) => ({ key: 'vents', when: 'Vents', what, from })),
    ...(isCut || isPierced ? [KNIFE] : []),
  ];
}

/** The larger push: on a plug in the opening as it is, or in the mouth that is offered. */
function plugForceN({ offers, idealKPa, areaCm2 }: OpeningPlan['opening']): number | undefined {
  if (idealKPa === undefined) return undefined;
  const push = lidForceN({ gaugeKPa: idealKPa, lidCm2: areaCm2 });
  return push.ok ? Math.max(push.value, offers?.plug?.forceN ?? 0) : undefined;
}
