import { counted } from '../../words/sentence';
import type { BatchProps } from '../batch/batchProps';
import { LineField } from '../parts/LineField';
import { readPastText } from '../ticket/past';

/** Castings of before on one line of text: what the table counts by pack. */
export function PastField({ ticket, dispatch }: Pick<BatchProps, 'ticket' | 'dispatch'>) {
  const read = readPastText(ticket.pouring.past);
  const said = read.ok ? read.past : [];
  return (
    <LineField
      label="Castings of before, by pack"
      text={ticket.pouring.past}
      onText={(past) => dispatch({ do: 'past', text: past })}
      readback={
        said.length > 0
          ? `${counted(said.length, 'casting')}, ${said.filter(({ filled }) => filled).length} of them filled`
          : read.ok
            ? 'such as 1.15 short, 1.25 filled 3'
            : ''
      }
      wrong={
        read.ok
          ? undefined
          : `“${read.text}” is no casting. Write each by its pack and whether it filled: 1.15 short, 1.25 filled 3.`
      }
    />
  );
}
