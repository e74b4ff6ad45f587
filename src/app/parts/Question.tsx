import { useId, type ReactNode } from 'react';
import { StatusMark, type Mark } from './StatusMark';

export interface QuestionProps {
  /** Left out where it belongs to the question before. */
  no?: number;
  mark: Mark;
  ask: string;
  /** The figure or sentence that answers it, with its range and tags. */
  answer?: ReactNode;
  /** One line. */
  because?: ReactNode;
  /** Verbs: buttons and the disclosure of the sum. */
  change?: ReactNode;
  children?: ReactNode;
  busy?: boolean;
}

/** A section of the ticket: number and status in the gutter; question, answer, because, change beside it. */
export function Question({ no, mark, ask, answer, because, change, children, busy = false }: QuestionProps) {
  const id = useId();
  return (
    <section className="q" aria-labelledby={id} aria-busy={busy}>
      <div className="g">
        {no !== undefined && (
          <span className="n" aria-hidden="true">
            {no}
          </span>
        )}
        <StatusMark mark={mark} />
      </div>
      <div className="b">
        <h2 id={id} tabIndex={-1}>
          {ask}
        </h2>
        {answer !== undefined && <div className="ans">{answer}</div>}
        {because !== undefined && <p className="why">{because}</p>}
        {children}
        {change !== undefined && <div className="chg">{change}</div>}
      </div>
    </section>
  );
}
