import { useState } from 'react';
import type { Estimate } from '../../estimate';
import { VOLUME_RULES, waterFill } from '../../yield';
import { fillBecause, fillCautions, volumeWithRange } from '../../words/volumeWayWords';
import { CautionList } from '../parts/CautionList';
import { Complaint } from '../parts/Complaint';
import { DayField } from '../parts/DayField';
import { Disclosure } from '../parts/Disclosure';
import { SelectField } from '../parts/SelectField';
import { moldWords } from '../shelf/moldWords';
import { localDay } from '../ticket/localDay';
import { ASSUMED_WATER } from '../words/assumedWater';
import type { BookProps } from './bookProps';
import { FormBox } from './FormBox';
import { LearnedTag } from './LearnedTag';
import { RowForm } from './RowForm';
import { useForm } from './useForm';

const SPECS = {
  water: { kind: 'mass', units: ['kg', 'g', 'lb', 'oz'] },
  waterTemp: { kind: 'temperature', units: ['C', 'F'] },
} as const;

/** Water that filled a mold, written down as a row. */
export function FillForm({ book, onDone }: Pick<BookProps, 'book'> & { onDone: () => void }) {
  const { pieces, rows, core } = book;
  const form = useForm(SPECS);
  const [id, setId] = useState(book.piece?.id ?? '');
  const [mold, setMold] = useState('');
  const [day, setDay] = useState(localDay(new Date()));
  const piece = pieces.find((one) => one.id === id);
  const molds = Object.keys(piece?.molds ?? {});
  const waterG = form.value('water');
  const waterTempC = form.value('waterTemp');
  const temp = waterTempC === undefined ? {} : { waterTempC };
  const filled =
    waterG === undefined || form.isUnread
      ? undefined
      : waterFill({ waterG, ...temp, ...(core.scale === undefined ? {} : { stepG: core.scale.stepG }) });
  return (
    <RowForm
      of="water fill"
      draft={{
        kind: 'fill',
        ...(day === '' ? {} : { day }),
        ...(piece === undefined ? {} : { piece: piece.id }),
        ...(mold === '' ? {} : { mold }),
        ...(waterG === undefined ? {} : { waterG }),
        ...temp,
      }}
      rows={rows}
      lacks={
        filled?.ok === true && piece !== undefined
          ? undefined
          : 'It takes the piece and the water that filled its mold.'
      }
      onDone={onDone}
    >
      <CautionList of="a water fill" cautions={fillCautions()} />
      <div className="fields">
        <SelectField
          label="Piece"
          value={id}
          blank="none chosen"
          options={pieces.map((one) => ({ value: one.id, label: one.name }))}
          onChoose={(chosen) => {
            setId(chosen);
            setMold('');
          }}
        />
        {piece !== undefined && molds.length > 1 && (
          <SelectField
            label="Mold"
            value={mold}
            blank="all of its molds"
            options={molds.map((one) => ({ value: one, label: moldWords(piece, one) }))}
            onChoose={setMold}
          />
        )}
        <DayField label="Day" day={day} onDay={setDay} />
      </div>
      <div className="fields">
        <FormBox form={form} name="water" label="Water that fills the mold to its rim" />
        <FormBox form={form} name="waterTemp" label="Temperature of the water" assumed={ASSUMED_WATER} />
      </div>
      {filled?.ok === true && (
        <Cavity
          cavityCm3={filled.value}
          waterG={waterG!}
          waterTempC={waterTempC ?? VOLUME_RULES.waterTemp.value}
        />
      )}
      {filled?.ok === false && <Complaint problem={filled.problem} />}
    </RowForm>
  );
}

function Cavity({
  cavityCm3,
  waterG,
  waterTempC,
}: {
  cavityCm3: Estimate;
  waterG: number;
  waterTempC: number;
}) {
  return (
    <>
      <p className="ans" role="status">
        <span>{volumeWithRange(cavityCm3, 4)}</span>
        <LearnedTag from="water-fill" />
      </p>
      <Disclosure>
        {fillBecause({ waterG, waterTempC, volumeCm3: cavityCm3.value }).map((text) => (
          <p key={text}>{text}</p>
        ))}
      </Disclosure>
    </>
  );
}
