import type { Casting } from '../../plan';
import { formatTemperature, numberText } from '../../units';
import { MOLDMAKING_RULES } from '../../yield';
import { amount, percent } from '../../words/sentence';
import { assumptionLine } from '../../words/assumptionWords';
import { Complaint } from '../parts/Complaint';
import { Disclosure } from '../parts/Disclosure';
import { Figure, Verdict } from '../parts/Figure';
import { FindingsTable } from '../parts/FindingsTable';
import { PourBySwitch } from '../parts/PourBySwitch';
import { Question } from '../parts/Question';
import { QuantityField } from '../parts/QuantityField';
import { SourceTag } from '../parts/SourceTag';
import { Working } from '../parts/Working';
import { castingNow } from '../ticket/now';
import { rangeText } from '../../words/rangeText';
import { CoreFields } from './CoreFields';
import { fieldOfMold } from './fieldProblem';
import { MaterialCautions } from './MaterialCautions';
import type { MoldProps } from './moldProps';

/** Rubber shrinks as it cures and grows as it is warmed: the foam fills what is then left. */
export function CavityQuestion({ ticket, dispatch, mark, problemOf, bench }: MoldProps) {
  const now = castingNow(ticket);
  const casting = now.answer;
  const { problem } = now;
  const field = { ticket, dispatch };
  const roomText = `${numberText(MOLDMAKING_RULES.roomTemp.value)} C`;
  return (
    <Question
      no={5}
      mark={mark}
      ask="How large is the cavity when we pour?"
      busy={now.state === 'working'}
      answer={
        casting !== undefined ? (
          <CavityAnswer casting={casting} />
        ) : now.state === 'working' ? (
          <Working what="the cavity" tall />
        ) : (
          <Verdict>No cavity yet</Verdict>
        )
      }
      because={casting === undefined ? undefined : shrinkWords(casting)}
      change={
        casting === undefined ? undefined : (
          <Disclosure>
            <CavitySum casting={casting} />
          </Disclosure>
        )
      }
    >
      {problem !== undefined && fieldOfMold(ticket, problem) === undefined && <Complaint problem={problem} />}
      <div className="fields">
        <QuantityField
          name="sheetShrink"
          label="Linear shrink, data sheet"
          {...field}
          problem={problemOf('sheetShrink')}
        />
        <QuantityField
          name="measuredShrink"
          label="Linear shrink, measured on your mold"
          {...field}
          problem={problemOf('measuredShrink')}
        />
        <QuantityField
          name="castingTemp"
          label="Mold temperature when foam is poured"
          {...field}
          problem={problemOf('castingTemp')}
          assumed={{
            text: casting === undefined ? roomText : `${numberText(casting.roomTempC)} C`,
            shown: 'as warm as the room',
            basis: 'the mold is not warmed',
          }}
        />
      </div>
      <PourBySwitch ticket={ticket} dispatch={dispatch} name="pour-by-mold" />
      <CoreFields {...{ ticket, dispatch, problemOf, bench }} />
      <MaterialCautions
        of="warm mold"
        places={['cavity']}
        keys={ticket.fields.castingTemp.text.trim() === '' ? [] : ['hot-mold']}
      />
      {casting !== undefined && casting.findings.length > 0 && (
        <FindingsTable findings={casting.findings} caption="Checks of the cavity" />
      )}
    </Question>
  );
}

function CavityAnswer({ casting: { cavityCm3, shrink, assumptions } }: { casting: Casting }) {
  const text = rangeText(cavityCm3);
  const isAssumed = shrink.from !== 'assumed' && assumptions.length > 0;
  return (
    <>
      <Figure value={text.value} unit="cm³" />
      <span className="rng">
        {text.low} to {text.high} cm³
      </span>
      <SourceTag from={cavityCm3.from} />
      <SourceTag from={shrink.from} />
      {isAssumed && <SourceTag from="assumed" />}
    </>
  );
}

function shrinkWords({ shrink, castingTempC, volumeShare }: Casting): string {
  const change = volumeShare.value - 1;
  const size = percent(Math.abs(change));
  const temperature = formatTemperature(castingTempC);
  return `Shrunk by ${percent(shrink.value)} in length and poured at ${temperature}, the cavity is ${
    Math.abs(change) < 1e-5
      ? 'as large as the sculpt'
      : `${size} ${change < 0 ? 'smaller' : 'larger'} than the sculpt`
  }.`;
}

function CavitySum({ casting }: { casting: Casting }) {
  const { shrink, volumeShare, castingTempC, roomTempC, assumptions } = casting;
  return (
    <>
      <p>Cavity = sculpt × (1 − shrink)³ × (1 + growth × (casting − room))³</p>
      <p>
        Shrink {percent(shrink.value)} ({percent(shrink.low)} to {percent(shrink.high)}) in length;{' '}
        {amount(castingTempC)} °C against {amount(roomTempC)} °C; volume × {amount(volumeShare.value, 5)} (
        {amount(volumeShare.low, 5)} to {amount(volumeShare.high, 5)}).
      </p>
      <p>For a mold that is free to shrink and grow; a skin keyed into a jacket does so less.</p>
      {assumptions.length > 0 && (
        <ul>
          {assumptions.map((assumption) => (
            <li key={assumption.name}>
              <span className="assumed">{assumptionLine(assumption)}</span>
            </li>
          ))}
        </ul>
      )}
    </>
  );
}
