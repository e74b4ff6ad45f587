import { useState, type ReactNode } from 'react';
import type { Sentence } from '../../words/sentence';
import type { FieldSpec } from '../ticket/fieldSpec';
import { readSpec, type BoxText } from '../ticket/readSpec';
import { unitSign } from '../words/unitSign';
import { FieldMessage } from './FieldMessage';

interface QuantityBoxProps {
  id: string;
  label: ReactNode;
  /** What the menu of units is called: "Unit of the pack factor". */
  unitLabel: string;
  spec: FieldSpec;
  box: BoxText;
  onText: (text: string) => void;
  onUnit: (unit: string) => void;
  onPick: (pick: { text: string; value: number }) => void;
  /** What is taken while the box is empty: shown as assumed, with a button that makes it the user's word. */
  assumed?: { text: string; shown: string; basis: string } | undefined;
  /** What the engine says of it. */
  complaint?: Sentence | undefined;
  onLeave?: () => void;
}

/** Label above, box, unit beside it, and below what was understood, in both systems; or what is wrong, or which of two is meant. */
export function QuantityBox({
  id,
  label,
  unitLabel,
  spec,
  box,
  assumed,
  complaint,
  ...on
}: QuantityBoxProps) {
  const [left, setLeft] = useState(false);
  const { units, after } = spec;
  const read = readSpec(spec, box);
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
          value={box.text}
          aria-invalid={bad}
          aria-describedby={`${id}r ${id}m`}
          onChange={(e) => on.onText(e.target.value)}
          onBlur={() => {
            setLeft(true);
            on.onLeave?.();
          }}
          onFocus={() => setLeft(false)}
        />
        <UnitOf label={unitLabel} unit={box.unit} units={units} onUnit={on.onUnit} />
        {after !== undefined && <span>{after}</span>}
      </div>
      <p className="read" id={`${id}r`}>
        {read.kind === 'one' && read.readback !== box.text.trim() && read.readback}
        {read.kind === 'blank' && assumed !== undefined && (
          <>
            <span className="assumed">{assumed.shown}</span> assumed: {assumed.basis}
          </>
        )}
      </p>
      {read.kind === 'blank' && assumed !== undefined && (
        <button type="button" className="act" onClick={() => on.onText(assumed.text)}>
          Confirm {assumed.shown}
        </button>
      )}
      <FieldMessage
        id={`${id}m`}
        read={read}
        showErrors={left}
        complaint={complaint}
        onPick={({ text, value }) => on.onPick({ text, value })}
      />
    </div>
  );
}

/** A menu where there is a choice; a typed unit wins over it. */
function UnitOf({
  label,
  unit,
  units,
  onUnit,
}: {
  label: string;
  unit: string;
  units: readonly string[];
  onUnit: (unit: string) => void;
}) {
  if (units.length === 0) return null;
  if (units.length === 1) return <span>{unit}</span>;
  return (
    <select aria-label={label} value={unit} onChange={(e) => onUnit(e.target.value)}>
      {units.map((u) => (
        <option key={u} value={u}>
          {unitSign(u)}
        </option>
      ))}
    </select>
  );
}
