import { useId, useState } from 'react';
import { MarkShape } from './StatusMark';

interface LineFieldProps {
  label: string;
  text: string;
  onText: (text: string) => void;
  /** What was understood. */
  readback: string;
  /** What is wrong with the text; told when the field is left. */
  wrong?: string | undefined;
  /** What the engine says of it; told at once. */
  complaint?: string | undefined;
}

/** A list on one line of text, read back below. */
export function LineField({ label, text, onText, readback, wrong, complaint }: LineFieldProps) {
  const id = useId();
  const [left, setLeft] = useState(true);
  const told = wrong === undefined ? complaint : left ? wrong : undefined;
  return (
    <div className={told === undefined ? 'qty' : 'qty bad'}>
      <label htmlFor={id}>{label}</label>
      <div className="in">
        <input
          id={id}
          className="w"
          type="text"
          autoComplete="off"
          spellCheck={false}
          value={text}
          aria-invalid={told !== undefined}
          aria-describedby={`${id}r ${id}m`}
          onChange={(e) => onText(e.target.value)}
          onBlur={() => setLeft(true)}
          onFocus={() => setLeft(false)}
        />
      </div>
      <p className="read" id={`${id}r`}>
        {readback}
      </p>
      <div className="msg" id={`${id}m`} role="status">
        {told !== undefined && (
          <p className="err">
            <MarkShape mark="look" />
            <span>{told}</span>
          </p>
        )}
      </div>
    </div>
  );
}
