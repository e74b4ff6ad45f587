import { sayWhy } from '../../words/quantityWords';
import type { Sentence } from '../../words/sentence';
import type { Reading } from '../../units';
import type { FieldRead } from '../ticket/readSpec';
import { MarkShape } from './StatusMark';

interface FieldMessageProps {
  id: string;
  read: FieldRead;
  showErrors: boolean;
  complaint: Sentence | undefined;
  onPick: (reading: Reading<number>) => void;
}

/** By the field: both meanings as buttons at once, an error when the field is left. Spoken politely, focus stays. */
export function FieldMessage({ id, read, showErrors, complaint, onPick }: FieldMessageProps) {
  return (
    <div className="msg" id={id} role="status">
      {read.kind === 'ask' && <Wrong {...sayWhy(read.why)} />}
      {read.kind === 'ask' && (
        <div className="picks">
          {read.readings.map((reading) => (
            <button key={reading.text} type="button" className="act" onClick={() => onPick(reading)}>
              {reading.text}
            </button>
          ))}
        </div>
      )}
      {read.kind === 'error' && showErrors && <Wrong {...sayWhy(read.why)} />}
      {read.kind !== 'ask' && read.kind !== 'error' && complaint !== undefined && <Wrong {...complaint} />}
    </div>
  );
}

const Wrong = ({ text, hint }: Sentence) => (
  <p className="err">
    <MarkShape mark="look" />
    <span>
      {text} {hint}
    </span>
  </p>
);
