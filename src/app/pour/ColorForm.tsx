import { POUR_RULES } from '../../yield';
import type { BatchProps } from '../batch/batchProps';
import { SelectField } from '../parts/SelectField';
import { TextField } from '../parts/TextField';
import { colorFields } from '../ticket/madeFields';
import { DROPS_WEIGHED } from '../ticket/pourFields';
import { MOST_COLORS } from '../ticket/pourState';
import { PourField } from './PourField';

/** One row a color: its name, its share, and what the drops of this bottle weigh. */
export function ColorForm(props: BatchProps) {
  const { ticket, dispatch } = props;
  const { colors } = ticket.pouring;
  const { drop } = POUR_RULES;
  return (
    <>
      {colors.map(({ name, of }, row) => {
        const fields = colorFields(row);
        return (
          <fieldset key={row} className="fields">
            <legend className="sr">Color {row + 1}</legend>
            <TextField
              label={`Name of color ${row + 1}`}
              text={name}
              onText={(text) => dispatch({ do: 'color', row, color: { name: text } })}
            />
            <PourField of={props} name={fields.share} label={`Share of color ${row + 1}`} />
            <SelectField
              label={`Color ${row + 1} is a share of`}
              value={of === 'B' ? '' : of}
              blank="B"
              options={[{ value: 'mix', label: 'A and B together' }]}
              onChoose={(value) => dispatch({ do: 'color', row, color: { of: value === '' ? 'B' : 'mix' } })}
            />
            <PourField
              of={props}
              name={fields.drops}
              label={`${DROPS_WEIGHED} drops of color ${row + 1} weigh`}
              assumed={{ value: DROPS_WEIGHED * drop.value, unit: 'g', from: drop.from }}
            />
          </fieldset>
        );
      })}
      {colors.length < MOST_COLORS && (
        <div className="chg">
          <button
            type="button"
            className="act"
            onClick={() => dispatch({ do: 'color', row: colors.length, color: {} })}
          >
            Add a color
          </button>
        </div>
      )}
    </>
  );
}
