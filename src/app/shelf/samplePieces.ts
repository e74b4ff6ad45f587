import type { Piece } from '../../job/piece';
import { SAMPLE_BOOK, type PastPour } from '../../job/sampleBook';
import { SAMPLE_SHOP } from '../../job/sampleShop';
import type { MoldKey } from '../../geometry';
import { nextCasting } from '../ticket/nextCasting';
import { saidOf } from '../ticket/record';
import { said, type Word } from '../ticket/said';
import { shopWords } from '../ticket/shopWords';
import { newWords, type Words } from '../ticket/words';

/** A sculpt of the invented shop as its makers have it on the ticket. */
interface SampleSculpt {
  id: string;
  name: string;
  code: string;
  /** The file of its scan among the samples. */
  scan: string;
  measured: readonly Word[];
  mold: MoldKey;
  /** Of a hollow piece: its core as measured from its own scan, which is among the samples too. */
  core?: string;
}

const type = (field: 'tape' | 'coreVolume', text: string): Word => ({ do: 'type', field, text });

const SCULPTS: readonly SampleSculpt[] = [
  {
    id: '1-troll',
    name: 'Quay Troll head',
    code: 'TROLL',
    scan: 'quay-troll-scan.stl',
    measured: [{ do: 'up', axis: '+y' }, type('tape', '290.85')],
    mold: 'skin',
  },
  {
    id: '2-hand',
    name: 'Lighthouse Giant’s hand',
    code: 'HAND',
    scan: 'lighthouse-hand-scan.stl',
    measured: [
      { do: 'up', axis: '+z' },
      { do: 'fileUnit', unit: 'mm' },
    ],
    mold: 'block',
  },
  {
    id: '3-rock',
    name: 'Singing Rock, hollow',
    code: 'ROCK',
    scan: 'singing-rock-scan.obj',
    measured: [
      { do: 'up', axis: '+z' },
      { do: 'fileUnit', unit: 'in' },
      // The board it was scanned on, cut off where its top was found.
      { do: 'cut', cut: { by: 'floor', atUnits: 0.0078 } },
    ],
    mold: 'skin',
    core: '6175.2 cm3',
  },
  {
    id: '4-eel',
    name: 'Lamp Eel',
    code: 'EEL',
    scan: 'lamp-eel-scan.stl',
    measured: [{ do: 'up', axis: '+z' }, { do: 'along', along: 'wide' }, type('tape', '520')],
    mold: 'block',
  },
];

/** Its pieces, begun today, with the castings of its book; the last troll is being planned. */
export const samplePieces = (today: string): Piece[] =>
  SCULPTS.map((sculpt) => {
    const piece = pieceOf(sculpt, today);
    return sculpt.code === 'TROLL' ? planned(piece) : piece;
  });

const [SILICONE] = SAMPLE_SHOP.silicones;

function pieceOf(sculpt: SampleSculpt, today: string): Piece {
  const { id, name, code, scan, measured, mold, core } = sculpt;
  const pours = SAMPLE_BOOK.filter(({ piece }) => piece === id);
  const molding: Word[] = [
    { do: 'molding', molding: { type: mold } },
    ...(SILICONE === undefined ? [] : [{ do: 'silicone', card: SILICONE } as const]),
    ...(core === undefined ? [] : [type('coreVolume', core)]),
  ];
  const castings = pours.map((pour): [string, Piece['castings'][string]] => [
    `${id}-${pour.no}`,
    { no: pour.no, mold: `${id}-mold`, ...saidOf(wordsOf(wordsOfPour(pour)), 'casting') },
  ]);
  return {
    id,
    name,
    code,
    begunOn: today,
    sculpt: { ...saidOf(wordsOf(measured), 'sculpt'), scan },
    molds: { [`${id}-mold`]: { no: 1, ...saidOf(wordsOf(molding), 'mold') } },
    castings: Object.fromEntries(castings),
    hand: { mold: `${id}-mold`, casting: castings.at(-1)![0] },
  };
}

const wordsOf = (words: readonly Word[]): Words =>
  words.reduce<Words>(said, { ...newWords(), ...shopWords(SAMPLE_SHOP) });

/** What was typed for a pour: foam, pack, temperatures, and whether the opening stayed open. */
function wordsOfPour({ foam, pack, roomC, moldC, opening }: PastPour): Word[] {
  const card = SAMPLE_SHOP.foams.find(({ name }) => name === foam);
  return [
    ...(card === undefined
      ? [{ do: 'foam', foam: { name: foam } } as const]
      : [{ do: 'card', card } as const]),
    { do: 'type', field: 'pack', text: String(pack) },
    { do: 'type', field: 'pourRoom', text: String(roomC) },
    { do: 'type', field: 'moldTemp', text: String(moldC) },
    ...(opening === 'open' ? [{ do: 'pourFact', fact: 'openingOpen', value: 'yes' } as const] : []),
  ];
}

/** Number 13 of the shop's book, after the last that was poured. */
function planned(piece: Piece): Piece {
  const next = nextCasting(piece, piece.hand.casting);
  const { [next.hand.casting]: begun, ...others } = next.castings;
  const id = `${piece.id}-13`;
  return {
    ...next,
    castings: { ...others, [id]: { ...begun!, no: 13 } },
    hand: { ...next.hand, casting: id },
  };
}
