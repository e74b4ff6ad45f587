import type { Source } from '../../estimate';
import { SOURCES } from '../words/sources';

/** The left edge says how a number is known: solid measured, double off paper, dotted assumed. The word says it too. */
export function SourceTag({ from }: { from: Source }) {
  const { word, edge } = SOURCES[from];
  return <span className={`tag ${edge}`}>{word}</span>;
}
