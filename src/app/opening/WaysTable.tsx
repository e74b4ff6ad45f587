import { degreesBetween } from '../../geometry';
import type { LevelFill, OpeningPlan } from '../../plan';
import { attitudeRows, type AttitudeRow } from '../../words/openingAttitudes';
import { amount } from '../../words/sentence';
import { Fault } from '../parts/Fault';
import { bestUpNow, searchKeyOf } from '../ticket/now';
import { airWords, cm3, LOWER_BOUND } from '../words/openingPhrases';
import { upNumbers, upWords } from '../words/openingWays';
import { Complaint } from '../parts/Complaint';
import { OwnBar } from './OwnBar';
import type { OpeningProps } from './openingProps';

/** Today's way up beside the best ones; looked for when asked, since that takes seconds. */
export function Ways(props: OpeningProps & { plan: OpeningPlan; onCancel: () => void }) {
  const { ticket, dispatch, plan, onCancel } = props;
  const now = bestUpNow(ticket);
  const key = searchKeyOf(ticket);
  const search = (): void => {
    if (key !== undefined) dispatch({ do: 'searchUp', on: key });
  };
  if (now.state === 'working')
    return (
      <OwnBar
        what="Looking for the best way up"
        share={ticket.bestUp.share}
        stop="the search"
        onCancel={onCancel}
      />
    );
  if (now.answer !== undefined)
    return <WaysTable {...props} plan={{ ...plan, best: othersThan(plan, now.answer) }} />;
  return (
    <>
      {now.problem !== undefined && <Complaint problem={now.problem} />}
      {now.message !== undefined && <Fault message={now.message} onAgain={search} />}
      {now.state === 'cancelled' && <p className="note">The search was cancelled.</p>}
      <div className="chg">
        <button type="button" className="act" onClick={search}>
          Look for the best way up
        </button>
      </div>
    </>
  );
}

/** Nearer to today's than this is today's, degrees. Chosen here. */
const SAME_DEGREES = 1;

/** So many stand beside today's. */
const TOLD = 3;

const othersThan = ({ filling }: OpeningPlan, found: readonly LevelFill[]): LevelFill[] =>
  found.filter(({ up }) => degreesBetween(up, filling.up) > SAME_DEGREES).slice(0, TOLD);

const HEADS = [
  'Air that stays',
  'Pockets',
  'Vents',
  'Air left with them',
  'Holds before it runs over',
] as const;

function WaysTable({ plan, dispatch }: OpeningProps & { plan: OpeningPlan }) {
  const rows = attitudeRows(plan) ?? [];
  const liquid = plan.opening.liquidCm3;
  return (
    <table className="fold ways" role="table">
      <caption>
        {LOWER_BOUND} The others are without the vents that are planned for today’s way up.
        {liquid !== undefined && ` ${cm3(liquid)} of liquid are poured.`}
      </caption>
      <thead role="rowgroup">
        <tr role="row">
          <th role="columnheader" scope="col">
            Up when poured
          </th>
          {HEADS.map((head) => (
            <th key={head} role="columnheader" scope="col" className="num">
              {head}
            </th>
          ))}
          <th role="columnheader" scope="col">
            Change
          </th>
        </tr>
      </thead>
      <tbody role="rowgroup">
        {rows.map((row, i) => (
          <Way key={i} row={row} onTake={() => dispatch({ do: 'takeUp', up: row.fill.up })} />
        ))}
      </tbody>
    </table>
  );
}

function Way({ row: { fill, isToday, isBest }, onTake }: { row: AttitudeRow; onTake: () => void }) {
  const cells = [
    airWords(fill),
    amount(fill.traps.length),
    amount(fill.vents.length),
    fill.leftCm3 === 0 ? 'none' : cm3(fill.leftCm3),
    cm3(fill.holdCm3),
  ];
  return (
    <tr role="row">
      <th role="rowheader" scope="row">
        {isToday ? 'Today: ' : ''}
        {upWords(fill.up)}
        {isBest ? ' (best)' : ''}
        <span className="where">x, y, z: {upNumbers(fill.up)}</span>
      </th>
      {HEADS.map((head, i) => (
        <td key={head} role="cell" className="num" data-l={head}>
          {cells[i]}
        </td>
      ))}
      <td role="cell" className="show" data-l="Change">
        {isToday ? (
          'in use'
        ) : (
          <button type="button" className="act" onClick={onTake}>
            Take this way up<span className="sr">: {upWords(fill.up)}</span>
          </button>
        )}
      </td>
    </tr>
  );
}
