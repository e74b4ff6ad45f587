import type { Problem } from '../../problem';
import { formatLength } from '../../units';
import { amount } from '../../words/sentence';
import type { Sized } from '../../worker/protocol';
import { Choices } from '../parts/Choices';
import { Complaint } from '../parts/Complaint';
import { Verdict } from '../parts/Figure';
import { Question } from '../parts/Question';
import { QuantityField } from '../parts/QuantityField';
import { sayOnPage } from '../words/sayOnPage';
import { readField } from '../ticket/readField';
import type { AskProps } from './askProps';

export function CutQuestion({ ticket, dispatch, mark }: AskProps) {
  const { size, cut, fields } = ticket;
  const found = size.answer?.size.findings.find(({ code }) => code === 'FLOOR_FOUND');
  const typed = readField('cutHeight', fields.cutHeight).kind === 'one';
  return (
    <Question
      no={4}
      mark={mark}
      ask="Is anything in the scan that is not the piece?"
      busy={size.state === 'running'}
      answer={<Verdict>{verdictOf(cut !== undefined, size.answer)}</Verdict>}
      because={
        found === undefined ? whereWords(size.answer) : `${sayOnPage(found).text} ${sayOnPage(found).hint}`
      }
      change={<CutVerbs {...{ ticket, dispatch, typed }} />}
    >
      {size.problem?.code === 'CUT_EMPTY' && <Complaint problem={size.problem} />}
      <div className="fields">
        <QuantityField
          name="cutHeight"
          label="Plane above the lowest point"
          ticket={ticket}
          dispatch={dispatch}
        />
        <Choices
          legend="Keep"
          name="keep"
          value={ticket.keep}
          options={[
            { value: 'above', label: 'what is above' },
            { value: 'below', label: 'what is below' },
          ]}
          onChoose={(keep) => dispatch({ do: 'keep', keep })}
        />
      </div>
    </Question>
  );
}

function CutVerbs({
  ticket: { size, cut },
  dispatch,
  typed,
}: Pick<AskProps, 'ticket' | 'dispatch'> & { typed: boolean }) {
  const floor = size.answer?.floor;
  return (
    <>
      {floor !== undefined && cut === undefined && (
        <button
          type="button"
          className="act"
          onClick={() => dispatch({ do: 'cut', cut: { by: 'floor', atUnits: floor.atUnits } })}
        >
          Cut the table off at z = {formatLength(floor.topMm)}
        </button>
      )}
      {typed && cut?.by !== 'height' && (
        <button type="button" className="act" onClick={() => dispatch({ do: 'cut', cut: { by: 'height' } })}>
          Cut at the typed height
        </button>
      )}
      {cut !== undefined && (
        <button type="button" className="act" onClick={() => dispatch({ do: 'cut', cut: undefined })}>
          Remove the cut
        </button>
      )}
    </>
  );
}

function verdictOf(wished: boolean, sized: Sized | undefined): string {
  if (!wished) return 'Nothing is cut off';
  if (sized?.cut === undefined) return 'The cut waits for its height and the unit';
  const went = removedCm3(sized.size.findings);
  return went === undefined ? 'Cut; what went could not be measured' : `${amount(went)} cm³ cut off`;
}

function removedCm3(findings: readonly Problem[]): number | undefined {
  const effectCm3 = findings.find(({ code }) => code === 'CUT_AWAY')?.values.effectCm3;
  return typeof effectCm3 === 'number' ? Math.abs(effectCm3) : undefined;
}

function whereWords(sized: Sized | undefined): string {
  if (sized?.cut === undefined)
    return 'A table or a stand in the scan would be poured for. A level plane takes it off.';
  const { heightMm, keep } = sized.cut;
  return `The plane lies ${formatLength(heightMm)} above the lowest point of the scan; what is ${keep} it stays.`;
}
