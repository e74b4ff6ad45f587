import { useState } from 'react';
import { formatDensity } from '../../units';
import { assumptionLine } from '../../words/assumptionWords';
import { counted } from '../../words/sentence';
import { cupBecause } from '../../words/volumeWayWords';
import { VOLUME_RULES } from '../../yield';
import { CupBoxes } from '../cup/CupBoxes';
import { cupsOfDraft, newCupDraft } from '../cup/cupDraft';
import type { WeighedCups } from '../cup/weighedCups';
import { Complaint } from '../parts/Complaint';
import { Figure } from '../parts/Figure';
import { FindingsTable } from '../parts/FindingsTable';
import { SourceTag } from '../parts/SourceTag';

interface CupTestFormProps {
  onTake: (cup: { kgM3: number; uShare: number }) => void;
}

/** Water and foam of the cups of today give the free rise, its range and its doubt; taken with one press. */
export function CupTestForm({ onTake }: CupTestFormProps) {
  const [draft, setDraft] = useState(newCupDraft);
  const cups = cupsOfDraft(draft);
  return (
    <details className="wide">
      <summary>From a cup test</summary>
      <div className="cuptest">
        <p className="why">
          Mix a small batch as for the pour, let it rise over the rim, trim it flush, weigh the foam without
          its cup. Fill the same cup with water to the rim and weigh that.
        </p>
        <CupBoxes draft={draft} onDraft={setDraft} />
        {cups?.ok === false && <Complaint problem={cups.problem} />}
        {cups?.ok === true && <Result cups={cups.value} onTake={onTake} />}
      </div>
    </details>
  );
}

function Result({ cups, onTake }: CupTestFormProps & { cups: WeighedCups }) {
  const { uShare, findings, waterTempC, isTempAssumed } = cups;
  const { value, low, high } = cups.freeRiseKgM3;
  return (
    <>
      <div className="ans" role="status">
        <Figure value={value.toFixed(1)} unit="kg/m³" />
        <span className="rng">
          {formatDensity(value, 'us')}; {low.toFixed(1)} to {high.toFixed(1)} kg/m³, 9 times in 10, from{' '}
          {counted(cups.cups.length, 'cup')}
        </span>
        <SourceTag from="cup-test" />
      </div>
      <div className="chg">
        <button type="button" className="act" onClick={() => onTake({ kgM3: value, uShare })}>
          Use it as the free rise of today
        </button>
      </div>
      <ul>
        {cupBecause(cups).map((line) => (
          <li key={line}>{line}</li>
        ))}
        {isTempAssumed && (
          <li>
            <span className="assumed">
              {assumptionLine({
                name: 'water_temperature',
                value: waterTempC,
                unit: 'C',
                from: 'assumed',
                basis: VOLUME_RULES.waterTemp.from,
              })}
            </span>
          </li>
        )}
      </ul>
      {findings.length > 0 && <FindingsTable findings={findings} caption="Of the cup test" />}
    </>
  );
}
