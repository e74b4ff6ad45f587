import type { ReactNode } from 'react';

interface KeepFormProps {
  label: string;
  /** Why it cannot be kept yet. */
  lacks: string | undefined;
  /** It is being kept now: a second press does nothing. */
  isBusy: boolean;
  /** What the two buttons say. */
  keep: string;
  leave: string;
  onKeep: () => void;
  onLeave: () => void;
  /** Why it could not be kept. */
  trouble: ReactNode;
  children: ReactNode;
}

/** A form that is kept as a whole or not at all. */
export function KeepForm({
  label,
  lacks,
  isBusy,
  keep,
  leave,
  onKeep,
  onLeave,
  trouble,
  children,
}: KeepFormProps) {
  return (
    <form
      className="cardform"
      aria-label={label}
      onSubmit={(event) => {
        event.preventDefault();
        if (lacks === undefined && !isBusy) onKeep();
      }}
    >
      {children}
      <div className="chg">
        {lacks === undefined ? (
          <button type="submit" className="act">
            {keep}
          </button>
        ) : (
          <span className="note">{lacks}</span>
        )}
        <button type="button" className="act" onClick={onLeave}>
          {leave}
        </button>
      </div>
      {trouble}
    </form>
  );
}
