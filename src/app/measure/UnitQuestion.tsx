import { FILE_UNITS, type Along, type FileUnit, type Size } from '../../plan';
import { formatLength } from '../../units';
import { amount, percent } from '../../words/sentence';
import { Choices } from '../parts/Choices';
import { Complaint } from '../parts/Complaint';
import { Verdict } from '../parts/Figure';
import { Question } from '../parts/Question';
import { QuantityField } from '../parts/QuantityField';
import { SourceTag } from '../parts/SourceTag';
import { ALONG_NAMES } from '../words/unitNames';
import { UNIT_NAMES } from '../../words/unitNames';
import type { AskProps } from './askProps';

export function UnitQuestion({ ticket, dispatch, mark }: AskProps) {
  const size = ticket.size.answer?.size;
  const unknown =
    ticket.size.problem?.code === 'SCALE_UNKNOWN' || ticket.size.problem?.code === 'SCALE_UNREACHED';
  return (
    <Question
      no={3}
      mark={mark}
      ask="How big is one unit in the file?"
      busy={ticket.size.state === 'running'}
      answer={
        size === undefined ? (
          <Verdict>No volume yet: the unit is not known</Verdict>
        ) : (
          <ScaleAnswer size={size} />
        )
      }
    >
      {unknown && ticket.size.problem !== undefined && <Complaint problem={ticket.size.problem} />}
      {size !== undefined && <NearUnit size={size} onTake={(unit) => dispatch({ do: 'fileUnit', unit })} />}
      <Choices
        legend="How do you want to say it?"
        name="scale-way"
        value={ticket.scaleWay}
        options={[
          { value: 'tape', label: 'Tape one side' },
          { value: 'unit', label: 'Name the unit' },
        ]}
        onChoose={(way) => dispatch({ do: 'scaleWay', way })}
      />
      {ticket.scaleWay === 'tape' ? (
        <Tape ticket={ticket} dispatch={dispatch} />
      ) : (
        <Choices<FileUnit>
          legend="One unit of the file is"
          name="file-unit"
          value={ticket.fileUnit}
          options={(Object.keys(FILE_UNITS) as FileUnit[]).map((value) => ({
            value,
            label: UNIT_NAMES[value].one,
          }))}
          onChoose={(unit) => dispatch({ do: 'fileUnit', unit })}
        />
      )}
    </Question>
  );
}

function Tape({ ticket, dispatch }: Pick<AskProps, 'ticket' | 'dispatch'>) {
  return (
    <>
      <Choices<Along>
        legend="What did you tape?"
        name="along"
        value={ticket.along}
        options={(Object.keys(ALONG_NAMES) as Along[]).map((value) => ({
          value,
          label: ALONG_NAMES[value].word,
        }))}
        onChoose={(along) => dispatch({ do: 'along', along })}
      />
      <div className="fields">
        <QuantityField
          name="tape"
          label={ALONG_NAMES[ticket.along].label}
          ticket={ticket}
          dispatch={dispatch}
        />
      </div>
    </>
  );
}

function ScaleAnswer({ size: { scale, extentsMm } }: { size: Size }) {
  return (
    <>
      <Verdict>One unit is {amount(scale.mmPerUnit, 5)} mm</Verdict>
      <span className="rng">{formatLength(extentsMm[2])} tall</span>
      <SourceTag from={scale.from} />
    </>
  );
}

/** A tape that comes out within 1 % of a unit has most likely found it: said, and taken only when asked. */
function NearUnit({ size: { scale }, onTake }: { size: Size; onTake: (unit: FileUnit) => void }) {
  const unit = (Object.keys(FILE_UNITS) as FileUnit[]).find((name) => name === scale.fileUnit);
  if (scale.from !== 'taped' || unit === undefined) return null;
  const offShare = Math.max(1e-4, Math.abs(scale.mmPerUnit / FILE_UNITS[unit] - 1));
  return (
    <>
      <p className="why">
        One unit is {amount(scale.mmPerUnit, 5)} mm by your tape: {UNIT_NAMES[unit].one} within{' '}
        {percent(offShare)}.
      </p>
      <div className="chg">
        <button type="button" className="act" onClick={() => onTake(unit)}>
          Take it as {UNIT_NAMES[unit].many}
        </button>
      </div>
    </>
  );
}
