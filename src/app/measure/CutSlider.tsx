import type { Dispatch } from 'react';
import { formatLength, MM_PER_IN, numberText } from '../../units';
import { oneTwoFive } from '../../viewer/oneTwoFive';
import { valueOf } from '../ticket/readField';
import type { Action } from '../ticket/reducer';
import type { Ticket } from '../ticket/state';

/** Steps over the height of the scan: a press of an arrow key is one. Chosen here. */
const STEPS = 500;

/** The height of the plane as a slider beside its box: it types into the box, in the unit that stands there. */
export function CutSlider({
  tallMm,
  fields,
  dispatch,
}: {
  tallMm: number;
  fields: Ticket['fields'];
  dispatch: Dispatch<Action>;
}) {
  const { unit } = fields.cutHeight;
  const heightMm = valueOf('cutHeight', fields.cutHeight);
  const perUnit = unit === 'in' ? MM_PER_IN : 1;
  const step = oneTwoFive(tallMm / perUnit / STEPS);
  return (
    <div className="slide">
      <input
        type="range"
        aria-label="Slide the plane up or down"
        aria-valuetext={heightMm === undefined ? 'no plane yet' : formatLength(heightMm)}
        min={0}
        max={Math.floor(tallMm / perUnit / step) * step}
        step={step}
        value={heightMm === undefined ? 0 : heightMm / perUnit}
        onChange={(event) =>
          dispatch({ do: 'type', field: 'cutHeight', text: numberText(Number(event.target.value)) })
        }
      />
      <p className="read">From 0 to {formatLength(tallMm)}, the height of the whole scan.</p>
    </div>
  );
}
