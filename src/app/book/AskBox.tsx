import { useState } from 'react';
import type { PourRow } from '../../job/book';
import type { Problem } from '../../problem';
import { StatusMark } from '../parts/StatusMark';
import { sayOnPage } from '../words/sayOnPage';
import type { Asked } from './answers';
import { TypeAnother } from './TypeAnother';

interface AskBoxProps {
  finding: Problem;
  asked: Asked;
  row: PourRow;
  onAnswer: (change: Partial<PourRow>) => void;
}

/** A question about one pour, with its answers as buttons. Nothing is put right by itself. */
export function AskBox({ finding, asked, row, onAnswer }: AskBoxProps) {
  const [isTyping, setTyping] = useState(false);
  const { text, hint } = sayOnPage(finding);
  return (
    <div className="ask">
      <p>
        <StatusMark mark={finding.status} /> <b>{text}</b> {hint}
        {asked.because !== undefined && <> {asked.because}</>}
      </p>
      <div className="chg">
        {asked.answers.slice(0, -1).map(({ words, change }) => (
          <Verb key={words} words={words} onPress={() => onAnswer(change)} />
        ))}
        <Verb words="Type another figure" isPressed={isTyping} onPress={() => setTyping((is) => !is)} />
        {asked.answers.slice(-1).map(({ words, change }) => (
          <Verb key={words} words={words} onPress={() => onAnswer(change)} />
        ))}
      </div>
      {isTyping && (
        <TypeAnother
          row={row}
          about={asked.about}
          onWrite={(change) => {
            setTyping(false);
            onAnswer(change);
          }}
        />
      )}
    </div>
  );
}

function Verb({ words, isPressed, onPress }: { words: string; isPressed?: boolean; onPress: () => void }) {
  return (
    <button type="button" className="act" aria-expanded={isPressed} onClick={onPress}>
      {words}
    </button>
  );
}
