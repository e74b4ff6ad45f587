import { volumeByGirth } from '../../yield';
import { Choices } from '../parts/Choices';
import { QuantityField } from '../parts/QuantityField';
import { bodyFields, MOST_BODIES } from '../ticket/sizingFields';
import type { BodyKind } from '../ticket/sizingState';
import { bodyRead, SIDES_OF } from '../ticket/wayReads';
import { BODY_ABOUT, BODY_LABELS, SIDE_LABELS, volumeText } from '../words/wayWords';
import type { AskProps } from './askProps';

type Props = Pick<AskProps, 'ticket' | 'dispatch'>;

/** The sculpt as a few simple bodies, each by its girths. */
export function BodyFields({ ticket, dispatch }: Props) {
  const { bodies } = ticket.sizing;
  return (
    <div className="way" role="group" aria-label="Bodies by the tape">
      {bodies.map((_, row) => (
        <Body key={row} {...{ ticket, dispatch, row }} />
      ))}
      <div className="chg">
        {bodies.length < MOST_BODIES && (
          <button type="button" className="act" onClick={() => dispatch({ do: 'addBody', kind: 'limb' })}>
            Add a body
          </button>
        )}
      </div>
    </div>
  );
}

function Body({ ticket, dispatch, row }: Props & { row: number }) {
  const { bodies } = ticket.sizing;
  const kind = bodies[row]!.kind;
  const names = bodyFields(row);
  return (
    <section className="body" aria-label={`Body ${row + 1}`}>
      <h3>Body {row + 1}</h3>
      <Choices<BodyKind>
        legend={`Shape of body ${row + 1}`}
        name={`body-${row}`}
        value={kind}
        options={(Object.keys(BODY_LABELS) as BodyKind[]).map((value) => ({
          value,
          label: BODY_LABELS[value],
        }))}
        onChoose={(chosen) => dispatch({ do: 'bodyKind', row, kind: chosen })}
      />
      <p className="note">{BODY_ABOUT[kind]}</p>
      <div className="fields">
        {SIDES_OF[kind].map((side) => (
          <QuantityField
            key={side}
            name={names[side]}
            label={
              <>
                {SIDE_LABELS[side]}
                <span className="sr"> of body {row + 1}</span>
              </>
            }
            {...{ ticket, dispatch }}
          />
        ))}
      </div>
      <p className="read">{holdsWords(ticket, row)}</p>
      {bodies.length > 1 && (
        <div className="chg">
          <button type="button" className="act" onClick={() => dispatch({ do: 'dropBody', row })}>
            Take body {row + 1} away
          </button>
        </div>
      )}
    </section>
  );
}

/** What one body holds; nothing while a side of it is blank. */
function holdsWords(ticket: Props['ticket'], row: number): string {
  const body = bodyRead(ticket, row);
  const volume = body === undefined ? undefined : volumeByGirth([body]);
  if (volume?.ok !== true) return '';
  const { value, low, high } = volumeText('tape', volume.value);
  return `Holds ${value} cm³ (${low} to ${high}).`;
}
