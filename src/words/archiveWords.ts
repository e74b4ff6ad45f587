import type { MeshCode } from '../problem';
import { amount, counted, type Sentence, type Values } from './sentence';

const again = 'Export the scan again from the program that made it.';
const other = 'Export it as binary STL, OBJ or PLY.';

/** Sentences of 3MF: an archive of XML with objects that name one another. */
export const ARCHIVE_WORDS: Partial<Record<MeshCode, (v: Values) => Sentence>> = {
  CORRUPT_ARCHIVE: (v) => ({ text: `The archive is damaged: ${v.why}.`, hint: `Copy it again. ${again}` }),
  UNSAFE_ARCHIVE: (v) => ({
    text:
      v.part === 'twice'
        ? 'The archive lists a part twice: which of them counts cannot be told.'
        : v.part === 'ratio'
          ? `The archive would unpack to ${counted(v.ratio, 'time', 'times')} its size; ${amount(v.limit)} times is the most.`
          : `The archive says that a part has ${counted(v.bytes, 'byte')}, but more come out.`,
    hint: `Such archives are made to fill a machine: it was not unpacked. ${other}`,
  }),
  UNSAFE_XML: (v) => ({
    text:
      v.part === 'depth'
        ? `More than ${amount(v.limit)} elements stand in one another.`
        : v.part === 'plain'
          ? `More than ${amount(v.limit, 9)} characters stand between two tags.`
          : 'The text declares a document type, by which a file can name other files or grow without end.',
    hint: `Nothing of it was followed. ${other}`,
  }),
  BAD_UNIT: (v) => ({
    text: `The file gives its lengths in "${v.text}", which is no unit of 3MF.`,
    hint: `${again} As STL, and name the unit here, it can be read.`,
  }),
  BAD_REFERENCE: (v) =>
    v.part === 'unnamed'
      ? {
          text: 'The archive does not name the model to start with; the only one in it was read.',
          hint: 'Look at the size and the picture: is it the piece?',
        }
      : v.part === 'relations'
        ? {
            text: 'The list that names the model to start with is not written as it should be; the model it names was read.',
            hint: 'Look at the size and the picture: is it the piece?',
          }
        : {
            text:
              v.part === 'twice'
                ? `Two objects have the number ${v.text}: which of them counts cannot be told.`
                : `The file names the ${v.part === 'model' ? 'model' : 'object'} "${v.text}", which is not in it.`,
            hint: again,
          },
  BAD_TRANSFORM: () => ({ text: 'A transform flattens its object to nothing.', hint: again }),
  CYCLE: (v) => ({ text: `The object "${v.text}" is a part of itself.`, hint: again }),
  MIRRORED: (v) => ({
    text: `${counted(v.count, 'object')} ${v.count === 1 ? 'is' : 'are'} mirrored by the file, and ${v.count === 1 ? 'was' : 'were'} read so.`,
    hint: 'Nothing to do: the volume is that of the mirrored piece.',
  }),
  IGNORED_ELEMENTS: (v) =>
    v.part === 'support'
      ? {
          text: `${counted(v.count, 'support')} of the print left out.`,
          hint: 'The file marks what holds a print up; it is no part of the piece.',
        }
      : v.part === 'empty'
        ? {
            text: `${counted(v.count, 'object')} of the build ${v.count === 1 ? 'has' : 'have'} no triangles, at first object "${v.text}".`,
            hint: 'Look at the size and the picture: a part of the piece may be missing.',
          }
        : v.part === 'unknown'
          ? {
              text: `Passed over: ${counted(v.count, 'entry', 'entries')} that ${v.count === 1 ? 'is' : 'are'} not known here, the first "${v.text}".`,
              hint: 'Look at the size and the picture: a part of the surface may have stood there.',
            }
          : {
              text: `Passed over: ${counted(v.count, 'entry', 'entries')} of ${v.text}.`,
              hint: 'Nothing to do: the surface is all there.',
            },
  TOO_LARGE: tooLarge,
};

const megabytes = (bytes: number | string | undefined): string => `${amount(Number(bytes) / 1e6)} MB`;

/** What the file has, and the number that would do. */
function tooLarge(v: Values): Sentence {
  const most = amount(v.limit, 10);
  if (v.part === 'file')
    return {
      text: `The file has ${megabytes(v.count)}; ${megabytes(v.limit)} is the most.`,
      hint: 'Export it as binary STL, where it is text: that takes a fifth of the room. Else have the scanner program thin it out: the volume hardly changes.',
    };
  if (v.part === 'bytes')
    return { text: `A part unpacks to ${counted(v.count, 'byte')}; ${most} is the most.`, hint: other };
  if (v.part === 'entries')
    return { text: `The archive has ${counted(v.count, 'part')}; ${most} is the most.`, hint: other };
  if (v.part === 'depth')
    return {
      text: `Objects lie in one another ${amount(v.count, 9)} deep; ${most} is the most.`,
      hint: other,
    };
  if (v.part === 'copies')
    return {
      text: `The file places ${counted(v.count, 'object')}; ${most} is the most.`,
      hint: 'Export one piece, not a whole plate of them.',
    };
  return {
    text: `The scan has ${counted(v.count, 'triangle')}; ${most} is the most.`,
    hint: `Have the scanner program thin it out to ${most} or fewer: the volume hardly changes.`,
  };
}
