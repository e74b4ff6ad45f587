import { SAME_SCALE_SHARE, type Along, type Scale, type Size } from '../../plan';
import { agreeText, MEASURE_WORDS } from '../../words/scaleWords';
import { Choices } from '../parts/Choices';
import { QuantityField } from '../parts/QuantityField';
import { StatusMark } from '../parts/StatusMark';
import { secondByOf } from '../ticket/scaleWishes';
import { valueIn } from '../ticket/readField';
import type { Ticket } from '../ticket/state';
import { sayOnPage } from '../words/sayOnPage';
import { ALONG_NAMES, SECOND_NAMES, tapeLabel } from '../words/unitNames';
import type { AskProps } from './askProps';
import { PickedPoints } from './PickedPoints';
import type { PointHand } from './pointHand';

type SecondProps = Pick<AskProps, 'ticket' | 'dispatch'> & { hand: PointHand; size: Size | undefined };

/** A distance of another kind, held against the first: it warns, and sets the scale only when it is told to. */
export function SecondDistance({ ticket, dispatch, hand, size }: SecondProps) {
  if (!isFirstSaid(ticket) && ticket.measuring.secondBy === undefined) return null;
  const by = secondByOf(ticket);
  return (
    <div className="second">
      <Choices
        legend="Check it with a second distance"
        name="second"
        value={by ?? 'none'}
        options={[
          { value: 'none' as const, label: 'not checked' },
          ...waysOf(ticket, hand.canPoint).map((value) => ({ value, label: SECOND_NAMES[value] })),
        ]}
        onChoose={(value) => dispatch({ do: 'second', by: value === 'none' ? undefined : value })}
      />
      {by === 'points' && <PickedPoints points={ticket.measuring.points} hand={hand} />}
      {by !== undefined && (
        <div className="fields">
          <QuantityField
            name="checkLength"
            label={by === 'points' ? 'Taped between points 1 and 2' : tapeLabel(by, isOfKept(ticket))}
            ticket={ticket}
            dispatch={dispatch}
          />
        </div>
      )}
      {size !== undefined && by !== undefined && <Agreement {...{ ticket, dispatch, size }} />}
    </div>
  );
}

/** With a cut on, or a piece left out, the tape goes by what is kept: that is what lies on the bench. */
export const isOfKept = ({ cut, measuring }: Ticket): boolean =>
  cut !== undefined || measuring.pieces.leaveOut.length > 0;

const isFirstSaid = ({ scaleWay, fileUnit, fields, scan }: Ticket): boolean =>
  scan?.opened.ownUnit !== undefined ||
  (scaleWay === 'unit' ? fileUnit !== undefined : valueIn(fields, 'tape') !== undefined);

/** Only the ways that work: without a picture there is nothing to point at. */
function waysOf({ scaleWay, along, measuring }: Ticket, canPoint: boolean): (Along | 'points')[] {
  const sides = (Object.keys(ALONG_NAMES) as Along[]).filter((side) => scaleWay === 'unit' || side !== along);
  return canPoint || measuring.points.length > 0 ? [...sides, 'points'] : sides;
}

function Agreement({
  ticket,
  dispatch,
  size: { scale, findings },
}: Pick<AskProps, 'ticket' | 'dispatch'> & { size: Size }) {
  const told = findings.find(
    ({ code, values }) =>
      code === 'UNITS_SUSPECT' && (values.part === 'disagree' || values.part === 'unreached'),
  );
  const checked = scale.disagreements[0];
  const { isSecondScale } = ticket.measuring;
  if (checked === undefined && told === undefined && !isSecondScale) return null;
  return (
    <>
      {(told !== undefined || checked !== undefined) && (
        <div className="agree" role="status">
          <StatusMark mark={told?.status ?? 'fine'} />
          <p>{told === undefined ? agreeWords(scale) : `${sayOnPage(told).text} ${sayOnPage(told).hint}`}</p>
        </div>
      )}
      <div className="chg">
        {isSecondScale ? (
          <button type="button" className="act" onClick={() => dispatch({ do: 'scaleFrom', which: 'first' })}>
            Use the {checked === undefined ? 'first distance' : MEASURE_WORDS[checked.by]} instead
          </button>
        ) : (
          checked !== undefined && (
            <button
              type="button"
              className="act"
              onClick={() => dispatch({ do: 'scaleFrom', which: 'second' })}
            >
              Use this distance instead
            </button>
          )
        )}
      </div>
    </>
  );
}

function agreeWords({ by, disagreements: [checked] }: Scale): string {
  const percent = `${100 * SAME_SCALE_SHARE} %`;
  if (checked === undefined) return '';
  return `The ${MEASURE_WORDS[checked.by]} agrees with the ${MEASURE_WORDS[by]} ${agreeText(checked.share)}. Over ${percent} it would say Look.`;
}
