import type { Dispatch, ReactNode } from 'react';
import type { Problem } from '../../problem';
import { specOf, textOf, type FieldName } from '../ticket/fields';
import type { BoxText } from '../ticket/readSpec';
import type { Action } from '../ticket/reducer';
import type { Word } from '../ticket/said';
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
  const box = textOf(ticket.fields, name);
  return (
    <QuantityBox
      id={fieldId(name)}
      label={label}
      unitLabel={`Unit of ${lowerFirst(fieldWords(name))}`}
      spec={specOf(name)}
      box={box}
      onBox={(next) => dispatch(wordOf(name, box.unit, next))}
      assumed={assumed}
      complaint={problem === undefined ? undefined : sayOnPage(problem)}
    />
  );
}

/** What was said with it: text, another unit than before, or one of several meanings. */
function wordOf(field: FieldName, unitBefore: string, { text, unit, picked }: BoxText): Word {
  if (picked !== undefined) return { do: 'pick', field, text, value: picked };
  return unit === unitBefore ? { do: 'type', field, text } : { do: 'unit', field, unit };
}
