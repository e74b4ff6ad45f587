import type { Assumption } from '../estimate';
import {
  formatDensity,
  formatLength,
  formatQuantity,
  formatTemperature,
  formatVolume,
  type Show,
} from '../units';
import { amount, percent } from './sentence';
import { unitSign } from './unitSign';

/** What was taken for granted, as a person reads it: "residue: 30 g", "doubt of the free rise: 8 %". */
export function assumptionWords(assumption: Assumption, show: Show = 'metric'): string {
  return `${subjectOf(assumption.name)}: ${WHOLE[`${assumption.name} ${assumption.value}`] ?? valueWords(assumption, show)}`;
}

/** The same with where the figure comes from: "residue: 30 g (common practice, no source)". */
export function assumptionLine(assumption: Assumption & { basis?: string }, show?: Show): string {
  const words = assumptionWords(assumption, show);
  return assumption.basis === undefined ? words : `${words} (${assumption.basis})`;
}

/** Names that do not read well as they stand. */
const SUBJECTS: Readonly<Record<string, string>> = {
  type: 'type of the mold',
  base: 'base of the mold',
  parts: 'parts of the mold, or pieces of its jacket',
  shape: 'box or cylinder',
  pull: 'pull of the jacket',
  fill: 'undercuts filled with',
  draft_degrees: 'draft of the jacket',
  skin_mm: 'skin thickness',
  first_coat_mm: 'first coat',
  coat_mm: 'each further coat',
  flange_mm: 'flange width',
  jacket_mm: 'jacket thickness',
  wall_mm: 'wall around the sculpt',
  cover_mm: 'rubber over the top',
  under_mm: 'rubber under a free sculpt',
  parting_mm: 'parting plane over the lowest point',
  spout_mm: 'spout, diameter',
  funnel_mm: 'pour funnel, diameter',
  riser_mm: 'risers, diameter',
  riser_tall_mm: 'funnel and risers over the jacket',
  risers: 'number of risers',
  silicone_ratio: 'ratio of the silicone',
  silicone_waste: 'silicone that ends beside the mold',
  silicone_cup_loss_g: 'silicone left in each cup',
  silicone_mix_min: 'time of mixing',
  silicone_degas_min: 'time of degassing',
  silicone_brush_g_per_min: 'silicone brushed on in a minute',
  silicone_pour_g_per_min: 'silicone poured in a minute',
  silicone_froth_ratio: 'swelling of the mix under vacuum',
  silicone_stir_ratio: 'room for stirring, cup over mix',
  silicone_viscosity_pa_s: 'viscosity of the silicone',
  silicone_cure: 'cure of the silicone',
  silicone_growth_per_k: 'growth of the rubber in length, a degree',
  pot_life_at_c: 'temperature the pot life holds at',
  pot_life_halves_k: 'pot life halves for so much more warmth',
  room_c: 'temperature of the room',
  casting_temp_c: 'mold when the foam is poured',
  scale_step_g: 'step of the scale',
  box_material: 'walls of the box',
  box_board_mm: 'thickness of the walls of the box',
  jacket_material: 'jacket',
  water_per_plaster: 'water to plaster, by mass',
  clay_density_kg_m3: 'density of the clay',
  texture_factor: 'real surface over that of the scan',
  adhesive_g_per_m2: 'glue on each face of a seam',
  cup_fill: 'liquid in the mixing cup, of its volume',
  mixers: 'persons who mix at the same time',
  pour_rate: 'mix poured',
  pour_margin: 'margin before the mix creams',
  strap_tension: 'what a strap is tightened to',
  strap_friction: 'friction of the straps',
  strap_wrap_degrees: 'wrap of a strap from buckle to far crossing',
  strap_loss: 'tension that straps lose',
  skin_depth_mm: 'depth of the skin of the casting',
  skin_over_core: 'density of the skin over that of the core',
  pack_margin: 'margin of the pack beyond the skin',
  drop_g: 'mass of a drop',
  surroundings: 'what the mold is warmed in',
  warm_sides: 'faces of the mold in the warm air',
  opening_diameter: 'width of the opening',
  opening_length: 'length of the tube that is poured through',
  head: 'liquid over the opening while you pour',
  pour_up: 'up when poured, of the sculpt as it stands',
  pour_within: 'time to pour',
  thin: 'foam counts as thin below',
  vent_diameter: 'width of a vent',
  elongation_at_break: 'stretch of the rubber at break',
  squash: 'what the foam gives of its girth when squeezed',
};

/** What a value of a name means, where the number or the word alone does not say it. */
const WHOLE: Readonly<Record<string, string>> = {
  'base open': 'open, the sculpt stands on the board',
  'parting_mm 0': 'at half the height',
  'shape least': 'the one that takes least rubber',
  'opening base': 'in the middle of the base',
  'opening summit': 'at the highest point',
  'pull best': 'the best one, by search',
};

const subjectOf = (name: string): string =>
  SUBJECTS[name] ??
  name
    .replace(/_(kg_m3|cm3|g_per_m2|g_per_min|g|mm|c|k|min|degrees|pa_s)$/, '')
    .replace(/^u_/, 'doubt of the ')
    .replace('min_fill', 'minimum-fill density')
    .replace(/_/g, ' ');

/** Names of plain factors: below 1 they are no share. */
const FACTORS: readonly string[] = ['water_per_plaster', 'texture_factor', 'strap_friction', 'pack_margin'];

/** Shares that may be more than all. */
const PERCENTS: readonly string[] = ['elongation_at_break'];

/** Masses stay in grams, which is what the scale shows. */
function valueWords({ name, value, unit }: Assumption, show: Show): string {
  if (typeof value === 'string') return value;
  if (PERCENTS.includes(name)) return percent(value);
  if (unit === '') return value < 1 && !FACTORS.includes(name) ? percent(value) : amount(value);
  if (unit === '1/K') return `${percent(value)} per K`;
  if (show === 'us') {
    const us = US[unit]?.(value);
    if (us !== undefined) return us;
  }
  return `${amount(value)} ${unitSign(unit)}`;
}

const US: Readonly<Partial<Record<string, (value: number) => string>>> = {
  'kg/m3': (value) => formatDensity(value, 'us'),
  cm3: (value) => formatVolume(value, 'us'),
  mm: (value) => formatLength(value, 'us'),
  C: (value) => formatTemperature(value, 'us'),
  K: (value) => formatQuantity('temperatureDifference', value, 'us'),
};
