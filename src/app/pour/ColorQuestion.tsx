import { CHOICES } from '../../checks';
import { POUR_RULES } from '../../yield';
import { gramsText } from '../../units';
import { amount, counted } from '../../words/sentence';
import type { PourOnPage } from '../../worker/pour';
import type { BatchProps } from '../batch/batchProps';
import { Verdict } from '../parts/Figure';
import { SelectField } from '../parts/SelectField';
import { ColorForm } from './ColorForm';
import { PartQuestion } from './PartQuestion';
import { CautionBeside } from './PourCautions';

/** A recipe by mass, scaled to the batch; drops are a convenience. The kind of color is asked in Mold too: one word of the ticket. */
export function ColorQuestion(props: BatchProps) {
  const { ticket, dispatch, pour } = props;
  const color = pour.answer?.refused.colors === undefined ? pour.answer?.color : undefined;
  return (
    <PartQuestion
      of={props}
      part="colors"
      group="colors"
      ask="Which color?"
      what="the color"
      answer={(ready) => <Verdict>{colorWords(ready)}</Verdict>}
      sum="colors"
      because={() =>
        'Kept by mass, so a larger batch is the same color. It goes into B, on top of the grams; A and B stay as they are.'
      }
    >
      {color !== undefined && <ColorTable color={color} several={pour.answer?.cups.cups.length ?? 1} />}
      <ColorForm {...props} />
      <div className="fields">
        <SelectField
          label="Kind of color"
          value={ticket.molding.facts.pigmentKind ?? ''}
          blank="not said"
          options={CHOICES.pigmentKind.map((kind) => ({ value: kind, label: kind }))}
          onChoose={(value) => dispatch({ do: 'fact', fact: 'pigmentKind', value })}
        />
      </div>
      <CautionBeside of="color" />
    </PartQuestion>
  );
}

const colorWords = ({ color }: PourOnPage): string =>
  color === undefined
    ? 'No color'
    : `${counted(color.items.length, 'color')}, ${amount(color.totalG, 3)} g in all`;

/** Color is weighed on a finer scale than the batch: to 0.01 g. */
const COLOR_STEP_G = 0.01;

function ColorTable({ color, several }: { color: NonNullable<PourOnPage['color']>; several: number }) {
  return (
    <table className="fold" role="table">
      <caption>
        For the whole batch{several > 1 && `; a cup takes its share of the B, one of ${several}`}. Drops by
        the mass you weighed, or by {amount(POUR_RULES.drop.value)} g each where you did not (
        {POUR_RULES.drop.from}).
      </caption>
      <thead role="rowgroup">
        <tr role="row">
          <th role="columnheader" scope="col">
            Color
          </th>
          {['Grams', 'Drops', 'A drop'].map((name) => (
            <th key={name} role="columnheader" scope="col" className="num">
              {name}
            </th>
          ))}
        </tr>
      </thead>
      <tbody role="rowgroup">
        {color.items.map(({ name, massG, drops, dropG, dropFrom }) => (
          <tr key={name} role="row">
            <th role="rowheader" scope="row">
              {name}
            </th>
            <td role="cell" className="num" data-l="Grams">
              {gramsText(massG, COLOR_STEP_G)}
            </td>
            <td role="cell" className="num" data-l="Drops">
              {amount(drops, 6)}
            </td>
            <td role="cell" className="num" data-l="A drop">
              <span className={dropFrom === 'assumed' ? 'assumed' : undefined}>
                {amount(dropG, 3)} g, {dropFrom}
              </span>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
