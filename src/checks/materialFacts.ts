import type { DayOrNotYet } from './dates';
import { isAboveZero, isDay, isDayOrNotYet, isShare, isYesOrNo, isZeroOrMore, type IsUsable } from './usable';

/** Facts that are one of a few words; the form shows them in this order. */
export const MATERIAL_CHOICES = {
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

/** About the materials of one job. Nothing here is measured or worked out. */
export interface MaterialFactKinds {
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

export const MATERIAL_USABLE: Readonly<Record<keyof MaterialFactKinds, IsUsable>> = {
  barrierCoat: isYesOrNo,
  barrierDryMin: isZeroOrMore,
  patchTested: isYesOrNo,
  siliconeOpenedOn: isDayOrNotYet,
  moldMadeOn: isDayOrNotYet,
  today: isDay,
  thickestMm: isAboveZero,
  willPaint: isYesOrNo,
  paintIsFlexible: isYesOrNo,
  pigmentShare: isShare,
};
