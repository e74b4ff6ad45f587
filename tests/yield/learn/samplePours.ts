import { SAMPLE_BOOK } from '../../../src/job/sampleBook';
import type { TriedPour } from '../../../src/yield/learn/triedPour';

/** The past pours of the sample shop, as what was tried and what came of it. */
export const samplePours: readonly TriedPour[] = SAMPLE_BOOK.map(
  ({ no, foam, piece, pack, moldC, roomC, opening, skin, note }) => ({
    no,
    foam,
    piece,
    packFactor: pack,
    moldC,
    roomC,
    opening,
    skin,
    short: note?.startsWith('short') === true,
  }),
);
