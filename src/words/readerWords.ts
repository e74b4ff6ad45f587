import type { MeshCode } from '../problem';
import { ARCHIVE_WORDS } from './archiveWords';
import { withReadPast } from './readPastWords';
import { amount, counted, type Sentence, type Values } from './sentence';

const again = 'Export the scan again from the program that made it, as binary STL, OBJ or PLY.';
const fixLine = 'Mend that line, or export the scan again.';

const UNREAD: Readonly<Record<string, string>> = {
  strips: 'triangles in strips, which are',
  extension: 'an addition to 3MF that changes the shape and is',
};

/** Sentences of the readers: the file can't be taken as it is. The place (line or byte) is added by `say`. */
export const READER_WORDS: Partial<Record<MeshCode, (v: Values) => Sentence>> = withReadPast({
  ...ARCHIVE_WORDS,
  EMPTY_FILE: () => ({ text: 'The file is empty.', hint: again }),
  UNSUPPORTED_FORMAT: (v) =>
    v.part === 'packed'
      ? { text: `The archive is ${v.how}.`, hint: 'Save it as a plain 3MF.' }
      : {
          text:
            v.format === ''
              ? 'The name has no ending, so the kind of file is not known.'
              : `Files of the kind "${v.format}" are not ${v.part === 'written' ? 'written' : 'read'}.`,
          hint:
            v.part === 'written'
              ? `Name it as one of: ${v.known}.`
              : `Give one of: ${v.known}; or name it with --format.`,
        },
  UNSUPPORTED_ENCODING: (v) => ({
    text: `The file is text in ${v.encoding}.`,
    hint: 'Save it as plain ASCII or UTF-8.',
  }),
  NOT_A_MESH: (v) => ({ text: `This is ${v.what}, not a mesh.`, hint: again }),
  WRONG_FORMAT: (v) => ({
    text: `The file is called ${v.said} but holds ${v.is}, and is read as that.`,
    hint: `Rename it to .${String(v.is).toLowerCase()}.`,
  }),
  TRUNCATED: (v) => ({
    text:
      v.expectedBytes === undefined
        ? `The file stops where ${v.expected ?? 'more'} should follow.`
        : `The file stops early: ${counted(v.bytes, 'byte')} of ${amount(v.expectedBytes, 9)} are here${v.facetsSaid === undefined ? '' : `, for the ${counted(v.facetsSaid, 'facet')} it announces`}.`,
    hint: 'Copy or export it again; part of it is missing.',
  }),
  COUNT_MISMATCH: (v) => ({
    text: `The file announces ${counted(v.facetsSaid, 'facet')}, but holds bytes for ${amount(v.facetsPresent, 9)}.`,
    hint: 'Export it again; which facets are real cannot be told.',
  }),
  TRAILING_DATA: (v) => ({ text: `${counted(v.bytes, 'byte')} follow the last facet.`, hint: again }),
  SYNTAX: (v) =>
    v.part === 'xml'
      ? { text: `This is not XML as it should be: ${v.text}`, hint: again }
      : { text: `Here "${v.text}" stands where ${v.expected} should.`, hint: fixLine },
  BAD_NUMBER: (v) =>
    v.part === 'count'
      ? { text: `"${v.text}" is not a count.`, hint: fixLine }
      : {
          text: `"${v.text}" is not a number a coordinate can have.`,
          hint: 'Coordinates take a decimal point, no comma, and must be finite. ' + fixLine,
        },
  COORD_RANGE: (v) => ({
    text: `A coordinate of ${v.text} is beyond ${amount(v.limit, 9)} units.`,
    hint: 'Move the piece near zero before exporting it.',
  }),
  BAD_INDEX: (v) => ({ text: `"${v.text}" is not a vertex number.`, hint: fixLine }),
  INDEX_OUT_OF_RANGE: (v) =>
    v.text === '0'
      ? { text: 'A face names vertex 0; vertices are counted from 1.', hint: fixLine }
      : {
          text: `A face names vertex ${v.index ?? v.text}${v.part === 'from zero' ? ', counted from 0' : ''}, but there are only ${amount(v.vertices, 9)}.`,
          hint: 'Export it again; vertices are missing.',
        },
  BAD_POLYGON: (v) => ({
    text:
      Number(v.corners) > Number(v.limit)
        ? `A face has more than ${amount(v.limit)} corners, which is the most.`
        : v.part === 'work'
          ? 'The faces up to here have too many corners to be cut into triangles.'
          : `The outline of a face with ${v.corners} corners crosses itself.`,
    hint: 'Export the scan with triangles only.',
  }),
  UNSUPPORTED_FEATURE: (v) => ({
    text: `The file uses "${v.text}", ${UNREAD[v.part ?? ''] ?? 'a curved shape that is'} not read.`,
    hint: 'Export it as triangles.',
  }),
  ENDIAN: (v) => ({
    text: `The file says that its numbers are ${v.said}, but only ${v.is} ones give a mesh.`,
    hint: again,
  }),
  ENCODING: (v) => ({
    text: `The file is text in ${v.encoding}, and was read so.`,
    hint: 'Nothing to do: a mesh needs no letters but plain ones.',
  }),
  NO_TRIANGLES: (v) => {
    if (v.vertices === undefined || v.vertices === 0)
      return {
        text: 'There is neither a point nor a face in the file.',
        hint: `Is it a scan at all? ${again}`,
      };
    return {
      text: `There is no face in the file, only ${counted(v.vertices, 'point')}.`,
      hint: 'A cloud of points has no inside: have the scanner program make a mesh of it.',
    };
  },
});
