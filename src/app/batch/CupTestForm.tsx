import { useId, useState } from 'react';
import { formatDensity } from '../../units';
import { assumptionLine } from '../../words/assumptionWords';
import { counted } from '../../words/sentence';
import { cupBecause } from '../../words/volumeWayWords';
import { VOLUME_RULES } from '../../yield';
import { Complaint } from '../parts/Complaint';
import { Figure } from '../parts/Figure';
import { FindingsTable } from '../parts/FindingsTable';
import { QuantityBox } from '../parts/QuantityBox';
import { SourceTag } from '../parts/SourceTag';
import type { BoxText } from '../ticket/readSpec';
import { ASSUMED_WATER } from '../words/assumedWater';
import { CUP_SPECS, cupFigures, MOST_CUPS, newCupDraft, oneMoreCup, type CupFigures } from './cupDraft';

/** Water and foam of the cups of today give the free rise, its range and its doubt; taken with one press. */
export function CupTestForm({ onTake }: { onTake: (cup: { kgM3: number; uShare: number }) => void }) {
  const [draft, setDraft] = useState(newCupDraft);
  const id = useId();
  const figures = cupFigures(draft);
  const foam = (row: number, box: BoxText): void =>
    setDraft({ ...draft, foams: draft.foams.map((one, at) => (at === row ? box : one)) });
  return (
    <details className="wide">
      <summary>From a cup test</summary>
      <div className="cuptest">
        <p className="why">
          Mix a small batch as for the pour, let it rise over the rim, trim it flush, weigh the foam without
          its cup. Fill the same cup with water to the rim and weigh that.
        </p>
        <div className="fields">
          <Box
            id={`${id}w`}
            label="Water that fills the cup"
            spec="mass"
            box={draft.water}
            onBox={(water) => setDraft({ ...draft, water })}
          />
          <Box
            id={`${id}t`}
            label="Temperature of the water in the cup"
            spec="temp"
            box={draft.temp}
            onBox={(temp) => setDraft({ ...draft, temp })}
            assumed={ASSUMED_WATER}
          />
          {draft.foams.map((box, row) => (
            <Box
              key={row}
              id={`${id}f${row}`}
              label={`Foam of cup ${row + 1}`}
              spec="mass"
              box={box}
              onBox={(one) => foam(row, one)}
            />
          ))}
        </div>
        {draft.foams.length < MOST_CUPS && (
          <div className="chg">
            <button type="button" className="act" onClick={() => setDraft(oneMoreCup(draft))}>
              Another cup
            </button>
          </div>
        )}
        {figures?.ok === false && <Complaint problem={figures.problem} />}
        {figures?.ok === true && <Result figures={figures.value} onTake={onTake} />}
      </div>
    </details>
  );
}

function Box({
  label,
  spec,
  onBox,
  box,
  ...rest
}: {
  id: string;
  label: string;
  spec: keyof typeof CUP_SPECS;
  box: BoxText;
  onBox: (box: BoxText) => void;
  assumed?: { text: string; shown: string; basis: string };
}) {
  return (
    <QuantityBox
      {...rest}
      label={label}
      unitLabel={`Unit of ${label.charAt(0).toLowerCase()}${label.slice(1)}`}
      spec={CUP_SPECS[spec]}
      box={box}
      onText={(text) => onBox({ text, unit: box.unit })}
      onUnit={(unit) => onBox({ text: box.text, unit })}
      onPick={({ text, value }) => onBox({ text, unit: box.unit, picked: value })}
    />
  );
}

function Result({
  figures,
  onTake,
}: {
  figures: CupFigures;
  onTake: (cup: { kgM3: number; uShare: number }) => void;
}) {
  const { freeRiseKgM3, uShare, cups, findings, waterG, waterTempC, isTempAssumed } = figures;
  const { value, low, high } = freeRiseKgM3;
  const water = { waterG, waterTempC, volumeCm3: cups[0]!.cupCm3 };
  const because = cupBecause({ water, eachKgM3: cups.map((cup) => cup.freeRiseKgM3), uShare });
  return (
    <>
      <div className="ans" role="status">
        <Figure value={value.toFixed(1)} unit="kg/m³" />
        <span className="rng">
          {cubed(formatDensity(value, 'us'))}; {low.toFixed(1)} to {high.toFixed(1)} kg/m³, 9 times in 10,
          from {counted(cups.length, 'cup')}
        </span>
        <SourceTag from="cup-test" />
      </div>
      <div className="chg">
        <button type="button" className="act" onClick={() => onTake({ kgM3: value, uShare })}>
          Use it as the free rise of today
        </button>
      </div>
      <ul>
        {because.map((line) => (
          <li key={line}>{cubed(line)}</li>
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

const cubed = (text: string): string => text.replaceAll('m3', 'm³').replaceAll('ft3', 'ft³');
