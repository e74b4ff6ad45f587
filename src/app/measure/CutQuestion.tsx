import { useState } from 'react';
import { formatLength } from '../../units';
import { amount } from '../../words/sentence';
import type { Sized } from '../../worker/protocol';
import { Choices } from '../parts/Choices';
import { Complaint } from '../parts/Complaint';
import { Verdict } from '../parts/Figure';
import { Question } from '../parts/Question';
import { QuantityField } from '../parts/QuantityField';
import { Working } from '../parts/Working';
import { sayOnPage } from '../words/sayOnPage';
import { sizeNow, type Said } from '../ticket/now';
import { readField } from '../ticket/readField';
import type { AskProps } from './askProps';
import { CutSlider } from './CutSlider';
import { isAboutScale } from './marks';

export function CutQuestion({ ticket, dispatch, mark }: AskProps) {
  const { cut, fields } = ticket;
  const size = sizeNow(ticket);
  const found = size.answer?.size.findings.find(({ code }) => code === 'FLOOR_FOUND' || code === 'CUT_AWAY');
  const tallMm = useTallMm(ticket);
  const typed = readField('cutHeight', fields.cutHeight).kind === 'one';
  return (
    <Question
      no={4}
      mark={mark}
      ask="Is anything in the scan that is not the piece?"
      busy={size.state === 'working'}
      answer={
        cut !== undefined && size.state === 'working' ? (
          <Working what="what the cut takes" />
        ) : (
          <Verdict>{cut === undefined ? 'Nothing is cut off' : verdictOf(size)}</Verdict>
        )
      }
      because={
        <>
          {found === undefined
            ? 'A table or a stand in the scan would be poured for. A level plane takes it off.'
            : `${sayOnPage(found).text} ${sayOnPage(found).hint}`}{' '}
          {whereWords(size.answer)}
        </>
      }
      change={<CutVerbs {...{ ticket, dispatch, typed }} />}
    >
      {cut?.by === 'height' && size.state === 'unread' && size.field === 'cutHeight' && (
        <p className="note">Until the height of the cut can be read there is neither a volume nor grams.</p>
      )}
      {size.problem?.code === 'CUT_EMPTY' && <Complaint problem={size.problem} />}
      <div className="fields">
        <QuantityField
          name="cutHeight"
          label="Plane above the lowest point"
          ticket={ticket}
          dispatch={dispatch}
        />
        {tallMm !== undefined && <CutSlider tallMm={tallMm} fields={fields} dispatch={dispatch} />}
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

/** Height of the whole scan. It bounds the slider also while a cut leaves nothing, or the size is worked out. */
function useTallMm({ scan, size }: AskProps['ticket']): number | undefined {
  const tallMm = (size.answer ?? size.before)?.whole.tallMm;
  const [held, setHeld] = useState({ no: scan?.no, tallMm });
  if (tallMm !== undefined && (held.tallMm !== tallMm || held.no !== scan?.no))
    setHeld({ no: scan?.no, tallMm });
  return tallMm ?? (held.no === scan?.no ? held.tallMm : undefined);
}

function CutVerbs({ ticket, dispatch, typed }: Pick<AskProps, 'ticket' | 'dispatch'> & { typed: boolean }) {
  const { cut } = ticket;
  const { answer, problem } = sizeNow(ticket);
  const floor = answer?.floor;
  const atUnits = floor?.atUnits ?? problem?.values.floorUnits;
  return (
    <>
      {typeof atUnits === 'number' && cut === undefined && (
        <button
          type="button"
          className="act"
          onClick={() => dispatch({ do: 'cut', cut: { by: 'floor', atUnits } })}
        >
          Cut the table off{floor === undefined ? '' : ` at z = ${formatLength(floor.topMm)}`}
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

function verdictOf({ state, answer, problem }: Said<Sized>): string {
  if (state === 'cancelled') return 'Cut; measuring was cancelled';
  if (problem !== undefined && !isAboutScale(problem)) return 'Cut; what is left gives no volume';
  if (state === 'unread') return 'The cut waits for its height';
  if (answer === undefined) return 'The cut waits for the unit';
  const effectCm3 = answer.size.findings.find(({ code }) => code === 'CUT_AWAY')?.values.effectCm3;
  if (typeof effectCm3 !== 'number') return 'Cut; what went could not be measured';
  const isNothing = Math.abs(effectCm3) < NOTHING_SHARE * answer.size.volumeCm3.value;
  return isNothing ? 'The plane misses the piece' : `${amount(Math.abs(effectCm3))} cm³ cut off`;
}

/** As the engine has it: a cut that takes less than this share took nothing. */
const NOTHING_SHARE = 1e-6;

function whereWords(sized: Sized | undefined): string {
  if (sized?.cut === undefined) return '';
  const { heightMm, keep } = sized.cut;
  return `The plane lies ${formatLength(heightMm)} above the lowest point of the scan; what is ${keep} it stays.`;
}
