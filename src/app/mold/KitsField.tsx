import { sayOnPage } from '../words/sayOnPage';
import { LineField } from '../parts/LineField';
import { readKitsText, type KitsRead } from '../ticket/kits';
import { amount } from '../../words/sentence';
import type { MoldProps } from './moldProps';

/** Kit sizes and prices as one line of text, read back below. */
export function KitsField({ ticket, dispatch, problemOf }: MoldProps) {
  const { kits } = ticket.molding;
  const read = readKitsText(kits);
  const problem = problemOf('kits');
  return (
    <LineField
      label="Kits it is sold in, with prices"
      text={kits}
      onText={(text) => dispatch({ do: 'kits', text })}
      readback={readback(read)}
      wrong={
        read.ok
          ? undefined
          : `“${read.text}” is no kit. Write each by its mass and, if you know it, its price: 1.1 kg=30, 5.5 kg=130.`
      }
      complaint={problem === undefined ? undefined : `${sayOnPage(problem).text} ${sayOnPage(problem).hint}`}
    />
  );
}

function readback(read: KitsRead): string {
  if (!read.ok) return '';
  if (read.kits.length === 0) return 'such as 1.1 kg=30, 5.5 kg=130';
  return read.kits
    .map(
      ({ massKg, price }) =>
        `${amount(massKg)} kg ${price === undefined ? 'without a price' : `for ${amount(price, 6)}`}`,
    )
    .join('; ');
}
