import { fillCautions } from '../../words/volumeWayWords';
import { CautionList } from '../parts/CautionList';
import { FactInput } from '../parts/FactInput';
import { QuantityField } from '../parts/QuantityField';
import { StatusMark } from '../parts/StatusMark';
import type { Ticket } from '../ticket/state';
import { isFillSaid } from '../ticket/wayReads';
import { ASSUMED_WATER } from '../words/assumedWater';
import { POUR_FACT_ROWS } from '../words/factFields';
import { FillOfBook } from './FillOfBook';
import { plasterJacket } from './wayHazards';
import type { WayProps } from './wayProps';

const MOLD_WATER = POUR_FACT_ROWS.find(({ fact }) => fact === 'moldWater');

/** The mold filled to its rim with water, weighed; and what that leaves to do before foam goes in. */
export function FillFields({ ticket, dispatch, piece }: WayProps) {
  const field = { ticket, dispatch };
  const plaster = plasterJacket(ticket);
  return (
    <div className="way" role="group" aria-label="Water in the mold">
      <h3>Fill the mold with water to its rim, and weigh the water</h3>
      {plaster !== undefined && (
        <div className="agree">
          <StatusMark mark="stop" />
          <p>The jacket of this mold is {plaster}, by what was said on Mold: it is not filled with water.</p>
        </div>
      )}
      <div className="fields">
        <QuantityField name="fillWater" label="Water that fills it, all jugs together" {...field} />
        <QuantityField name="fillTemp" label="Temperature of the water" {...field} assumed={ASSUMED_WATER} />
        {isFillSaid(ticket) && MOLD_WATER !== undefined && (
          <FactInput
            row={MOLD_WATER}
            value={ticket.pouring.facts.moldWater ?? ''}
            onSay={(value) => dispatch({ do: 'pourFact', fact: 'moldWater', value })}
          />
        )}
      </div>
      {hasCore(ticket) && (
        <p className="note">
          What stands in the cavity is taken off this volume: fill it without core and armature.
        </p>
      )}
      <FillOfBook {...{ ticket, dispatch, piece }} />
      <CautionList of="water fill" cautions={fillCautions()} />
    </div>
  );
}

const hasCore = ({ fields }: Ticket): boolean =>
  [fields.coreVolume, fields.armature].some(({ text }) => text.trim() !== '');
