import { useId } from 'react';

interface SelectFieldProps {
  label: string;
  value: string;
  options: readonly { value: string; label: string }[];
  /** What stands for "nothing said": the default, or "not said". */
  blank: string;
  onChoose: (value: string) => void;
  /** Where the default comes from, while it is taken. */
  note?: string | undefined;
  /** What is taken while nobody has chosen: shown as assumed, with a button that makes it the user's word. */
  assumed?: { value: string; shown: string; basis: string };
}

/** A native menu under its label; its first line is what holds while nobody has chosen. */
export function SelectField({ label, value, options, blank, onChoose, note, assumed }: SelectFieldProps) {
  const id = useId();
  return (
    <div className="qty">
      <label htmlFor={id}>{label}</label>
      <div className="in">
        <select
          id={id}
          className="w"
          value={value}
          aria-describedby={note === undefined && assumed === undefined ? undefined : `${id}n`}
          onChange={(e) => onChoose(e.target.value)}
        >
          <option value="">{blank}</option>
          {options.map((option) => (
            <option key={option.value} value={option.value}>
              {option.label}
            </option>
          ))}
        </select>
      </div>
      {note !== undefined && (
        <p className="read" id={`${id}n`}>
          {value === '' && note}
        </p>
      )}
      {assumed !== undefined && (
        <p className="read" id={`${id}n`}>
          {value === '' && (
            <>
              <span className="assumed">{assumed.shown}</span> assumed: {assumed.basis}
            </>
          )}
        </p>
      )}
      {assumed !== undefined && value === '' && (
        <button type="button" className="act" onClick={() => onChoose(assumed.value)}>
          Confirm {assumed.shown}
        </button>
      )}
    </div>
  );
}
