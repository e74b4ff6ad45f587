import { useId, useState } from 'react';
import { sayOnPage } from '../words/sayOnPage';
import { MarkShape } from '../parts/StatusMark';
import { readKitsText, type KitsRead } from '../ticket/kits';
import { amount } from '../../words/sentence';
import type { MoldProps } from './moldProps';

/** Kit sizes and prices as one line of text, read back below. */
export function KitsField({ ticket, dispatch, problemOf }: MoldProps) {
  const id = useId();
  const [left, setLeft] = useState(false);
  const { kits } = ticket.molding;
  const read = readKitsText(kits);
  const problem = problemOf('kits');
  const complaint = !read.ok
    ? left
      ? `“${read.text}” is no kit. Write each by its mass and, if you know it, its price: 1.1 kg=30, 5.5 kg=130.`
      : undefined
    : problem === undefined
      ? undefined
      : `${sayOnPage(problem).text} ${sayOnPage(problem).hint}`;
  return (
    <div className={complaint === undefined ? 'qty' : 'qty bad'}>
      <label htmlFor={id}>Kits it is sold in, with prices</label>
      <div className="in">
        <input
          id={id}
          className="w"
          type="text"
          autoComplete="off"
          spellCheck={false}
          value={kits}
          aria-invalid={complaint !== undefined}
          aria-describedby={`${id}r ${id}m`}
          onChange={(e) => dispatch({ do: 'kits', text: e.target.value })}
          onBlur={() => setLeft(true)}
          onFocus={() => setLeft(false)}
        />
      </div>
      <p className="read" id={`${id}r`}>
        {readback(read)}
      </p>
      <div className="msg" id={`${id}m`} role="status">
        {complaint !== undefined && (
          <p className="err">
            <MarkShape mark="look" />
            <span>{complaint}</span>
          </p>
        )}
      </div>
    </div>
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
