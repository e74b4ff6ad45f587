import type { ReactNode } from 'react';
import type { SavedField } from '../../job/piece';
import { amount } from '../../words/sentence';
import { QuantityBox } from '../parts/QuantityBox';
import { MarkShape } from '../parts/StatusMark';
import { specOf, textOf, type FieldName } from '../ticket/fields';
import { valueIn } from '../ticket/readField';
import { readSpec, type BoxText } from '../ticket/readSpec';
import type { Ticket } from '../ticket/state';
import type { BenchSaid } from './useBenchState';

type Box = 'room' | 'mold';

/** The box of the ticket that each begins with. */
const ON_TICKET = { room: 'pourRoom', mold: 'moldTemp' } as const satisfies Readonly<Record<Box, FieldName>>;
const LABELS = { room: 'Room', mold: 'Mold, inside' } as const;

interface DayBoxesProps {
  ticket: Ticket;
  said: BenchSaid;
  say: (part: Partial<BenchSaid>) => void;
}

/** Room and mold as they are now, after the boxes of the scale. Kept with the pour; the plan stays as it was made, and a day that is warmer is told. */
export function DayBoxes({ ticket, said, say, children }: DayBoxesProps & { children: ReactNode }) {
  return (
    <>
      <div className="fields">
        {children}
        {(['room', 'mold'] as const).map((box) => (
          <DayBox key={box} box={box} {...{ ticket, said, say }} />
        ))}
      </div>
      <Drift ticket={ticket} said={said} />
    </>
  );
}

function DayBox({ box, ticket, said, say }: DayBoxesProps & { box: Box }) {
  const now = boxAt(ticket, said, box);
  return (
    <div>
      <QuantityBox
        id={`bench-${box}`}
        label={LABELS[box]}
        unitLabel={`Unit of ${LABELS[box].toLowerCase()}`}
        spec={specOf(ON_TICKET[box])}
        box={now}
        onBox={(next) => say({ [box]: next satisfies SavedField })}
      />
      {said[box] === undefined && now.text !== '' && <p className="note quiet">as Batch has it</p>}
    </div>
  );
}

/** As read at the bench, else as the ticket has it. */
function boxAt({ fields }: Ticket, said: BenchSaid, box: Box): BoxText {
  const onTicket = textOf(fields, ON_TICKET[box]);
  const own = said[box];
  return own === undefined ? onTicket : { ...own, unit: own.unit ?? onTicket.unit };
}

/** What stands in a box, °C; undefined while it is blank or has no single meaning. */
export function dayC(ticket: Ticket, said: BenchSaid, box: Box): number | undefined {
  const read = readSpec(specOf(ON_TICKET[box]), boxAt(ticket, said, box));
  return read.kind === 'one' ? read.value : undefined;
}

/** Within this, K, a thermometer on the wall says nothing new. Chosen here. */
const SAME_K = 1;

/** The plan's times hold at the warmth it was told: another one is said, and where to tell it. */
function Drift({ ticket, said }: Omit<DayBoxesProps, 'say'>) {
  const roomC = dayC(ticket, said, 'room');
  const plannedC = valueIn(ticket.fields, 'ingredients') ?? valueIn(ticket.fields, 'pourRoom');
  if (roomC === undefined || plannedC === undefined || Math.abs(roomC - plannedC) <= SAME_K) return null;
  const apart = `${amount(Math.abs(roomC - plannedC), 2)} °C ${roomC > plannedC ? 'warmer' : 'colder'}`;
  return (
    <p className="said">
      <MarkShape mark="look" />
      <span>
        The room is {apart} than A and B were planned at.
        {roomC > plannedC && ' Warm foam creams sooner.'} Say it in Batch, and the times follow.
      </span>
    </p>
  );
}
