import { useState } from 'react';
import { formatDensity, formatVolume } from '../../units';
import { cupBecause } from '../../words/volumeWayWords';
import { CupBoxes } from '../cup/CupBoxes';
import { cupsOfDraft, massesOf, newCupDraft } from '../cup/cupDraft';
import type { WeighedCups } from '../cup/weighedCups';
import { Complaint } from '../parts/Complaint';
import { DayField } from '../parts/DayField';
import { Disclosure } from '../parts/Disclosure';
import { SelectField } from '../parts/SelectField';
import { KeptText } from '../shelf/KeptText';
import { localDay } from '../ticket/localDay';
import type { BookProps } from './bookProps';
import { FormBox } from './FormBox';
import { LearnedTag } from './LearnedTag';
import { RowForm } from './RowForm';
import { useForm } from './useForm';

const SPECS = { room: { kind: 'temperature', units: ['C', 'F'] } } as const;

/** Cups of one test, written down as a row; what they come to is worked out as they are typed. */
export function CupForm({ book, onDone }: Pick<BookProps, 'book'> & { onDone: () => void }) {
  const { core, pours, rows } = book;
  const form = useForm(SPECS);
  const [foam, setFoam] = useState((book.piece === undefined ? undefined : pours.at(-1)?.row.foam) ?? '');
  const [lot, setLot] = useState('');
  const [note, setNote] = useState('');
  const [day, setDay] = useState(localDay(new Date()));
  const [cups, setCups] = useState(newCupDraft);
  const roomC = form.value('room');
  const weighed = form.isUnread ? undefined : cupsOfDraft(cups);
  return (
    <RowForm
      of="cup test"
      draft={{
        kind: 'cup',
        ...(foam === '' ? {} : { foam }),
        ...(lot === '' ? {} : { lot }),
        ...(note === '' ? {} : { note }),
        ...(day === '' ? {} : { day }),
        ...(roomC === undefined ? {} : { roomC }),
        ...massesOf(cups),
      }}
      rows={rows}
      lacks={
        weighed?.ok === true && foam !== ''
          ? undefined
          : 'It takes which foam it was, the water of the cup, and the foam of one cup at least.'
      }
      onDone={onDone}
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
        <DayField label="Day" day={day} onDay={setDay} />
        <FormBox form={form} name="room" label="Room" />
      </div>
      <CupBoxes draft={cups} onDraft={setCups} />
      <div className="fields">
        <KeptText label="Note" text={note} onKeep={setNote} />
      </div>
      {weighed?.ok === true && <FreeRise cups={weighed.value} />}
      {weighed?.ok === false && <Complaint problem={weighed.problem} />}
    </RowForm>
  );
}

function FreeRise({ cups }: { cups: WeighedCups }) {
  const { value, low, high } = cups.freeRiseKgM3;
  return (
    <>
      <p className="ans" role="status">
        <span className="fig s">{formatDensity(value)}</span>
        <span>
          {formatDensity(low)} to {formatDensity(high)}, 9 times in 10, in{' '}
          {formatVolume(cups.cups[0]!.cupCm3)}
        </span>
        <LearnedTag from="cup-test" count={cups.cups.length} />
      </p>
      {cups.findings.map((problem) => (
        <Complaint key={problem.code} problem={problem} />
      ))}
      <Disclosure>
        {cupBecause(cups).map((text) => (
          <p key={text}>{text}</p>
        ))}
      </Disclosure>
    </>
  );
}
