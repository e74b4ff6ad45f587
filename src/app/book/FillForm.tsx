import { useState } from 'react';
import { isThere, newRow, type RowDraft } from '../../job/book';
import { withRow } from '../../job/book/changeRows';
import { VOLUME_RULES, waterFill } from '../../yield';
import { fillBecause, fillCautions, volumeWithRange } from '../../words/volumeWayWords';
import { CautionList } from '../parts/CautionList';
import { Complaint } from '../parts/Complaint';
import { Disclosure } from '../parts/Disclosure';
import { SelectField } from '../parts/SelectField';
import { moldWords } from '../shelf/moldWords';
import { localDay } from '../ticket/localDay';
import { ASSUMED_WATER } from '../words/assumedWater';
import { BookTrouble } from './BookTrouble';
import type { BookProps } from './bookProps';
import { DayField } from './DayField';
import { FormBox } from './FormBox';
import { FormVerbs } from './FormVerbs';
import { LearnedTag } from './LearnedTag';
import { useBookChange } from './useBookChange';
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
  const { change, isBusy, ...trouble } = useBookChange();
  const piece = pieces.find((one) => one.id === id);
  const molds = Object.keys(piece?.molds ?? {});
  const waterG = form.value('water');
  const waterTempC = form.value('waterTemp');
  const temp = waterTempC === undefined ? {} : { waterTempC };
  const filled =
    waterG === undefined || form.isUnread
      ? undefined
      : waterFill({ waterG, ...temp, ...(core.scale === undefined ? {} : { stepG: core.scale.stepG }) });
  const draft: RowDraft = {
    kind: 'fill',
    ...(day === '' ? {} : { day }),
    ...(piece === undefined ? {} : { piece: piece.id }),
    ...(mold === '' ? {} : { mold }),
    ...(waterG === undefined ? {} : { waterG }),
    ...temp,
  };
  const row = newRow(draft, rows);
  const isKnown = isThere(row, rows) !== undefined;
  return (
    <form
      className="cardform"
      aria-label="A water fill"
      onSubmit={(event) => {
        event.preventDefault();
        if (filled?.ok === true && piece !== undefined && !isKnown && !isBusy)
          change((now) => withRow(now, row), onDone);
      }}
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
        <DayField day={day} onDay={setDay} />
      </div>
      <div className="fields">
        <FormBox form={form} name="water" label="Water that fills the mold to its rim" />
        <FormBox form={form} name="waterTemp" label="Temperature of the water" assumed={ASSUMED_WATER} />
      </div>
      {filled?.ok === true && (
        <>
          <p className="ans" role="status">
            <span>{volumeWithRange(filled.value, 4)}</span>
            <LearnedTag from="water-fill" />
          </p>
          <Disclosure>
            {fillBecause({
              waterG: waterG!,
              waterTempC: waterTempC ?? VOLUME_RULES.waterTemp.value,
              volumeCm3: filled.value.value,
            }).map((text) => (
              <p key={text}>{text}</p>
            ))}
          </Disclosure>
        </>
      )}
      {filled?.ok === false && <Complaint problem={filled.problem} />}
      <FormVerbs
        lacks={
          isKnown
            ? 'That very fill is in the Book already.'
            : filled?.ok === true && piece !== undefined
              ? undefined
              : 'It takes the piece and the water that filled its mold.'
        }
        write="Write the water fill in the Book"
        onDone={onDone}
      />
      <BookTrouble {...trouble} />
    </form>
  );
}
