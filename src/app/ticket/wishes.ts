import { readFoamCard, type FoamCard, type Given, type MixRatio, type PartDensities } from '../../yield';
import type { PourInputs } from '../../plan';
import type { Outcome } from '../../problem';
import type { CutWish, SizeWish } from '../../worker/protocol';
import { textOf, type FieldName, type OwnField } from './fields';
import { isCloseTo } from './isCloseTo';
import { scaleWishOf } from './scaleWishes';
import { readField, valueOf } from './readField';
import type { Ticket } from './state';

/** A box that must be read before the scan can be sized, and is not: typed with no single meaning, or a cut without height. */
export function unreadForSize({ fields, scaleWay, cut, measuring }: Ticket): FieldName | undefined {
  if (scaleWay === 'tape' && isUnread(fields, 'tape')) return 'tape';
  if (measuring.isSecondScale && isUnread(fields, 'checkLength')) return 'checkLength';
  const isCut = cut?.by === 'height' && valueOf('cutHeight', fields.cutHeight) === undefined;
  return isCut ? 'cutHeight' : undefined;
}

/** What the engine is asked about the scan, from what was said so far; undefined while a box for it is unread. */
export function sizeWishOf(ticket: Ticket): SizeWish | undefined {
  if (unreadForSize(ticket) !== undefined) return undefined;
  const cut = cutWishOf(ticket);
  const pieces = piecesWishOf(ticket);
  return {
    ...(ticket.up.confirmed ? { up: ticket.up.axis } : {}),
    ...scaleWishOf(ticket),
    ...(cut === undefined ? {} : { cut }),
    ...(pieces === undefined ? {} : { pieces }),
  };
}

/** Only what was decided: a ticket on which nobody decided anything asks as ever. */
function piecesWishOf({ measuring: { pieces } }: Ticket): SizeWish['pieces'] | undefined {
  const { leaveOut, ...rules } = pieces;
  const decided = {
    ...(leaveOut.length === 0 ? {} : { leaveOut }),
    ...Object.fromEntries(Object.entries(rules).filter(([, isOff]) => isOff)),
  };
  return Object.keys(decided).length === 0 ? undefined : decided;
}

function cutWishOf({ cut, keep, fields }: Ticket): CutWish | undefined {
  if (cut === undefined) return undefined;
  if (cut.by === 'floor') return { ...cut, keep };
  const heightMm = valueOf('cutHeight', fields.cutHeight);
  return heightMm === undefined ? undefined : { by: 'height', heightMm, keep };
}

/** The typed foam card, checked by the engine; undefined while something it needs is blank or unread. */
export function cardOf({ fields, foam }: Ticket): Outcome<FoamCard> | undefined {
  const freeRiseKgM3 = valueOf('freeRise', fields.freeRise);
  const ratio = ratioOf(fields, foam.by);
  if (
    freeRiseKgM3 === undefined ||
    ratio === undefined ||
    isUnread(fields, 'densityA') ||
    isUnread(fields, 'densityB')
  )
    return undefined;
  const partDensities = densitiesOf(fields);
  return readFoamCard({
    name: foam.name.trim() === '' ? 'a foam without a name' : foam.name,
    freeRiseKgM3,
    freeRiseFrom: foam.from,
    ratio,
    ...(partDensities === undefined ? {} : { partDensities }),
  });
}

function ratioOf(fields: Ticket['fields'], by: MixRatio['by']): MixRatio | undefined {
  const a = valueOf('partsA', fields.partsA);
  const b = valueOf('partsB', fields.partsB);
  return a === undefined || b === undefined ? undefined : { a, b, by };
}

function densitiesOf(fields: Ticket['fields']): PartDensities | undefined {
  const aKgM3 = valueOf('densityA', fields.densityA);
  const bKgM3 = valueOf('densityB', fields.densityB);
  return aKgM3 === undefined || bKgM3 === undefined ? undefined : { aKgM3, bKgM3 };
}

/** Something was typed that has no single meaning yet. */
export const isUnread = (fields: Ticket['fields'], name: FieldName): boolean => {
  const { kind } = readField(name, textOf(fields, name));
  return kind === 'ask' || kind === 'error';
};

const LOSSES = [
  ['riser', 'riserCm3'],
  ['vents', 'ventsG'],
  ['residue', 'residueG'],
  ['scaleStep', 'scaleStepG'],
  ['scaleMost', 'scaleMaxG'],
] as const;

/** All of the pour's inputs but the cavity. */
export type BatchWish = Omit<PourInputs, 'cavity'>;

/** What is known of the batch, or undefined while a fact is missing or a field waits for a meaning. */
export function batchWishOf(ticket: Ticket): BatchWish | undefined {
  const { fields } = ticket;
  const card = cardOf(ticket);
  if (card?.ok !== true || unreadForBatch(ticket).length > 0) return undefined;
  const packFactor = given(valueOf('pack', fields.pack), 'chosen');
  const { freeRiseKgM3, freeRiseFrom, ratio, partDensities } = card.value;
  return {
    freeRiseKgM3: { value: freeRiseKgM3, from: freeRiseFrom, ...cupDoubt(ticket, freeRiseKgM3) },
    ratio,
    ...(partDensities === undefined ? {} : { partDensities }),
    ...(packFactor === undefined ? {} : { packFactor }),
    ...Object.fromEntries(
      LOSSES.flatMap(([name, input]) => {
        const value = given(valueOf(name, fields[name]), 'given');
        return value === undefined ? [] : [[input, value]];
      }),
    ),
  };
}

/** The doubt of the cups, while the free rise is the one that they came to; else the engine takes that of any cup test. */
function cupDoubt({ foam: { from, cup } }: Ticket, freeRiseKgM3: number): { uShare?: number } {
  return from === 'cup-test' && cup !== undefined && isCloseTo(cup.kgM3, freeRiseKgM3)
    ? { uShare: cup.uShare }
    : {};
}

/** The boxes of what goes elsewhere than into the cavity, and of the scale. */
export const LOSS_FIELDS = LOSSES.map(([name]) => name);

/** The boxes that a foam is told in. */
export const FOAM_FIELDS = [
  'freeRise',
  'partsA',
  'partsB',
  'densityA',
  'densityB',
] as const satisfies readonly OwnField[];

export const FIELDS_OF_BATCH: readonly OwnField[] = [...FOAM_FIELDS, 'pack', ...LOSS_FIELDS];

/** The boxes of Batch that were typed into and have no single meaning. */
export const unreadForBatch = ({ fields }: Ticket): OwnField[] =>
  FIELDS_OF_BATCH.filter((name) => isUnread(fields, name));

const given = (value: number | undefined, from: Given['from']): Given | undefined =>
  value === undefined ? undefined : { value, from };
