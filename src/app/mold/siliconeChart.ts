import type { LadderOfType, SiliconeNeed, siliconeAt } from '../../plan';
import { amount } from '../../words/sentence';
import type { Sheet } from '../charts/sheet';
import { buyShort, kgWords } from '../words/moldFigures';

/** Silicone to mix at one thickness. */
export interface SiliconeDot {
  mm: number;
  kg: number;
}

/** What the stock or the kits hold: a level line. */
export interface Holds {
  kg: number;
  text: string;
}

/** Silicone against thickness, as far as it is drawn. */
export interface SiliconeChartData {
  /** "Skin thickness". */
  label: string;
  dots: SiliconeDot[];
  /** Between the dots; none where there are too few. */
  curve: SiliconeDot[];
  here: SiliconeDot & { isAbout: boolean };
  holds: Holds[];
  /** Too far up to be drawn beside the dots. */
  above: Holds[];
  topMm: number;
  topKg: number;
  /** All rungs, also those that are not drawn. */
  all: SiliconeDot[];
}

type NeedAt = (mm: number) => ReturnType<typeof siliconeAt>;

/** Drawn to here at least, mm, and to so many times this thickness: the thickest rungs would press all others into a corner. Chosen here. */
const [LEAST_TOP_MM, TOP_TIMES] = [22, 1.5];
/** No curve through fewer dots. */
const LEAST_DOTS = 6;
/** A level line so much higher than the dots is told in words. Chosen here. */
const HIGHEST_TIMES = 1.5;
const AIR = 1.08;
/** Places of the curve between two dots. Chosen here. */
const BETWEEN = 4;

/** Measured rungs and the curve between them: of the ladder and the silicone, whatever thickness is chosen. */
export function siliconeCurve(ladder: LadderOfType, needAt: NeedAt): (SiliconeDot & { isRung: boolean })[] {
  const mms = ladder.rungs.map(({ thicknessMm }) => thicknessMm);
  const between = mms.flatMap((mm, i) => {
    const next = mms[i + 1];
    if (next === undefined) return [];
    return Array.from({ length: BETWEEN - 1 }, (_, n) => mm + ((n + 1) / BETWEEN) * (next - mm));
  });
  return [...mms, ...between]
    .sort((a, b) => a - b)
    .flatMap((mm) => {
      const need = needAt(mm);
      return need.ok ? [{ mm, kg: need.value.totalG / 1000, isRung: mms.includes(mm) }] : [];
    });
}

export function siliconeChartOf(
  points: ReturnType<typeof siliconeCurve>,
  { label, mm, need, isAbout }: { label: string; mm: number; need: SiliconeNeed; isAbout: boolean },
): SiliconeChartData {
  const all = points.filter(({ isRung }) => isRung).map(plain);
  const wantedMm = Math.max(LEAST_TOP_MM, TOP_TIMES * mm);
  const topMm = all.find((dot) => dot.mm >= wantedMm)?.mm ?? all.at(-1)?.mm ?? wantedMm;
  const isShown = (dot: SiliconeDot): boolean => dot.mm <= topMm;
  const dots = all.filter(isShown);
  const here = { mm, kg: need.totalG / 1000, isAbout };
  const highest = Math.max(here.kg, ...dots.map(({ kg }) => kg));
  const levels = holdsOf(need);
  const holds = levels.filter(({ kg }) => kg <= HIGHEST_TIMES * highest);
  return {
    label,
    dots,
    curve: dots.length < LEAST_DOTS ? [] : points.filter(isShown).map(plain),
    here,
    holds,
    above: levels.filter((level) => !holds.includes(level)),
    topMm,
    topKg: AIR * Math.max(highest, ...holds.map(({ kg }) => kg)),
    all,
  };
}

const plain = ({ mm, kg }: SiliconeDot): SiliconeDot => ({ mm, kg });

function holdsOf({ stock, purchase }: SiliconeNeed): Holds[] {
  const stockKg = stock?.usableKg ?? 0;
  return [
    ...(stockKg > 0 ? [{ kg: stockKg, text: `the stock makes ${amount(stockKg, 3)} kg` }] : []),
    ...(purchase === undefined
      ? []
      : [
          {
            kg: stockKg + purchase.totalKg,
            text: `${stockKg > 0 ? 'stock and ' : ''}${buyShort(purchase)}${purchase.kitCount > 1 || stockKg > 0 ? ` make ${amount(stockKg + purchase.totalKg, 3)} kg` : ''}`,
          },
        ]),
  ];
}

export const kgText = (kg: number): string => {
  const massG = 1000 * kg;
  return kgWords({ value: massG, low: massG, high: massG }).value;
};

/** "this mold, 6 mm:", and below "about 1.48 kg". */
export const hereWords = ({ mm, kg, isAbout }: SiliconeChartData['here']): string =>
  `this mold, ${amount(mm)} mm:\n${isAbout ? 'about ' : ''}${kgText(kg)} kg`;

export function siliconeSheet({ all, here, holds, above }: SiliconeChartData): Sheet {
  return {
    heads: ['What', 'Thickness, mm', 'Silicone, kg'],
    rows: [
      ...all.map(({ mm, kg }) => ['measured', mm, Number(kg.toFixed(3))]),
      [here.isAbout ? 'this mold, about' : 'this mold', here.mm, Number(here.kg.toFixed(3))],
      ...[...holds, ...above].map(({ kg, text }) => [text, '', Number(kg.toFixed(3))]),
    ],
  };
}

/** The chart for who cannot see it. */
export function siliconeChartAlt({ label, dots, here, holds }: SiliconeChartData): string {
  const measured = dots.map(({ mm, kg }) => `${amount(mm)} mm takes ${kgText(kg)} kg`);
  return [
    `${label} and silicone: ${measured.join(', ')}.`,
    `${hereWords(here).replace('\n', ' ')}.`,
    ...holds.map(({ text }) => `A level line: ${text}.`),
  ].join(' ');
}
