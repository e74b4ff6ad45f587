import { useState } from 'react';
import { PRINT_WORDS } from '../../words/printWords';
import { saveFile } from '../shop/saveFile';
import { openToPrint, type NotPrinted } from './openToPrint';
import { MarkShape } from './StatusMark';

interface PrintButtonProps {
  children: string;
  className?: string;
  /** The page to print; none while what it is of is worked out. Nothing of before is ever printed. */
  html: (() => string) | undefined;
}

/** Prints a page of its own from a window of its own; where the browser does not, it says so and gives the page as a file. */
export function PrintButton({ children, className = 'act', html }: PrintButtonProps) {
  const [trouble, setTrouble] = useState<NotPrinted>();
  const print = (): void => {
    setTrouble(undefined);
    if (html !== undefined) openToPrint(html(), setTrouble);
  };
  return (
    <>
      <button type="button" className={className} disabled={html === undefined} onClick={print}>
        {children}
      </button>
      {trouble !== undefined && html !== undefined && (
        <span className="note" role="alert">
          <span className="err">
            <MarkShape mark="stop" />
            <span>{PRINT_WORDS[trouble]}</span>
          </span>{' '}
          <button
            type="button"
            className="act"
            onClick={() => saveFile(new Blob([html()], { type: 'text/html' }), fileName(children))}
          >
            {PRINT_WORDS.save}
          </button>
        </span>
      )}
    </>
  );
}

/** "Print the pour sheet" becomes "pour-sheet.html". */
const fileName = (verb: string): string =>
  `${verb
    .replace(/^Print (the )?/, '')
    .toLowerCase()
    .replaceAll(' ', '-')}.html`;
