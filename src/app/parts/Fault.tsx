import { faultWords } from '../words/announce';
import { MarkShape } from './StatusMark';

/** Something of ours broke: said as such, with the way on. */
export function Fault({ message, onAgain }: { message: string; onAgain: () => void }) {
  return (
    <div className="complaint">
      <MarkShape mark="unknown" />
      <p>
        <b>{faultWords(message)}</b>{' '}
        <button type="button" className="act" onClick={onAgain}>
          Try again
        </button>
      </p>
    </div>
  );
}
