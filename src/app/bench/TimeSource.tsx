import type { Source } from '../../estimate';
import type { PlannedTime } from '../../job/benchState';
import { SOURCES } from '../words/sources';

/** How a planned time is known: the tag with its temperature, and what it was worked out from. A word of a later version stands as it is. */
export function TimeSource({ time: { from, at, by } }: { time: PlannedTime }) {
  const source = Object.hasOwn(SOURCES, from) ? SOURCES[from as Source] : { word: from, edge: 'assumed' };
  return (
    <>
      <span className={`tag ${source.edge}`}>
        {source.word}
        {at !== undefined && `, ${at}`}
      </span>
      {by !== undefined && <span className="note quiet"> {by}</span>}
    </>
  );
}
