import { type Dispatch } from 'react';
import type { Problem } from '../../problem';
import { Choices } from '../parts/Choices';
import { Letter } from '../parts/Letter';
import { QuantityField } from '../parts/QuantityField';
import { TextField } from '../parts/TextField';
import type { FieldName } from '../ticket/fields';
import type { Action } from '../ticket/reducer';
import { CupTestForm } from './CupTestForm';
import type { Ticket } from '../ticket/state';

interface FoamFieldsProps {
  ticket: Ticket;
  dispatch: Dispatch<Action>;
  problemOf: (field: FieldName) => Problem | undefined;
}

/** Name, density and ratio of a foam: what the grams hang on. */
export function FoamFields({ ticket, dispatch, problemOf }: FoamFieldsProps) {
  const { foam } = ticket;
  const field = { ticket, dispatch };
  return (
    <>
      <div className="fields">
        <TextField
          label="Name on the card"
          text={foam.name}
          onText={(name) => dispatch({ do: 'foam', foam: { name } })}
        />
        <QuantityField name="freeRise" label="Free-rise density" {...field} problem={problemOf('freeRise')} />
        <Choices
          legend="Density from"
          name="free-rise-from"
          value={foam.from}
          options={[
            { value: 'data-sheet', label: 'data sheet' },
            { value: 'cup-test', label: 'cup test of today' },
          ]}
          onChoose={(from) => dispatch({ do: 'foam', foam: { from } })}
        />
      </div>
      <CupTestForm onTake={(cup) => dispatch({ do: 'cupTest', cup })} />
      <div className="fields">
        <QuantityField
          name="partsA"
          label={
            <>
              <Letter of="A" /> Parts of A, the isocyanate
            </>
          }
          {...field}
          problem={problemOf('partsA')}
        />
        <QuantityField
          name="partsB"
          label={
            <>
              <Letter of="B" /> Parts of B, the polyol
            </>
          }
          {...field}
          problem={problemOf('partsB')}
        />
        <Choices
          legend="Ratio A:B is"
          name="ratio-by"
          value={foam.by}
          options={[
            { value: 'mass', label: 'by weight' },
            { value: 'volume', label: 'by volume' },
          ]}
          onChoose={(by) => dispatch({ do: 'foam', foam: { by } })}
        />
      </div>
      <div className="fields">
        <QuantityField
          name="densityA"
          label={`Density of part A${foam.by === 'volume' ? '' : ' (if known)'}`}
          {...field}
          problem={problemOf('densityA')}
        />
        <QuantityField
          name="densityB"
          label={`Density of part B${foam.by === 'volume' ? '' : ' (if known)'}`}
          {...field}
          problem={problemOf('densityB')}
        />
      </div>
    </>
  );
}
