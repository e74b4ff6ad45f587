import { useState, type ReactNode } from 'react';
import type { Sentence } from '../../words/sentence';
import type { FieldSpec } from '../ticket/fieldSpec';
import { readSpec, type BoxText } from '../ticket/readSpec';
import { FieldMessage } from './FieldMessage';
import { QuantityInput } from './QuantityInput';

interface QuantityBoxProps {
  id: string;
  label: ReactNode;
  /** What the menu of units is called: "Unit of the pack factor". */
  unitLabel: string;
  spec: FieldSpec;
  box: BoxText;
  /** The box as it is after a key, another unit or a meaning that was picked. */
  onBox: (box: BoxText) => void;
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
  onBox,
  assumed,
  complaint,
  onLeave,
}: QuantityBoxProps) {
  // What stands there from before was left long ago: after a reload its mistake is told at once.
  const [left, setLeft] = useState(true);
  const { units, after } = spec;
  const { unit } = box;
  const read = readSpec(spec, box);
  const isBad = read.kind === 'ask' || (read.kind === 'error' && left) || complaint !== undefined;
  return (
    <div className={isBad ? 'qty bad' : 'qty'}>
      <label htmlFor={id}>{label}</label>
      <div className="in">
        <QuantityInput
          {...{ id, unitLabel, units, box, isBad, onBox }}
          isSigned={spec.isSigned === true}
          onEnter={() => setLeft(false)}
          onLeave={() => {
            setLeft(true);
            onLeave?.();
          }}
        />
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
        <button type="button" className="act" onClick={() => onBox({ text: assumed.text, unit })}>
          Confirm {assumed.shown}
        </button>
      )}
      <FieldMessage
        id={`${id}m`}
        read={read}
        showErrors={left}
        complaint={complaint}
        onPick={({ text, value }) => onBox({ text, unit, picked: value })}
      />
    </div>
  );
}
