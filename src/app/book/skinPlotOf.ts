import type { LearnedBook, PourRow } from '../../job/book';
import type { OneChange } from '../../yield';
import { LEARN_RULES } from '../../yield';
import type { Sheet } from '../charts/sheet';
import { about, type DotChart } from './dotChart';

/** A pour of which pack, mold and skin are known. */
export interface SkinPour {
  no: number;
  moldC: number;
  packFactor: number;
  skin: number;
  foam: string;
  opening: string;
}

/** Pours by their settings and what came of them; of one foam, or of all. */
export const skinPours = ({ pours }: Pick<LearnedBook, 'pours'>, foam: string | undefined): SkinPour[] =>
  pours.flatMap(({ no, row, sound }) => {
    const { moldC, pack, skin, foam: of = 'not said', opening = 'not said' } = sound;
    if (row.isLeftOut === true || moldC === undefined || pack === undefined || skin === undefined) return [];
    return foam === undefined || of === foam
      ? [{ no, moldC, packFactor: pack, skin, foam: of, opening }]
      : [];
  });

/** Degrees and packs that an axis shows at least: so that pours that are alike lie together. A choice of ours. */
const LEAST_SPAN_C = 12;
const LEAST_SPAN_PACK = 0.2;

/** Each pour as its skin score, bold from 3 up; a ring where the next would land. */
export function skinPlot(
  pours: readonly SkinPour[],
  change: OneChange | undefined,
  base: PourRow | undefined,
): { chart: DotChart; sheet: Sheet } {
  const next = placeOf(change, base);
  const all = [...pours, ...(next === undefined ? [] : [next])];
  return {
    chart: {
      x: {
        label: 'mold, °C',
        domain: about(
          all.map(({ moldC }) => moldC),
          LEAST_SPAN_C,
        ),
        digits: 3,
      },
      y: {
        label: 'pack factor',
        domain: about(
          all.map(({ packFactor }) => packFactor),
          LEAST_SPAN_PACK,
        ),
        decimals: 2,
      },
      dots: pours.map(({ moldC, packFactor, skin }) => ({
        x: moldC,
        y: packFactor,
        text: String(skin),
        ...(skin >= LEARN_RULES.goodSkin.value ? { isStrong: true } : {}),
      })),
      ...(next === undefined
        ? {}
        : { ring: { x: next.moldC, y: next.packFactor, words: 'the next pour would land here' } }),
    },
    sheet: {
      heads: ['Pour', 'Foam', 'Pack factor', 'Mold, °C', 'Neck', 'Skin'],
      rows: [
        ...pours.map(({ no, foam, packFactor, moldC, opening, skin }) => [
          String(no),
          foam,
          packFactor,
          moldC,
          opening,
          skin,
        ]),
        ...(next === undefined ? [] : [['next', base?.foam ?? '', next.packFactor, next.moldC, '', '']]),
      ],
    },
  };
}

function placeOf(
  change: OneChange | undefined,
  base: PourRow | undefined,
): { moldC: number; packFactor: number } | undefined {
  const moldC = change?.factor === 'moldC' ? change.to : base?.moldC;
  const packFactor = change?.factor === 'packFactor' ? change.to : base?.pack;
  return change === undefined || moldC === undefined || packFactor === undefined
    ? undefined
    : { moldC, packFactor };
}
