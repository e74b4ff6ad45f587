import type { ScaleMeasure, Span, TapedExtent } from '../../plan';
import type { SizeWish } from '../../worker/protocol';
import type { SecondBy } from './measuringState';
import { valueOf } from './readField';
import type { Ticket } from './state';

type ScaleWish = Pick<SizeWish, 'taped' | 'fileUnit' | 'second' | 'scaleBy'>;

/** What sets the scale, and what checks it. A second distance without a first sets nothing, unless it was taken for the scale. */
export function scaleWishOf(ticket: Ticket): ScaleWish {
  const first = firstOf(ticket);
  const second = secondOf(ticket);
  const isSecond = second !== undefined && ticket.measuring.isSecondScale;
  if (second === undefined || (first.by === undefined && !isSecond)) return first.wish;
  const secondBy: ScaleMeasure = 'along' in second ? second.along : 'span';
  return { ...first.wish, second, scaleBy: isSecond ? secondBy : first.by! };
}

interface First {
  wish: Pick<SizeWish, 'taped' | 'fileUnit'>;
  by: ScaleMeasure | undefined;
}

function firstOf({ scaleWay, along, fileUnit, fields, scan }: Ticket): First {
  // Where nothing is said, a file that states its unit is taken by its word.
  const unsaid: First = { wish: {}, by: scan?.opened.ownUnit === undefined ? undefined : 'own unit' };
  if (scaleWay === 'unit') return fileUnit === undefined ? unsaid : { wish: { fileUnit }, by: 'file unit' };
  const lengthMm = valueOf('tape', fields.tape);
  return lengthMm === undefined ? unsaid : { wish: { taped: { along, lengthMm } }, by: along };
}

/** The distance that was chosen to check the first; none while it is the same side. */
export const secondByOf = ({ measuring: { secondBy }, scaleWay, along }: Ticket): SecondBy | undefined =>
  scaleWay === 'tape' && secondBy === along ? undefined : secondBy;

function secondOf(ticket: Ticket): TapedExtent | Span | undefined {
  const { measuring, fields } = ticket;
  const by = secondByOf(ticket);
  const lengthMm = valueOf('checkLength', fields.checkLength);
  if (by === undefined || lengthMm === undefined) return undefined;
  if (by !== 'points') return { along: by, lengthMm };
  const [from, to] = measuring.points;
  return from === undefined || to === undefined ? undefined : { from, to, lengthMm };
}
