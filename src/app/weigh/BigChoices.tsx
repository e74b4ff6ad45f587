import type { ReactNode } from 'react';

export interface BigChoice {
  value: string;
  label: ReactNode;
  /** Under the label. */
  more?: string;
}

interface BigChoicesProps {
  legend: string;
  name: string;
  options: readonly BigChoice[];
  chosen: readonly string[];
  onChoose: (value: string) => void;
  /** Several at a time. */
  many?: boolean;
  /** Five boxes of one width. */
  five?: boolean;
}

/** Answers as boxes of 64 px in a row; native radios or ticks, so arrow keys and Space work. */
export function BigChoices({
  legend,
  name,
  options,
  chosen,
  onChoose,
  many = false,
  five = false,
}: BigChoicesProps) {
  return (
    <fieldset className="big">
      <legend>{legend}</legend>
      <div className={five ? 'five' : 'opt'}>
        {options.map(({ value, label, more }) => (
          <label key={value}>
            <input
              type={many ? 'checkbox' : 'radio'}
              name={name}
              value={value}
              checked={chosen.includes(value)}
              onChange={() => onChoose(value)}
            />
            <b>{label}</b>
            {more !== undefined && <span>{more}</span>}
          </label>
        ))}
      </div>
    </fieldset>
  );
}
