import type { OpenedFigure } from '../../plan';
import type { BatchQuestion } from '../batch/marks';

/** Under which question each figure of the engine is opened. One may be under two: where it is told, and where it decides. */
const FIGURES_OF = {
  foam: ['card_kg_m3', 'ratio_by_mass', 'liquid_kg_m3'],
  pack: [
    'part_a_g',
    'part_b_g',
    'mixed_g',
    'molded_density_kg_m3',
    'stiffness_ratio',
    'short_fill_chance',
    'just_fills_low_g',
    'just_fills_high_g',
    'pressure_kpa',
    'clamp_n',
    'straps_needed',
    'mix_price',
    'failure_price',
    'expected_failure_price',
    'more_pack_price',
    'more_pack_saves',
    'past_filled',
    'skin_pack',
    'advised_pack',
  ],
  losses: ['mixed_g', 'in_mold_g', 'gas_loss', 'liquid_kg_m3'],
  day: ['station_kpa', 'free_rise_kg_m3', 'contact_c'],
  weigh: [
    'liquid_kg_m3',
    'gas_loss',
    'mixed_g',
    'mixed_range_g',
    'ratio_by_mass',
    'cup_g',
    'cup_a_g',
    'cup_b_g',
    'all_cups_g',
  ],
  short: [
    'least_pack',
    'short_fill_chance',
    'pack_sigma_share',
    'sigma_share',
    'just_fills_pack',
    'just_fills_low_g',
    'just_fills_high_g',
    'over_just_fills_g',
  ],
  cups: [
    'largest_mix_g',
    'cups',
    'cup_g',
    'cup_a_g',
    'cup_b_g',
    'all_cups_g',
    'cup_liquid_cm3',
    'cream_s',
    'pour_window_s',
  ],
  warm: ['warm_heated_min', 'warm_deep_min', 'warm_surface_c', 'pour_within_min', 'contact_c'],
  forces: [
    'pressure_kpa',
    'design_kpa',
    'push_n',
    'clamp_n',
    'straps_needed',
    'strap_n',
    'ratchets_needed',
    'plug_n',
  ],
  times: ['core_rise_k', 'core_c', 'open_min'],
  ready: [
    'ratio_doubt',
    'short_fill_chance',
    'cup_share',
    'pour_time_s',
    'pour_window_s',
    'panel_mpa',
    'strap_n',
    'plug_n',
    'core_c',
    'pigment_share',
  ],
} as const satisfies Partial<Record<BatchQuestion, readonly string[]>>;

export type SumPart = keyof typeof FIGURES_OF | 'colors';

/** The figures of one question, in the order in which they follow from each other. */
export const figuresIn = (figures: readonly OpenedFigure[], part: SumPart): OpenedFigure[] =>
  figures.filter(({ key }) => isIn(key, part));

const isIn = (key: string, part: SumPart): boolean =>
  part === 'colors' ? key.startsWith('color_') : (FIGURES_OF[part] as readonly string[]).includes(key);

export const SUM_PARTS = [...(Object.keys(FIGURES_OF) as (keyof typeof FIGURES_OF)[]), 'colors'] as const;
