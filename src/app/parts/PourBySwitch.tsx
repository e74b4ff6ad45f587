import type { AskProps } from '../measure/askProps';
import { pourByOf } from '../ticket/moldWishes';
import { Choices } from './Choices';

/** Which volume the foam is weighed for. Stands in Mold and in Batch: one word of the ticket. */
export function PourBySwitch({ ticket, dispatch, name }: Omit<AskProps, 'mark'> & { name: string }) {
  return (
    <Choices
      legend="Pour for the volume of"
      name={name}
      value={pourByOf(ticket)}
      assumed={ticket.molding.pourBy === undefined}
      options={[
        { value: 'sculpt', label: 'the sculpt, as measured' },
        { value: 'cavity', label: 'the cavity at casting temperature' },
      ]}
      onChoose={(pourBy) => dispatch({ do: 'molding', molding: { pourBy } })}
    />
  );
}
