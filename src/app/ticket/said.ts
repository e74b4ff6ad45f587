import type { FactName } from '../../checks';
import type { UpAxis } from '../../geometry';
import type { Along, FileUnit } from '../../plan';
import type { FoamCard, SiliconeCard } from '../../yield';
import { FIELDS, textOf, type FieldName, type FieldText } from './fields';
import { withFoam } from './foamTexts';
import type { MadeField } from './madeFields';
import { withFirstSide, withMeasuringWord, type MeasuringWord } from './measuringState';
import { withSilicone, type Molding } from './moldState';
import { withSizingWord, type SizingWord } from './sizingState';
import { withPourWord, type PourWord } from './pourState';
import { withVentingWord, type VentingWord } from './ventingState';
import { typedText } from './typedText';
import type { Words } from './words';

/** What the user says. */
export type Word =
  | { do: 'type'; field: FieldName; text: string }
  | { do: 'unit'; field: FieldName; unit: string }
  | { do: 'pick'; field: FieldName; text: string; value: number }
  | { do: 'up'; axis: UpAxis }
  | { do: 'scaleWay'; way: Words['scaleWay'] }
  | { do: 'along'; along: Along }
  | { do: 'fileUnit'; unit: FileUnit }
  | { do: 'cut'; cut: Words['cut'] }
  | { do: 'keep'; keep: Words['keep'] }
  | { do: 'foam'; foam: Partial<Words['foam']> }
  | { do: 'cupTest'; cup: { kgM3: number; uShare: number } }
  | { do: 'card'; card: FoamCard }
  | { do: 'molding'; molding: Partial<Molding> }
  | { do: 'kits'; text: string }
  | { do: 'moldPick'; field: MadeField; value: string }
  | { do: 'fact'; fact: FactName; value: string }
  | MeasuringWord
  | PourWord
  | SizingWord
  | VentingWord
  | { do: 'silicone'; card: SiliconeCard };

/** Every word by its name. */
const WORDS = {
  type: true,
  unit: true,
  pick: true,
  up: true,
  scaleWay: true,
  along: true,
  fileUnit: true,
  cut: true,
  keep: true,
  foam: true,
  cupTest: true,
  card: true,
  molding: true,
  kits: true,
  moldPick: true,
  fact: true,
  second: true,
  pickPoint: true,
  clearPoints: true,
  scaleFrom: true,
  leaveOut: true,
  putBack: true,
  leaveOutOnly: true,
  pieceRule: true,
  pouring: true,
  past: true,
  pourFact: true,
  color: true,
  sizeWay: true,
  sunk: true,
  addBody: true,
  bodyKind: true,
  dropBody: true,
  fillAside: true,
  takeFill: true,
  pourWay: true,
  takeUp: true,
  addVents: true,
  dropVent: true,
  silicone: true,
} as const satisfies Record<Word['do'], true>;

export const isWord = (action: { do: string }): action is Word => Object.hasOwn(WORDS, action.do);

/** Letter by letter: the engine is asked when the box has stood still. */
export const isTyped = (action: Word): boolean =>
  ['type', 'kits', 'past'].includes(action.do) ||
  (action.do === 'color' && action.color.name !== undefined) ||
  (action.do === 'foam' && isOnly(action.foam, 'name')) ||
  (action.do === 'molding' && isOnly(action.molding, 'siliconeName'));

const isOnly = (said: object, key: string): boolean => Object.keys(said).join() === key;

/** Into one box letter by letter, or a slider drawn along: one step to take back. */
export const runOf = (word: Word): string | undefined =>
  word.do === 'type' ? `type ${word.field}` : isTyped(word) ? word.do : undefined;

export function said<T extends Words>(ticket: T, action: Word): T {
  const { fields, molding, pouring } = ticket;
  switch (action.do) {
    case 'type':
      return withField(ticket, action.field, {
        ...unpicked(textOf(fields, action.field)),
        text: action.text,
      });
    case 'unit':
      return withField(ticket, action.field, {
        ...unpicked(textOf(fields, action.field)),
        unit: action.unit,
      });
    case 'pick':
      return withField(ticket, action.field, {
        ...textOf(fields, action.field),
        text: action.text,
        picked: action.value,
      });
    case 'up':
      return { ...ticket, up: { axis: action.axis, confirmed: true }, ...cutOfOtherUp(ticket, action.axis) };
    case 'scaleWay':
      return { ...ticket, scaleWay: action.way };
    case 'along':
      return {
        ...ticket,
        along: action.along,
        measuring: withFirstSide(ticket.measuring, action.along),
      };
    case 'fileUnit':
      return { ...ticket, scaleWay: 'unit', fileUnit: action.unit };
    case 'cut':
      return {
        ...ticket,
        cut: action.cut,
        ...(action.cut?.by === 'floor' ? { keep: 'above' as const } : {}),
      };
    case 'keep':
      return { ...ticket, keep: action.keep };
    case 'foam':
      return { ...ticket, foam: { ...ticket.foam, ...action.foam } };
    case 'cupTest':
      return withCupTest(ticket, action.cup);
    case 'card':
      return { ...ticket, ...withFoam(fields, action.card) };
    case 'molding':
      return { ...ticket, molding: { ...molding, ...action.molding } };
    case 'kits':
      return { ...ticket, molding: { ...molding, kits: action.text } };
    case 'moldPick':
      return {
        ...ticket,
        molding: { ...molding, picks: { ...molding.picks, [action.field]: action.value } },
      };
    case 'fact':
      return {
        ...ticket,
        molding: { ...molding, facts: { ...molding.facts, [action.fact]: action.value } },
      };
    case 'second':
    case 'pickPoint':
    case 'clearPoints':
    case 'scaleFrom':
    case 'leaveOut':
    case 'putBack':
    case 'leaveOutOnly':
    case 'pieceRule':
      return { ...ticket, ...withMeasuringWord(ticket, action) };
    case 'pouring':
    case 'past':
    case 'pourFact':
    case 'color':
      return { ...ticket, pouring: withPourWord(pouring, action) };
    case 'pourWay':
    case 'takeUp':
    case 'addVents':
    case 'dropVent':
      return { ...ticket, ...withVentingWord(ticket, action) };
    case 'sizeWay':
    case 'sunk':
    case 'addBody':
    case 'bodyKind':
    case 'dropBody':
    case 'fillAside':
      return { ...ticket, ...withSizingWord(ticket, action) };
    case 'takeFill':
      return wetted({ ...ticket, ...withSizingWord(ticket, action) });
    case 'silicone':
      return { ...ticket, ...withSilicone(molding, fields, action.card) };
  }
}

/** The free rise of the cups, as precise as it is typed, with their doubt. */
function withCupTest<T extends Words>(ticket: T, { kgM3, uShare }: { kgM3: number; uShare: number }): T {
  const told = Number(kgM3.toPrecision(CUP_DIGITS));
  const said = withField(ticket, 'freeRise', typedText(FIELDS.freeRise, told));
  return { ...said, foam: { ...ticket.foam, from: 'cup-test', cup: { kgM3: told, uShare } } };
}

/** Cups tell no more. Chosen here. */
const CUP_DIGITS = 4;

function withField<T extends Words>(ticket: T, name: FieldName, field: FieldText): T {
  const typed = { ...ticket, fields: { ...ticket.fields, [name]: field } };
  return name === 'fillWater' && field.text.trim() !== '' ? wetted(typed) : typed;
}

/** Water stood in the mold: nobody has confirmed since that it is dry, and that stops the pour until someone does. */
function wetted<T extends Words>(ticket: T): T {
  const { pouring } = ticket;
  const facts = { ...pouring.facts, moldWater: 'not confirmed dry' };
  return { ...ticket, pouring: { ...pouring, facts } };
}

const unpicked = ({ text, unit }: FieldText): FieldText => ({ text, unit });

/** A floor was found on one way up; on another it means nothing. */
function cutOfOtherUp(ticket: Words, axis: UpAxis): Partial<Words> {
  return ticket.cut?.by === 'floor' && axis !== ticket.up.axis ? { cut: undefined } : {};
}
