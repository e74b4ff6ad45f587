import { formatArea, formatMass, numberText } from '../../units';
import { MOLDMAKING_RULES } from '../../yield';
import type { Mold } from '../../plan';
import { FINISH_NOTES } from '../../words/finishNotes';
import { amount, counted } from '../../words/sentence';
import { Disclosure } from '../parts/Disclosure';
import { Verdict } from '../parts/Figure';
import { FigureTable, type FigureRow } from '../parts/FigureTable';
import { Question } from '../parts/Question';
import { QuantityField } from '../parts/QuantityField';
import { Working } from '../parts/Working';
import type { OwnField } from '../ticket/fields';
import { MaterialCautions } from './MaterialCautions';
import type { MoldProps } from './moldProps';

const FIELDS: readonly [name: OwnField, label: string, assumed?: string][] = [
  ['paintCoverage', 'Paint covers, in one coat'],
  ['paintCoats', 'Coats of paint', '1'],
  ['sealCoverage', 'Sealer covers, in one coat'],
  ['sealCoats', 'Coats of sealer', '1'],
  ['bondFace', 'Face to bond, one side'],
  ['openShare', 'Surface without a closed skin'],
];

/** Paint, sealer and glue, by the user's own figures: there is no other basis for them. */
export function FinishQuestion(props: MoldProps) {
  const { mark, now } = props;
  const finishing = now.answer?.finishing;
  const { adhesive, texture } = MOLDMAKING_RULES;
  const rows = finishing === undefined ? [] : finishRows(finishing);
  return (
    <Question
      no={6}
      mark={mark}
      ask="What does the casting take to finish?"
      busy={now.state === 'working'}
      answer={
        finishing !== undefined ? (
          <Verdict>
            {formatArea(finishing.coatedCm2)} to coat
            {rows.length === 0
              ? ''
              : `: ${rows.map(({ name, value }) => `${name.toLowerCase()} ${value}`).join(', ')}`}
          </Verdict>
        ) : now.state === 'working' ? (
          <Working what="the surface" />
        ) : (
          <Verdict>No surface yet</Verdict>
        )
      }
      because={
        finishing === undefined
          ? undefined
          : `${formatArea(finishing.surfaceCm2)} of the scan, times ${amount(finishing.textureFactor)} for the texture that a scan smooths.`
      }
    >
      {rows.length > 0 && <FigureTable rows={rows} caption="By your own coverage, without loss on top." />}
      <div className="more">
        <Disclosure title="Paint, seal and bond">
          <div className="fields">
            {FIELDS.map(([name, label, assumed]) => (
              <Box
                key={name}
                {...props}
                name={name}
                label={label}
                {...(assumed === undefined
                  ? {}
                  : { assumed: { text: assumed, shown: assumed, basis: 'one coat' } })}
              />
            ))}
            <Box
              {...props}
              name="bondTakes"
              label="Glue a face takes"
              assumed={{
                text: numberText(adhesive.value),
                shown: `${numberText(adhesive.value)} g/m²`,
                basis: adhesive.from,
              }}
            />
            <Box
              {...props}
              name="texture"
              label="Texture factor"
              assumed={{
                text: numberText(texture.value),
                shown: numberText(texture.value),
                basis: texture.from,
              }}
            />
          </div>
          <h4>What the trade knows</h4>
          <ul>
            {FINISH_NOTES.map(({ key, when, what, from }) => (
              <li key={key}>
                <b>{when}:</b> {what} <small className="where">{from}</small>
              </li>
            ))}
          </ul>
        </Disclosure>
      </div>
      <MaterialCautions of="finishing" places={['finish']} keys={['solvents']} />
    </Question>
  );
}

function Box({
  name,
  label,
  assumed,
  ticket,
  dispatch,
  problemOf,
}: MoldProps & { name: OwnField; label: string; assumed?: { text: string; shown: string; basis: string } }) {
  return (
    <QuantityField
      name={name}
      label={label}
      ticket={ticket}
      dispatch={dispatch}
      problem={problemOf(name)}
      {...(assumed === undefined ? {} : { assumed })}
    />
  );
}

function finishRows({ paint, seal, bondG, poreFillG }: Mold['finishing']): FigureRow[] {
  return [
    ...(paint === undefined
      ? []
      : [{ name: 'Paint', value: `${amount(paint.amount, 2)} L`, where: counted(paint.coats, 'coat') }]),
    ...(seal === undefined
      ? []
      : [{ name: 'Sealer', value: `${amount(seal.amount, 2)} kg`, where: counted(seal.coats, 'coat') }]),
    ...(bondG === undefined
      ? []
      : [
          {
            name: 'Glue, both faces',
            value: formatMass(bondG.value),
            where:
              bondG.low === bondG.high ? undefined : `${formatMass(bondG.low)} to ${formatMass(bondG.high)}`,
          },
        ]),
    ...(poreFillG === undefined
      ? []
      : [
          {
            name: 'Sealer that open cells swallow',
            value: formatMass(poreFillG),
            where: 'about the depth of a cell; a thin sealer goes deeper',
          },
        ]),
  ];
}
