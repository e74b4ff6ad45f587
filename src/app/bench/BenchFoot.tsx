import type { ReactNode } from 'react';
import { useBenchKeys } from './useBenchKeys';

interface BenchFootProps {
  label: string;
  onPress: () => void;
  /** Under the button: what is undone, what is kept. */
  children: ReactNode;
  /** Asked in place of the button. */
  asked?: { question: string; yes: string; no: string; onYes: () => void; onNo: () => void } | undefined;
}

/** The one button, always at the foot of the screen; beside it a press does nothing. */
export function BenchFoot({ label, onPress, children, asked }: BenchFootProps) {
  useBenchKeys(asked === undefined ? onPress : undefined);
  return (
    <div className="benchfoot">
      {asked === undefined ? (
        <button type="button" className="btn" data-primary onClick={onPress}>
          {label}
        </button>
      ) : (
        <div className="asked" role="group" aria-label={asked.question}>
          <p role="status">{asked.question}</p>
          <button type="button" className="btn line" onClick={asked.onYes}>
            {asked.yes}
          </button>
          <button type="button" className="btn" onClick={asked.onNo}>
            {asked.no}
          </button>
        </div>
      )}
      <div className="sub">{children}</div>
    </div>
  );
}
