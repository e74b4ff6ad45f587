import { useEffect, useState, type ReactNode } from 'react';
import type { WeighBox } from '../../job/weighState';
import type { SavedField } from '../../job/piece';
import { FieldMessage } from '../parts/FieldMessage';
import { QuantityInput } from '../parts/QuantityInput';
import type { BoxText } from '../ticket/readSpec';
import { BOX_SPECS, readBox } from './weighBoxes';

interface WeighRowProps {
  name: WeighBox;
  label: string;
  /** What to put on the scale, or where the figure in the box comes from. */
  hint: string;
  box: BoxText | 'not';
  /** "Did not weigh". */
  notWords: string;
  onBox: (box: SavedField | 'not' | undefined) => void;
  onUnit: (unit: string) => void;
  /** The unit of a box that is said to be not weighed. */
  unit: string;
  /** What is asked about it. */
  children?: ReactNode;
}

/** Half a figure is not asked about: only after so long without a key, or when the box is left. Chosen here. */
const PAUSE_MS = 700;

/** One weight or temperature: what it is, a box that can be hit with a glove on, and that nobody weighed it. */
export function WeighRow({ name, label, hint, box, notWords, onBox, onUnit, unit, children }: WeighRowProps) {
  const [left, setLeft] = useState(true);
  const [isTyping, setTyping] = useState(false);
  /** What stood there when it was said that nobody weighed it: it comes back with the same press. */
  const [before, setBefore] = useState<SavedField>();
  const isNot = box === 'not';
  const text = isNot ? { text: '', unit } : box;
  const read = readBox(name, box);
  const id = `weigh-${name}`;
  useEffect(() => {
    if (!isTyping) return;
    const pause = setTimeout(() => setTyping(false), PAUSE_MS);
    return () => clearTimeout(pause);
  }, [isTyping, text.text]);
  const isBad = read.kind === 'ask' || (read.kind === 'error' && left);
  return (
    <div className={isBad ? 'wb bad' : 'wb'}>
      <label htmlFor={id}>
        <b>{label}</b> <span>{hint}</span>
      </label>
      <div className="in">
        <QuantityInput
          id={id}
          unitLabel={`Unit of ${label.toLowerCase()}`}
          units={BOX_SPECS[name].units}
          box={text}
          isBad={isBad}
          isSigned={BOX_SPECS[name].isSigned === true}
          onBox={(next) => {
            if (next.unit !== text.unit) return onUnit(next.unit);
            setTyping(true);
            onBox(next);
          }}
          onLeave={() => {
            setLeft(true);
            setTyping(false);
          }}
          onEnter={() => setLeft(false)}
        />
      </div>
      <button
        type="button"
        className="act not"
        aria-pressed={isNot}
        onClick={() => {
          if (isNot) return onBox(before);
          setBefore(box.text === '' ? undefined : { ...box });
          onBox('not');
        }}
      >
        <span>
          {notWords}
          <span className="sr">: {label}</span>
        </span>
      </button>
      <div className="under">
        <p className="read" id={`${id}r`}>
          {read.kind === 'one' && read.readback !== text.text.trim() && read.readback}
          {isNot && 'Left out.'}
        </p>
        <FieldMessage
          id={`${id}m`}
          read={read}
          showErrors={left}
          complaint={undefined}
          onPick={(pick) => onBox({ text: pick.text, unit: text.unit, picked: pick.value })}
        />
        {!isTyping && children}
      </div>
    </div>
  );
}
