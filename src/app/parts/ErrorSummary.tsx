import { useEffect, useState } from 'react';
import type { Problem } from '../../problem';
import { sayWhy } from '../../words/quantityWords';
import { counted, type Sentence } from '../../words/sentence';
import { textOf, type FieldName } from '../ticket/fields';
import { readField } from '../ticket/readField';
import type { Ticket } from '../ticket/state';
import { fieldWords } from '../words/fieldWords';
import { sayOnPage } from '../words/sayOnPage';
import { fieldId } from './fieldId';
import { MarkShape } from './StatusMark';

interface ErrorSummaryProps {
  ticket: Ticket;
  names: readonly FieldName[];
  problemOf?: (name: FieldName) => Problem | undefined;
}

/** Where two fields or more of a part are refused: all of them, each a link. What is being typed does not count yet. */
export function ErrorSummary({ ticket, names, problemOf = () => undefined }: ErrorSummaryProps) {
  const focused = useFocusedId();
  const wrong = names.flatMap((name) => {
    const why = whyOf(ticket, name, problemOf(name));
    return why === undefined || fieldId(name) === focused ? [] : [{ name, why }];
  });
  if (wrong.length < 2) return null;
  return (
    <div className="complaint" role="group" aria-label="Fields to look at again">
      <MarkShape mark="stop" />
      <div>
        <b>{counted(wrong.length, 'field')} to look at again</b>
        <ul>
          {wrong.map(({ name, why }) => (
            <li key={name}>
              <a className="act" href={`#${fieldId(name)}`}>
                {fieldWords(name)}
              </a>{' '}
              <span>{why.text}</span>
            </li>
          ))}
        </ul>
      </div>
    </div>
  );
}

function whyOf({ fields }: Ticket, name: FieldName, problem: Problem | undefined): Sentence | undefined {
  const read = readField(name, textOf(fields, name));
  if (read.kind === 'ask' || read.kind === 'error') return sayWhy(read.why);
  return problem?.status === 'stop' ? sayOnPage(problem) : undefined;
}

function useFocusedId(): string {
  const [id, setId] = useState('');
  useEffect(() => {
    const look = (): void => setId(document.activeElement?.id ?? '');
    /** While one field is left for another, nothing has the focus. */
    const later = (): void => void setTimeout(look);
    addEventListener('focusin', look);
    addEventListener('focusout', later);
    return () => {
      removeEventListener('focusin', look);
      removeEventListener('focusout', later);
    };
  }, []);
  return id;
}
