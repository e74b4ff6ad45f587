import { useId, type ReactNode } from 'react';

interface DayFieldProps {
  label: string;
  /** YYYY-MM-DD, or '' for none. */
  day: string;
  onDay: (day: string) => void;
  isDisabled?: boolean;
  /** What is said of it below. */
  note?: string | undefined;
  children?: ReactNode;
}

/** A day, by the browser's own calendar. */
export function DayField({ label, day, onDay, isDisabled = false, note, children }: DayFieldProps) {
  const id = useId();
  return (
    <div className="qty">
      <label htmlFor={id}>{label}</label>
      <div className="in">
        <input
          id={id}
          type="date"
          className="day"
          disabled={isDisabled}
          value={day}
          aria-describedby={note === undefined ? undefined : `${id}n`}
          onChange={(e) => onDay(e.target.value)}
        />
      </div>
      {note !== undefined && (
        <p className="read" id={`${id}n`}>
          {note}
        </p>
      )}
      {children}
    </div>
  );
}
