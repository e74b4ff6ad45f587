import { useId } from 'react';

interface TextFieldProps {
  label: string;
  text: string;
  onText: (text: string) => void;
  onLeave?: () => void;
}

/** A line of text, as it is typed. */
export function TextField({ label, text, onText, onLeave }: TextFieldProps) {
  const id = useId();
  return (
    <div className="qty">
      <label htmlFor={id}>{label}</label>
      <div className="in">
        <input
          id={id}
          className="w"
          type="text"
          autoComplete="off"
          value={text}
          onChange={(e) => onText(e.target.value)}
          onBlur={onLeave}
        />
      </div>
    </div>
  );
}
