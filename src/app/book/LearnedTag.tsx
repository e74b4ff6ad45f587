import type { Source } from '../../estimate';
import { SOURCES } from '../words/sources';

/** How a figure of the Book is known, and from how many pours or cups. */
export function LearnedTag({ from, count }: { from: Source; count?: number }) {
  const { word, edge } = SOURCES[from];
  return <span className={`tag ${edge}`}>{count === undefined ? word : `${word} (n = ${count})`}</span>;
}
