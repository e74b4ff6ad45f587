import { useState } from 'react';
import { isThere, newRow, type RowDraft } from '../../job/book';
import { withRow } from '../../job/book/changeRows';
import { formatDensity, formatVolume } from '../../units';
import { VOLUME_RULES } from '../../yield';
import { cupBecause } from '../../words/volumeWayWords';
import { Complaint } from '../parts/Complaint';
import { Disclosure } from '../parts/Disclosure';
import { SelectField } from '../parts/SelectField';
import { KeptText } from '../shelf/KeptText';
import { localDay } from '../ticket/localDay';
import { ASSUMED_WATER } from '../words/assumedWater';
import { BookTrouble } from './BookTrouble';
import type { BookProps } from './bookProps';
import { cupSum } from './cupSums';
import { DayField } from './DayField';
import { FormBox } from './FormBox';
import { FormVerbs } from './FormVerbs';
import { LearnedTag } from './LearnedTag';
import { useBookChange } from './useBookChange';
import { useForm } from './useForm';

const GRAMS = { kind: 'mass', units: ['g', 'oz'] } as const;
const WARMTH = { kind: 'temperature', units: ['C', 'F'] } as const;
const SPECS = {
  water: GRAMS,
  waterTemp: WARMTH,
  room: WARMTH,
  foam1: GRAMS,
  foam2: GRAMS,
  foam3: GRAMS,
  foam4: GRAMS,
  foam5: GRAMS,
} as const;
const FOAMS = ['foam1', 'foam2', 'foam3', 'foam4', 'foam5'] as const;

/** Cups of one test, written down as a row; what they come to is worked out as they are typed. */
export function CupForm({ book, onDone }: Pick<BookProps, 'book'> & { onDone: () => void }) {
  const { core, pours, rows } = book;
  const form = useForm(SPECS);
  const [foam, setFoam] = useState((book.piece === undefined ? undefined : pours.at(-1)?.row.foam) ?? '');
  const [lot, setLot] = useState('');
  const [note, setNote] = useState('');
  const [day, setDay] = useState(localDay(new Date()));
  const [cups, setCups] = useState(1);
  const { change, isBusy, ...trouble } = useBookChange();
  const foamsG = FOAMS.slice(0, cups).flatMap((name) => form.value(name) ?? []);
  const waterG = form.value('water');
  const waterTempC = form.value('waterTemp');
  const roomC = form.value('room');
  const said = {
    ...(foam === '' ? {} : { foam }),
    ...(lot === '' ? {} : { lot }),
    ...(note === '' ? {} : { note }),
    ...(day === '' ? {} : { day }),
    ...(roomC === undefined ? {} : { roomC }),
    ...(waterG === undefined ? {} : { waterG }),
    ...(waterTempC === undefined ? {} : { waterTempC }),
  };
  const isWhole = waterG !== undefined && foamsG.length > 0 && !form.isUnread;
  const sum = isWhole
    ? cupSum({ waterG, foamsG, ...(waterTempC === undefined ? {} : { waterTempC }) })
    : undefined;
  const draft: RowDraft = { kind: 'cup', ...said, foamsG };
  const row = newRow(draft, rows);
  const isKnown = isThere(row, rows) !== undefined;
  return (
    <form
      className="cardform"
      aria-label="A cup test"
      onSubmit={(event) => {
        event.preventDefault();
        if (sum?.ok === true && foam !== '' && !isKnown && !isBusy)
          change((now) => withRow(now, row), onDone);
      }}
    >
      <div className="fields">
        <SelectField
          label="Foam"
          value={foam}
          blank="not said"
          options={core.foams.map(({ name }) => ({ value: name, label: name }))}
          onChoose={setFoam}
        />
        <KeptText label="Lot, as on the label" text={lot} onKeep={setLot} />
        <DayField day={day} onDay={setDay} />
        <FormBox form={form} name="room" label="Room" />
      </div>
      <div className="fields">
        <FormBox form={form} name="water" label="Water that fills the cup to its rim" />
        <FormBox form={form} name="waterTemp" label="Temperature of the water" assumed={ASSUMED_WATER} />
      </div>
      <div className="fields">
        {FOAMS.slice(0, cups).map((name, n) => (
          <FormBox key={name} form={form} name={name} label={`Foam in cup ${n + 1}, trimmed level`} />
        ))}
        {cups < FOAMS.length && (
          <button type="button" className="act" onClick={() => setCups((count) => count + 1)}>
            Another cup of it
          </button>
        )}
      </div>
      <div className="fields">
        <KeptText label="Note" text={note} onKeep={setNote} />
      </div>
      {sum?.ok === true && (
        <>
          <p className="ans" role="status">
            <span className="fig s">{formatDensity(sum.value.freeRiseKgM3)}</span>
            <span>
              {formatDensity(sum.value.lowKgM3)} to {formatDensity(sum.value.highKgM3)}, 9 times in 10, in{' '}
              {formatVolume(sum.value.cupCm3)}
            </span>
            <LearnedTag from="cup-test" count={sum.value.cups} />
          </p>
          {sum.value.findings.map((problem) => (
            <Complaint key={problem.code} problem={problem} />
          ))}
          <Disclosure>
            {cupBecause({
              water: {
                waterG: waterG!,
                waterTempC: waterTempC ?? VOLUME_RULES.waterTemp.value,
                volumeCm3: sum.value.cupCm3,
              },
              eachKgM3: foamsG.map((massG) => (1000 * massG) / sum.value.cupCm3),
              uShare: sum.value.uShare,
            }).map((text) => (
              <p key={text}>{text}</p>
            ))}
          </Disclosure>
        </>
      )}
      {sum?.ok === false && <Complaint problem={sum.problem} />}
      <FormVerbs
        lacks={
          isKnown
            ? 'That very test is in the Book already.'
            : sum?.ok === true && foam !== ''
              ? undefined
              : 'It takes which foam it was, the water of the cup, and the foam of one cup at least.'
        }
        write="Write the cup test in the Book"
        onDone={onDone}
      />
      <BookTrouble {...trouble} />
    </form>
  );
}
