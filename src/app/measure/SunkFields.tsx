import { formatVolume, numberText } from '../../units';
import { sinkCautions } from '../../words/sinkCautions';
import { VOLUME_RULES } from '../../yield';
import { CautionList } from '../parts/CautionList';
import { Choices } from '../parts/Choices';
import { QuantityField } from '../parts/QuantityField';
import { StatusMark } from '../parts/StatusMark';
import { valueIn } from '../ticket/readField';
import type { Sunk } from '../ticket/sizingState';
import { ASSUMED_WATER } from '../words/assumedWater';
import { SUNK_LABELS } from '../words/wayWords';
import type { AskProps } from './askProps';
import { soakingSurface } from './wayHazards';

/** The sculpt under water or in rice: two levels, or what ran over a full rim. */
export function SunkFields({ ticket, dispatch }: Pick<AskProps, 'ticket' | 'dispatch'>) {
  const { sunk } = ticket.sizing;
  const soaks = sunk === 'rice' ? undefined : soakingSurface(ticket);
  return (
    <div className="way" role="group" aria-label="The sculpt sunk">
      <Choices<Sunk>
        legend="Sink it in"
        name="sunk"
        value={sunk}
        options={(Object.keys(SUNK_LABELS) as Sunk[]).map((value) => ({ value, label: SUNK_LABELS[value] }))}
        onChoose={(chosen) => dispatch({ do: 'sunk', sunk: chosen })}
      />
      {soaks !== undefined && (
        <div className="agree">
          <StatusMark mark="stop" />
          <p>
            The surface of the sculpt is {soaks} without a barrier coat, by what was said on Mold: not in
            water. Seal it first, or sink it in rice.
          </p>
        </div>
      )}
      {sunk === 'overflow' ? <Overflow {...{ ticket, dispatch }} /> : <Levels {...{ ticket, dispatch }} />}
      <CautionList of="sinking the sculpt" cautions={sinkCautions(sunk === 'rice' ? 'rice' : 'water')} />
    </div>
  );
}

function Levels({ ticket, dispatch }: Pick<AskProps, 'ticket' | 'dispatch'>) {
  const field = { ticket, dispatch };
  const afterCm3 = valueIn(ticket.fields, 'sunkAfter');
  const { vesselMarks } = VOLUME_RULES;
  const stepCm3 = afterCm3 === undefined ? undefined : Number((afterCm3 / vesselMarks.value).toPrecision(2));
  return (
    <div className="fields">
      <QuantityField name="sunkBefore" label="Level without the sculpt" {...field} />
      <QuantityField name="sunkAfter" label="Level with the sculpt under" {...field} />
      <QuantityField
        name="sunkStep"
        label="Smallest step that can be read"
        {...field}
        {...(stepCm3 === undefined
          ? {}
          : {
              assumed: {
                text: `${numberText(stepCm3)} cm3`,
                shown: formatVolume(stepCm3, 'metric'),
                basis: vesselMarks.from,
              },
            })}
      />
    </div>
  );
}

function Overflow({ ticket, dispatch }: Pick<AskProps, 'ticket' | 'dispatch'>) {
  const field = { ticket, dispatch };
  return (
    <div className="fields">
      <QuantityField name="overWater" label="Water that ran over, weighed" {...field} />
      <QuantityField
        name="overTemp"
        label="Temperature of the water that ran over"
        {...field}
        assumed={ASSUMED_WATER}
      />
    </div>
  );
}
