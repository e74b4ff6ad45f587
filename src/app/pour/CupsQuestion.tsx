import type { ReactNode } from 'react';
import { POUR_RULES } from '../../yield';
import { gramsText } from '../../units';
import type { PourOnPage } from '../../worker/pour';
import { amount, counted } from '../../words/sentence';
import type { BatchProps } from '../batch/batchProps';
import { foundIn } from '../batch/findings';
import { Verdict } from '../parts/Figure';
import { FindingsTable } from '../parts/FindingsTable';
import { CupTable } from './CupTable';
import { between } from './figures';
import { PartQuestion } from './PartQuestion';
import { PourField } from './PourField';

/** Cup, hands and cream time: the largest mix, and the batch cup by cup. */
export function CupsQuestion(props: BatchProps) {
  const { pour } = props;
  const { cupFill, mixTime, carryTime } = POUR_RULES;
  const ready = pour.answer?.refused.cups === undefined ? pour.answer : undefined;
  const found = ready === undefined ? [] : foundIn(ready.findings, 'cups');
  return (
    <PartQuestion
      of={props}
      part="cups"
      group="cups"
      ask="Can one person pour it in time?"
      what="the cups"
      answer={(one) => <Verdict>{cupsWords(one)}</Verdict>}
      because={(one) => (one === undefined ? CREAM : windowWords(one))}
      sum="cups"
      sumMore={folkWords}
    >
      {ready !== undefined && ready.cups.cups.length > 1 && <CupTable pour={ready} />}
      <div className="fields">
        <PourField of={props} name="foamCup" label="Mixing cup, up to its rim" />
        <PourField of={props} name="cream" label="Cream time" />
        <PourField
          of={props}
          name="hands"
          label="Persons who mix and pour"
          assumed={{ value: 1, unit: '', from: 'one person' }}
        />
        <PourField
          of={props}
          name="mixTime"
          label="Mixing takes"
          assumed={{ value: mixTime.value, unit: 's', from: mixTime.from }}
        />
        <PourField
          of={props}
          name="carryTime"
          label="From bench to mold"
          assumed={{ value: carryTime.value, unit: 's', from: carryTime.from }}
        />
        <PourField
          of={props}
          name="cupFill"
          label="Liquid fills the cup to"
          assumed={{ value: 100 * cupFill.value, unit: '%', from: cupFill.from }}
        />
      </div>
      {found.length > 0 && <FindingsTable findings={found} caption="Checks of the cups" />}
    </PartQuestion>
  );
}

const CREAM =
  'Foam that has begun to cream no longer runs into the corners. Mix creams in the cup, too, and climbs.';

function cupsWords({ cups: { cups, limitedBy, totalG }, batch }: PourOnPage): string {
  const all = `${gramsText(totalG, batch.stepG)} g`;
  if (limitedBy === 'nothing known') return `Not checked: ${all} in one cup`;
  return cups.length === 1
    ? `One cup of ${all}`
    : `${counted(cups.length, 'cup')}, ${gramsText(cups[0]!.totalG, batch.stepG)} g in each`;
}

function windowWords({ cups: { largestMixG, limitedBy, rounds }, times: { window } }: PourOnPage): string {
  if (limitedBy === 'nothing known') return CREAM;
  const most =
    largestMixG === undefined
      ? ''
      : `One mix may be ${amount(largestMixG, 3)} g; the ${limitedBy} sets that.`;
  const left =
    window === undefined
      ? ' Without a cream time the clock is not checked.'
      : ` ${between(window.pourWindowS)} s are left to pour of ${amount(window.creamS.value, 2)} s until it creams.`;
  return `${most}${left}${rounds > 1 ? ` Each pair of hands mixes ${rounds} times.` : ''}`;
}

/** What a rule of thumb would say, beside the shifted time; nothing where none was shifted. */
function folkWords({ times: { window } }: PourOnPage): ReactNode {
  return window === undefined || window.creamS.folkDifferenceShare === 0 ? null : (
    <p>
      “Halves in 10 degrees” would say {amount(window.creamS.folk, 2)} s of cream time, instead of{' '}
      {amount(window.creamS.value, 2)} s ({between(window.creamS)} s).
    </p>
  );
}
