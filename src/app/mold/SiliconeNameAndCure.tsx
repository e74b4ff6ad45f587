import type { Dispatch } from 'react';
import { CHOICES } from '../../checks';
import { SelectField } from '../parts/SelectField';
import { TextField } from '../parts/TextField';
import type { Action } from '../ticket/reducer';
import type { Ticket } from '../ticket/state';

/** Which silicone it is: its name and how it cures. */
export function SiliconeNameAndCure({ ticket, dispatch }: { ticket: Ticket; dispatch: Dispatch<Action> }) {
  const { siliconeName, facts } = ticket.molding;
  return (
    <>
      <TextField
        label="Name on the silicone card"
        text={siliconeName}
        onText={(text) => dispatch({ do: 'molding', molding: { siliconeName: text } })}
      />
      <SelectField
        label="Cure"
        value={facts.siliconeCure ?? ''}
        blank="not said"
        options={CHOICES.siliconeCure.map((value) => ({ value, label: value }))}
        onChoose={(value) => dispatch({ do: 'fact', fact: 'siliconeCure', value })}
      />
    </>
  );
}
