import { numberedPours, type BookRow, type LearnedBook } from '../job/book';
import { formatTemperature, formatVolume, type Show } from '../units';
import {
  fillLearnedWords,
  freeRiseLearnedWords,
  goodOnlyWords,
  movedTogetherWords,
  nextPourWords,
  residueLearnedWords,
  samePackWords,
} from '../words/bookWords';
import { amount } from '../words/sentence';
import { aligned, line } from './moldLines';

/** A piece by its name, where the shop knows its id. */
export type NameOf = (piece: string | undefined) => string | undefined;

/** The rows for a person: a table of the pours, then cups and fills one a line. */
export function rowsText(rows: readonly BookRow[], show: Show, nameOf: NameOf): string[] {
  const pours = numberedPours(rows);
  const table = pours.map(({ no, row }) => [
    String(no),
    row.day ?? '-',
    nameOf(row.piece) ?? '-',
    row.foam ?? '-',
    number(row.pack),
    temperature(row.roomC, show),
    temperature(row.moldC, show),
    row.opening ?? '-',
    number(row.mixedG),
    number(row.residueG),
    number(row.castingG),
    number(row.trimG),
    row.filled ?? '-',
    number(row.skin),
    row.note ?? '',
  ]);
  return [
    ...(table.length === 0 ? [] : aligned(withoutEmpty([HEADS, ...table])).map((one) => `  ${one}`)),
    ...rows.flatMap((row) => testLine(row, show, nameOf)),
  ];
}

/** Columns that no row says anything in are left out. */
const withoutEmpty = (table: readonly (readonly string[])[]): string[][] =>
  table.map((row) => row.filter((_, n) => table.slice(1).some((other) => other[n] !== '-')));

const HEADS = [
  'No',
  'Day',
  'Piece',
  'Foam',
  'Pack',
  'Room',
  'Mold',
  'Opening',
  'Mixed, g',
  'Residue, g',
  'Casting, g',
  'Trim, g',
  'Filled',
  'Skin',
  'Note',
];

const number = (value: number | undefined): string => (value === undefined ? '-' : amount(value, 5));
const temperature = (value: number | undefined, show: Show): string =>
  value === undefined ? '-' : formatTemperature(value, show);

function testLine(row: BookRow, show: Show, nameOf: NameOf): string[] {
  if (row.kind === 'pour') return [];
  const water = row.waterG === undefined ? 'water not weighed' : `${amount(row.waterG)} g of water`;
  const at = row.waterTempC === undefined ? '' : ` at ${temperature(row.waterTempC, show)}`;
  if (row.kind === 'fill')
    return [
      line(
        'Water fill',
        [row.day, row.mold ?? nameOf(row.piece), `${water}${at}`].filter(Boolean).join(', '),
      ),
    ];
  const foams = (row.foamsG ?? []).map((foamG) => `${amount(foamG)} g`).join(', ');
  const room = row.roomC === undefined ? undefined : `room ${temperature(row.roomC, show)}`;
  return [
    line('Cup test', [row.day, row.foam, room, `cup of ${water}${at}`, foams].filter(Boolean).join(', ')),
  ];
}

/** What the book teaches, the one thing to change next last. */
export function learnText(learned: LearnedBook, show: Show, nameOf: NameOf): string[] {
  const { residue, foams, confounding, next } = learned;
  const { goodOnlyWith, samePack } = confounding;
  return [
    line('Residue', residueLearnedWords(residue)),
    ...foams.flatMap(({ foam, freeRise, card }) =>
      freeRise === undefined
        ? []
        : [line('Free rise', freeRiseLearnedWords(foam, freeRise, card?.freeRiseKgM3, show))],
    ),
    ...foams.flatMap(({ foam, fill, batches }) => [
      ...(fill?.atOdds === true
        ? [line('Look', `${foam}: the pours contradict cup and card. Ask which of them is wrong.`)]
        : []),
      ...batches.map((batch) => {
        const cavity = `${batch.mold ?? nameOf(batch.piece) ?? 'The cavity'}, ${formatVolume(batch.cavityCm3, show)}, in ${foam}`;
        const assumed = fill?.fellBack === true ? ' (under three pours: by cup or card alone)' : '';
        return line('Fill', `${fillLearnedWords(cavity, batch)}${assumed}`);
      }),
    ]),
    ...movedTogetherWords(confounding).map((text) => line('Together', text)),
    ...(goodOnlyWith === undefined ? [] : [line('Good', goodOnlyWords(goodOnlyWith, show))]),
    ...samePack.map((pair) => line('Pack', samePackWords(pair))),
    ...(next === undefined ? [] : nextPourWords(next, show).map((text) => line('Next', text))),
  ];
}
