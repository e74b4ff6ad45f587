import type { Dispatch, ReactNode } from 'react';
import type { Problem } from '../../problem';
import { specOf, textOf, type FieldName } from '../ticket/fields';
import type { Action } from '../ticket/reducer';
import type { Ticket } from '../ticket/state';
import { fieldWords, lowerFirst } from '../words/fieldWords';
import { sayOnPage } from '../words/sayOnPage';
import { fieldId } from './fieldId';
import { QuantityBox } from './QuantityBox';

interface QuantityFieldProps {
  name: FieldName;
  label: ReactNode;
  ticket: Ticket;
  dispatch: Dispatch<Action>;
  /** What is taken while the box is empty: shown as assumed, with a button that makes it the user's word. */
  assumed?: { text: string; shown: string; basis: string };
  /** A problem of the engine that names this input. */
  problem?: Problem | undefined;
}

/** A box of the ticket. */
export function QuantityField({ name, label, ticket, dispatch, assumed, problem }: QuantityFieldProps) {
  return (
    <QuantityBox
      id={fieldId(name)}
      label={label}
      unitLabel={`Unit of ${lowerFirst(fieldWords(name))}`}
      spec={specOf(name)}
      box={textOf(ticket.fields, name)}
      onText={(text) => dispatch({ do: 'type', field: name, text })}
      onUnit={(unit) => dispatch({ do: 'unit', field: name, unit })}
      onPick={({ text, value }) => dispatch({ do: 'pick', field: name, text, value })}
      assumed={assumed}
      complaint={problem === undefined ? undefined : sayOnPage(problem)}
    />
  );
}
