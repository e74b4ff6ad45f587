import { openToPrint } from './openToPrint';

interface PrintButtonProps {
  children: string;
  className?: string;
  /** The page to print; none while what it is of is worked out. Nothing of before is ever printed. */
  html: (() => string) | undefined;
}

/** Prints a page of its own from a window of its own. */
export function PrintButton({ children, className = 'act', html }: PrintButtonProps) {
  return (
    <button
      type="button"
      className={className}
      disabled={html === undefined}
      onClick={() => html !== undefined && openToPrint(html())}
    >
      {children}
    </button>
  );
}
