import { MOST_VENTS, ventFields } from '../ticket/madeFields';
import { Box } from './Box';
import type { OpeningProps } from './openingProps';

/** Planned vents, one row each: where the hole is. The advised ones are put in by a press. */
export function VentRows(props: OpeningProps) {
  const { ticket, dispatch, now } = props;
  const { rows } = ticket.venting;
  const advised = now.answer?.filling.vents ?? [];
  return (
    <>
      {Array.from({ length: rows }, (_, row) => (
        <fieldset key={row} className="fields vent">
          <legend className="note">Planned vent {row + 1}, on the same axes</legend>
          {ventFields(row).map((name, axis) => (
            <Box key={name} of={props} name={name} label={`${'xyz'.charAt(axis)} of vent ${row + 1}`} />
          ))}
          <button type="button" className="act" onClick={() => dispatch({ do: 'dropVent', row })}>
            Take out vent {row + 1}
          </button>
        </fieldset>
      ))}
      <div className="chg">
        {advised.length > 0 && (
          <button
            type="button"
            className="act"
            onClick={() => dispatch({ do: 'addVents', atMm: advised.map(({ atMm }) => atMm) })}
          >
            {advised.length === 1 ? 'Add the advised vent' : `Add the ${advised.length} advised vents`}
          </button>
        )}
        {rows < MOST_VENTS && (
          <button
            type="button"
            className="act"
            onClick={() => dispatch({ do: 'addVents', atMm: [undefined] })}
          >
            Add a vent
          </button>
        )}
      </div>
    </>
  );
}
