import { useState, type Dispatch, type ReactNode } from 'react';
import type { Problem } from '../../problem';
import { sayOnPage } from '../words/sayOnPage';
import { specOf, textOf, type FieldName } from '../ticket/fields';
import { readField } from '../ticket/readField';
import type { Action } from '../ticket/reducer';
import type { Ticket } from '../ticket/state';
import { fieldWords, lowerFirst } from '../words/fieldWords';
import { fieldId } from './fieldId';
import { FieldMessage } from './FieldMessage';

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

/** Label above, box, unit beside it, and below what was understood, in both systems; or what is wrong, or which of two is meant. */
export function QuantityField({ name, label, ticket, dispatch, assumed, problem }: QuantityFieldProps) {
  const id = fieldId(name);
  const [left, setLeft] = useState(false);
  const field = textOf(ticket.fields, name);
  const { units, after } = specOf(name);
  const read = readField(name, field);
  const complaint = problem === undefined ? undefined : sayOnPage(problem);
  const bad = read.kind === 'ask' || (read.kind === 'error' && left) || complaint !== undefined;
  return (
    <div className={bad ? 'qty bad' : 'qty'}>
      <label htmlFor={id}>{label}</label>
      <div className="in">
        <input
          id={id}
          type="text"
          inputMode="decimal"
          autoComplete="off"
          spellCheck={false}
          value={field.text}
          aria-invalid={bad}
          aria-describedby={`${id}r ${id}m`}
          onChange={(e) => dispatch({ do: 'type', field: name, text: e.target.value })}
          onBlur={() => setLeft(true)}
          onFocus={() => setLeft(false)}
        />
        <UnitOf
          name={name}
          unit={field.unit}
          units={units}
          onUnit={(unit) => dispatch({ do: 'unit', field: name, unit })}
        />
        {after !== undefined && <span>{after}</span>}
      </div>
      <p className="read" id={`${id}r`}>
        {read.kind === 'one' && read.readback !== field.text.trim() && read.readback}
        {read.kind === 'blank' && assumed !== undefined && (
          <>
            <span className="assumed">{assumed.shown}</span> assumed: {assumed.basis}
          </>
        )}
      </p>
      {read.kind === 'blank' && assumed !== undefined && (
        <button
          type="button"
          className="act"
          onClick={() => dispatch({ do: 'type', field: name, text: assumed.text })}
        >
          Confirm {assumed.shown}
        </button>
      )}
      <FieldMessage
        id={`${id}m`}
        read={read}
        showErrors={left}
        complaint={complaint}
        onPick={({ text, value }) => dispatch({ do: 'pick', field: name, text, value })}
      />
    </div>
  );
}

/** A menu where there is a choice; a typed unit wins over it. */
function UnitOf({
  name,
  unit,
  units,
  onUnit,
}: {
  name: FieldName;
  unit: string;
  units: readonly string[];
  onUnit: (unit: string) => void;
}) {
  if (units.length === 0) return null;
  if (units.length === 1) return <span>{unit}</span>;
  return (
    <select
      aria-label={`Unit of ${lowerFirst(fieldWords(name))}`}
      value={unit}
      onChange={(e) => onUnit(e.target.value)}
    >
      {units.map((u) => (
        <option key={u} value={u}>
          {SHOWN[u] ?? u}
        </option>
      ))}
    </select>
  );
}

const SHOWN: Readonly<Record<string, string>> = {
  'kg/m3': 'kg/m³',
  'lb/ft3': 'lb/ft³',
  cm3: 'cm³',
  'g/cm3': 'g/cm³',
  C: '°C',
  F: '°F',
};
