import type { OpenedFigure } from '../../src/plan';

/** What is shown beside a figure, by its title. */
export type Of = (title: string) => number;

/** The inputs shown beside a figure; one that is asked for and not shown is a fault. */
export const inputsOf =
  ({ key, inputs }: OpenedFigure): Of =>
  (title) => {
    const found = inputs.find((one) => one.title === title);
    if (found === undefined) throw new Error(`${key} has no input ${title}`);
    return found.value;
  };
const phi = (z: number): number => 0.5 * erfc(-z / Math.SQRT2);
/** Numerical Recipes, fractional error under 1.2e-7. */
function erfc(x: number): number {
  const z = Math.abs(x);
  const t = 1 / (1 + z / 2);
  const of = [
    1.00002368, 0.37409196, 0.09678418, -0.18628806, 0.27886807, -1.13520398, 1.48851587, -0.82215223,
  ];
  const sum = [...of, 0.17087277].reduceRight((rest, c) => c + t * rest, 0);
  const value = t * Math.exp(-z * z - 1.26551223 + t * sum);
  return x >= 0 ? value : 2 - value;
}
const mixed = (v: Of, pack: string): number =>
  ((v('free rise') * v(pack) * (v('cavity') + v('riser'))) / 1000 + v('out of the vents')) /
    (1 - v('gas that leaves')) +
  v('residue in the cup');
const kept = (v: Of): number => Math.exp((-v('friction') * v('wrap') * Math.PI) / 180) * (1 - v('creep'));
const shift = (v: Of): number =>
  v('time of the card') * Math.exp((v('Ea') / v('R')) * (1 / v('T2, today') - 1 / v('T1, of the card')));

/** Each formula worked by hand, from nothing but the inputs that are shown beside it. */
export const BY_HAND: Readonly<Record<string, (v: Of) => number>> = {
  card_kg_m3: (v) => v('free rise'),
  station_kpa: (v) => 101.325 * (1 - (0.0065 * v('H, height above the sea')) / 288.15) ** 5.25588,
  free_rise_kg_m3: (v) => {
    const gas = 1 / v('free rise of the card') - 1 / v('liquid density');
    const air = v('p_card, air of the card') / v('p, air of the day');
    const warmth = v('T, gas at gel today') / v('T_card, gas at gel');
    return 1 / (1 / v('liquid density') + gas * air * warmth);
  },
  liquid_kg_m3: (v) => {
    const [a, b] = [v('a, parts A by weight'), v('b, parts B by weight')];
    return (a + b) / (a / v('density of A') + b / v('density of B'));
  },
  gas_loss: (v) =>
    ((0.0440095 * v('p, air at sea level')) / (8.31446261815324 * v('T, gas at gel'))) *
    (1 / v('free rise') - 1 / v('liquid density')),
  mixed_g: (v) => mixed(v, 'pack factor'),
  mixed_range_g: (v) => 1.6448536 * v('doubt of the mix') * v('mixed'),
  ratio_by_mass: (v) =>
    (v('a, parts A by volume') * v('density of A')) / (v('b, parts B by volume') * v('density of B')),
  part_a_g: (v) =>
    Math.round(
      (v('mixed in all') * v('parts A by weight')) / (v('parts A by weight') + v('parts B by weight')),
    ),
  part_b_g: (v) =>
    Math.round(
      (v('mixed in all') * v('parts B by weight')) / (v('parts A by weight') + v('parts B by weight')),
    ),
  molded_density_kg_m3: (v) => v('free rise') * v('pack factor'),
  in_mold_g: (v) => v('mixed') - v('residue in the cup'),
  least_pack: (v) => Math.max(1, v('minimum fill') / v('free rise')),
  short_fill_chance: (v) => phi(-Math.log(v('pack factor') / v('least pack')) / v('doubt of the pack')),
  just_fills_pack: (v) => v('least pack') * Math.exp(1.6448536 * v('doubt of the pack there')),
  just_fills_low_g: (v) => mixed(v, 'pack, least pack squared / pack of the high end'),
  just_fills_high_g: (v) => mixed(v, 'pack of the high end'),
  over_just_fills_g: (v) => v('mixed') - v('just fills, high end'),
  stiffness_ratio: (v) => (v('pack') / v('other pack')) ** v('power'),
  mix_price: (v) => (v('A') * v('price of A, a kilogram') + v('B') * v('price of B, a kilogram')) / 1000,
  failure_price: (v) => v('mix') + v('what else it costs'),
  expected_failure_price: (v) => v('chance of a short fill') * v('failed casting'),
  more_pack_price: (v) => (v('more mix') / v('mix in grams')) * v('mix'),
  more_pack_saves: (v) => (v('chance of a short fill') - v('chance with more pack')) * v('failed casting'),
  past_filled: () => 1,
  skin_pack: (v) =>
    1 + ((v('skin over core') - 1) * (v('depth of the skin') / 10) * v('surface')) / v('cavity'),
  advised_pack: (v) => v('pack of the skin') + v('margin'),
  pressure_kpa: (v) => {
    const f = v('free rise') / v('liquid density');
    const pack = v('pack factor');
    return v('p0, air outside') * ((pack * (1 - f)) / (1 - pack * f) - 1);
  },
  design_kpa: (v) => Math.max(v('peak pressure'), v('least pressure')),
  push_n: (v) => (v('pressure to plan for') * v('shadow along the opening')) / 10,
  clamp_n: (v) =>
    ((v('pressure to plan for') * v('shadow along the opening')) / 10) * v('safety') -
    (v('lid') / 1000) * 9.80665,
  straps_needed: (v) => Math.ceil(v('clamp force') / (2 * v('tension of one') * kept(v))),
  ratchets_needed: (v) => Math.ceil(v('clamp force') / (2 * v('tension of one') * kept(v))),
  strap_n: (v) => v('clamp force') / (2 * v('straps')) / kept(v),
  plug_n: (v) => (v('pressure to plan for') * v('area of the plug')) / 10,
  largest_mix_g: (v) => (v('liquid density') / 1000) * v('cup to its rim') * v('fill'),
  cups: (v) => {
    let cups = 1;
    while (v('what leaves the cups for the mold') / cups + v('residue of a cup') > v('largest mix')) cups++;
    return cups;
  },
  cup_a_g: (v) => {
    const [a, b] = [v('a, parts A by weight'), v('b, parts B by weight')];
    return Math.round((v('mix in a cup') * a) / (a + b));
  },
  cup_b_g: (v) => {
    const [a, b] = [v('a, parts A by weight'), v('b, parts B by weight')];
    return Math.round((v('mix in a cup') * b) / (a + b));
  },
  cup_liquid_cm3: (v) => (1000 * v('mix in a cup')) / v('liquid density'),
  cream_s: shift,
  open_min: shift,
  pour_window_s: (v) => v('cream time today') - v('mixing') - v('carrying') - v('margin'),
  core_rise_k: (v) => {
    const n = (v('a, share of A in the mix') * v('NCO in part A')) / 42.0168;
    const w = ((1 - v('a, share of A in the mix')) * v('water in part B')) / 18.01528;
    const heat = (n - 2 * w) * v('heat of urethane') + w * v('heat of water');
    return (1e6 * heat) / v('cp, heat capacity');
  },
  core_c: (v) => v('A and B as mixed') + v('rise'),
  contact_c: (v) => {
    const [mold, mix] = [v('b_mold, silicone'), v('b_mix')];
    return (mix * v('T_mix') + mold * v('T_mold')) / (mix + mold);
  },
  color_1_g: (v) => v('share') * v('B'),
  color_1_drops: (v) => Math.round(v('grams') / v('a drop')),
  ratio_doubt: (v) => ((2 * v('step')) / Math.sqrt(6)) * Math.hypot(1 / v('A'), 1 / v('B')),
  cup_share: (v) => v('liquid') / v('cup'),
  pour_time_s: (v) => v('mix in a cup') / v('rate'),
  pigment_share: (v) =>
    (v('Moss, of B') * v('b, parts B by weight')) / (v('a, parts A by weight') + v('b, parts B by weight')),
  panel_mpa: (v) => ((v('factor') * v('pressure to plan for')) / 1000) * (v('span') / v('thickness')) ** 2,
};
