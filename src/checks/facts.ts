import { isDate } from './dates';

/** Facts that are one of a few words; the form shows them in this order. */
export const CHOICES = {
  siliconeCure: ['condensation', 'addition'],
  sculptSurface: [
    'sulfur clay',
    'sulfur-free clay',
    'wax',
    'resin print',
    'printed filament',
    'epoxy',
    'plaster',
    'wood',
    'condensation silicone',
    'addition silicone',
    'latex or rubber',
    'painted or sealed',
  ],
  gloves: ['nitrile', 'latex', 'vinyl', 'none'],
  release: ['silicone', 'silicone-free', 'wax or polyurethane type', 'none'],
  pigmentKind: [
    'none',
    'paste in polyol or plasticizer',
    'silicone based',
    'oil color',
    'water based',
    'other',
  ],
} as const;

type Choices = { -readonly [N in keyof typeof CHOICES]: (typeof CHOICES)[N][number] };

/** Day as YYYY-MM-DD (ISO 8601), or that it has not come. */
export type DayOrNotYet = string;
export const NOT_YET = 'not yet';

/** Plain facts about the materials of one job. Nothing here is measured or worked out. */
interface Facts extends Choices {
  /** A coat that keeps the silicone off the surface of the sculpt (acrylic, shellac). */
  barrierCoat: boolean;
  /** Since the last barrier coat, min. */
  barrierDryMin: number;
  /** A spot of this silicone, as it is today, cured through on this surface as it will be cast. */
  patchTested: boolean;
  /** When the silicone in use was first opened. */
  siliconeOpenedOn: DayOrNotYet;
  /** When the mold was cast. */
  moldMadeOn: DayOrNotYet;
  /** Day the checks are made for; passed in, never read from the clock. */
  today: string;
  /** Thickest place of the silicone, mm. */
  thickestMm: number;
  willPaint: boolean;
  paintIsFlexible: boolean;
  /** Mass of pigment to mass of the whole mix of A and B, 0..1. */
  pigmentShare: number;
}

export type FactName = keyof Facts;
export type MaterialFacts = { readonly [N in FactName]?: Facts[N] | undefined };
export type Surface = Facts['sculptSurface'];
export type Cure = Facts['siliconeCure'];

/** Whether a given fact is one that a check can use: a listed word, a day of the calendar, a number in its bounds. */
export function isUsable(name: FactName, value: unknown): boolean {
  if (name in CHOICES) return (CHOICES[name as keyof Choices] as readonly unknown[]).includes(value);
  return USABLE[name as keyof typeof USABLE](value);
}

/** Absent: nothing was said. A saved job writes null. */
export const isAbsent = (value: unknown): boolean => value === undefined || value === null;

const yesOrNo = (value: unknown): boolean => typeof value === 'boolean';
const day = (value: unknown): boolean => typeof value === 'string' && isDate(value);
const dayOrNotYet = (value: unknown): boolean => value === NOT_YET || day(value);
const number = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value);

const USABLE: Readonly<Record<Exclude<FactName, keyof Choices>, (value: unknown) => boolean>> = {
  barrierCoat: yesOrNo,
  barrierDryMin: (value) => number(value) && value >= 0,
  patchTested: yesOrNo,
  siliconeOpenedOn: dayOrNotYet,
  moldMadeOn: dayOrNotYet,
  today: day,
  thickestMm: (value) => number(value) && value > 0,
  willPaint: yesOrNo,
  paintIsFlexible: yesOrNo,
  pigmentShare: (value) => number(value) && value >= 0 && value <= 1,
};
