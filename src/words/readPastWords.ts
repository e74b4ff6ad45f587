import type { MeshCode } from '../problem';
import { amount, counted, type Sentence, type Values } from './sentence';

const hint = 'Compare the size and the picture with the piece, or export the scan again.';
const proof = 'The facets close the surface without a gap, so they were read.';

/** Sentences about what a reader read past, since the surface proves that nothing of it is missing. */
const READ_PAST: Partial<Record<MeshCode, (v: Values) => string>> = {
  TRUNCATED: (v) =>
    v.bytes === undefined
      ? `The file stops where ${v.expected} should follow. ${proof} Whether another body should follow cannot be told.`
      : `The file stops ${counted(v.bytes, 'byte')} early, within what holds no shape. ${proof}`,
  COUNT_MISMATCH: (v) =>
    `The file announces ${counted(v.facetsSaid, 'facet')}, but holds ${amount(v.facetsPresent, 9)}. ${proof}`,
  TRAILING_DATA: (v) =>
    `${counted(v.bytes, 'byte')} follow the last of the facets announced and were passed over. ${proof}`,
  ENDIAN: (v) => `The numbers should be ${v.said} but are ${v.is}. ${proof}`,
  SYNTAX: (v) => `${places(v)}, at first "${v.text}" where ${v.expected} should stand. ${proof}`,
  BAD_INDEX: (v) => `${places(v)}, at first "${v.text}" for a vertex; its first number was taken. ${proof}`,
  BAD_NUMBER: (v) =>
    `${counted(v.count, 'vertex', 'vertices')} without a place, the first with "${v.text}"; no face names ${v.count === 1 ? 'it' : 'them'}. ${proof}`,
  UNSUPPORTED_FEATURE: (v) =>
    `Shapes of another kind ("${v.text}") stand beside the facets and were not read: what they hold is missing from the volume.`,
};

const places = ({ count }: Values): string =>
  `The file is not written as its kind asks in ${counted(count, 'place')}`;

/** The sentences of a reader, with those for what was read past beside those for what it refuses. */
export function withReadPast(
  words: Partial<Record<MeshCode, (v: Values) => Sentence>>,
): Partial<Record<MeshCode, (v: Values) => Sentence>> {
  const both = { ...words };
  for (const [code, past] of Object.entries(READ_PAST) as [MeshCode, (v: Values) => string][]) {
    const refused = words[code];
    both[code] = (v) =>
      v.part === 'read past' || refused === undefined ? { text: past(v), hint } : refused(v);
  }
  return both;
}
