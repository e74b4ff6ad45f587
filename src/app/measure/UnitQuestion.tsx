import { FILE_UNITS, type Along, type FileUnit, type Size } from '../../plan';
import type { Source } from '../../estimate';
import { formatLength } from '../../units';
import type { Sized } from '../../worker/protocol';
import { amount, percent } from '../../words/sentence';
import { Choices } from '../parts/Choices';
import { Complaint } from '../parts/Complaint';
import { Verdict } from '../parts/Figure';
import { Question } from '../parts/Question';
import { QuantityField } from '../parts/QuantityField';
import { SourceTag } from '../parts/SourceTag';
import { Working } from '../parts/Working';
import { sizeNow, type Said } from '../ticket/now';
import { valueOf } from '../ticket/readField';
import type { Ticket } from '../ticket/state';
import { fieldWords } from '../words/fieldWords';
import { ALONG_NAMES, tapeLabel } from '../words/unitNames';
import { MEASURE_WORDS } from '../../words/scaleWords';
import { UNIT_NAMES } from '../../words/unitNames';
import type { AskProps } from './askProps';
import { isAboutScale } from './marks';
import type { PointHand } from './pointHand';
import { isOfKept, SecondDistance } from './SecondDistance';

export function UnitQuestion({ ticket, dispatch, mark, hand }: AskProps & { hand: PointHand }) {
  const now = sizeNow(ticket);
  const size = now.answer?.size;
  return (
    <Question
      no={3}
      mark={mark}
      ask="How big is one unit in the file?"
      busy={now.state === 'working'}
      answer={size === undefined ? <NoScale ticket={ticket} now={now} /> : <ScaleAnswer size={size} />}
    >
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
      {/* Below the box: what comes and goes with the answer must not push the box about while it is typed in. */}
      {now.problem !== undefined && isAboutScale(now.problem) && <Complaint problem={now.problem} />}
      <SecondDistance ticket={ticket} dispatch={dispatch} hand={hand} size={size} />
      {size !== undefined && <NearUnit size={size} onTake={(unit) => dispatch({ do: 'fileUnit', unit })} />}
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
          label={tapeLabel(ticket.along, isOfKept(ticket))}
          ticket={ticket}
          dispatch={dispatch}
        />
      </div>
    </>
  );
}

/** Why there is no scale to state; or what was said of it, where something else is in the way of a volume. */
function NoScale({ ticket, now }: { ticket: Ticket; now: Said<Sized> }) {
  if (now.state === 'working') return <Working what="the scale" />;
  if (now.state === 'unread' && (now.field === 'tape' || now.field === 'checkLength'))
    return <Verdict>{fieldWords(now.field)} is not read yet</Verdict>;
  if (now.problem?.code === 'SCALE_UNREACHED') return <Verdict>No scale fits what was taped</Verdict>;
  const said = scaleSaid(ticket);
  if (said === undefined || now.problem?.code === 'SCALE_UNKNOWN')
    return <Verdict>No volume yet: the unit is not known</Verdict>;
  return (
    <>
      <Verdict>{said.words}</Verdict>
      <SourceTag from={said.from} />
    </>
  );
}

function scaleSaid({
  scaleWay,
  fileUnit,
  along,
  fields,
}: Ticket): { words: string; from: Source } | undefined {
  if (scaleWay === 'unit')
    return fileUnit && { words: `One unit is ${amount(FILE_UNITS[fileUnit], 5)} mm`, from: 'given' };
  const lengthMm = valueOf('tape', fields.tape);
  if (lengthMm === undefined) return undefined;
  return { words: `${formatLength(lengthMm)} ${along} by the tape`, from: 'taped' };
}

function ScaleAnswer({ size: { scale, extentsMm } }: { size: Size }) {
  return (
    <>
      <Verdict>One unit is {amount(scale.mmPerUnit, 5)} mm</Verdict>
      <span className="rng">{formatLength(extentsMm[2])} tall</span>
      {scale.disagreements.length > 0 && <span className="rng">by the {MEASURE_WORDS[scale.by]}</span>}
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
