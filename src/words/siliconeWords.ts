import type { SiliconeCode } from '../problem';
import { buyKg } from './buyKg';
import { amount, counted, percent } from './sentence';
import type { Sentence, Values } from './sentence';

export const SILICONE_WORDS: Record<SiliconeCode, (v: Values) => Sentence> = {
  SILICONE_CARD_FIELD: (v) => ({
    text: `The silicone card's ${String(v.field)} is missing or wrong: it needs ${String(v.need)}.`,
    hint: 'Correct it on the card from the data sheet.',
  }),
  MIX_BELOW_SCALE: (v) => ({
    text:
      `A mix of ${amount(v.mixG)} g is too small for a scale with steps of ${amount(v.stepG)} g: one step is more than ` +
      `${percent(v.errorShare)} of its smaller part. The smallest mix is ${roundedUp(v.smallestMixG)} g.`,
    hint: `Weigh on a finer scale, or mix ${roundedUp(v.smallestMixG)} g and use what is left over for a test piece.`,
  }),
  POT_LIFE_TOO_SHORT: (v) => ({
    text:
      `The pot life at the room's temperature is ${amount(v.potLifeMin, 3)} min, and mixing takes ${amount(v.mixMin)} min` +
      (Number(v.degasMin) > 0 ? `, degassing ${amount(v.degasMin)} min` : '') +
      ': nothing is left to brush or pour in.',
    hint:
      'Work in a cooler room, choose a slower catalyst by its data sheet, or mix a smaller cup that is stirred sooner' +
      (Number(v.degasMin) > 0 ? ' and poured in a thin stream instead of degassed.' : '.'),
  }),
  MIXES_TOO_MANY: (v) => ({
    text:
      `${amount(v.totalG)} g in mixes of at most ${amount(v.largestMixG, 3)} g would be more than ${amount(v.most)} mixes. ` +
      `The ${String(v.limitedBy)} sets that limit.`,
    hint:
      v.limitedBy === 'container'
        ? 'Take a larger mixing container.'
        : 'Use a silicone with a longer pot life, work faster or with more hands, or make the mold in parts.',
  }),
  COATS_DO_NOT_FIT: (v) => ({
    text: `A skin of ${amount(v.skinMm)} mm is thinner than its first coat of ${amount(v.firstCoatMm)} mm.`,
    hint: 'Give a thicker skin or a thinner first coat.',
  }),
  COAT_SAGS: (v) => ({
    text: `A coat of ${amount(v.coatMm, 3)} mm is thicker than the ${amount(v.staysMm, 2)} mm that stay on an upright wall: it runs down and leaves the high spots thin.`,
    hint: 'Thicken the mix as its data sheet allows, or brush more and thinner coats. A stick dipped upright for a minute shows what stays.',
  }),
  JACKET_HEAD: (v) => ({
    text: `Rubber poured ${amount(v.headMm, 3)} mm high presses with ${amount(v.pressureKPa, 2)} kPa at the foot of the jacket, apart and up.`,
    hint: 'Strap or bolt the jacket together and weigh it down on its board before you pour, seal its foot and seams, and keep clay at hand for leaks.',
  }),
  SILICONE_RATIO_BENT: (v) => ({
    text: `Weighed in steps of ${amount(v.stepG)} g, ${v.name} gets ${amount(v.baseG)} g of base and ${amount(v.catalystG)} g of catalyst: ${percent(v.error)} off the ratio.`,
    hint: 'Weigh the catalyst on a finer scale.',
  }),
  COAT_STICK_UNKNOWN: (v) => ({
    text: `Not checked whether a coat of ${amount(v.coatMm, 3)} mm stays on an upright wall.`,
    hint: 'Dip an upright stick in the thickened mix for a minute and measure what stays.',
  }),
  DEGAS_WEAK: (v) => ({
    text: `A vacuum of ${amount(v.pressureKPa, 3)} kPa absolute swells the bubbles without breaking them; ${amount(v.wantedKPa)} kPa or less is wanted.`,
    hint: 'Check pump, seal and oil. High above the sea a good vacuum reads less on a gauge: judge by the absolute pressure.',
  }),
  FILL_TOO_SLOW: (v) => ({
    text: `Through a tube of ${amount(v.diameterMm)} mm the rubber takes ${amount(v.fillMin, 2)} min to run in, and ${amount(v.leftMin, 2)} min of the pot life are left: it sets before the mold is full.`,
    hint: `Take a tube of ${roundedUp(v.leastTubeMm)} mm or wider, or several, or a thinner rubber; pour from a second cup only if the first still flows.`,
  }),
  FLOW_NOT_LAMINAR: (v) => ({
    text: `In a tube of ${amount(v.diameterMm)} mm a liquid of ${amount(v.viscosityPaS)} Pa s would not flow calmly (Reynolds number ${amount(v.reynolds, 2)}, ${amount(v.most)} at most): the formula does not hold.`,
    hint: 'Check the viscosity and its unit: 1 Pa s is 1000 cP. Silicone for molds has 10 to 40 Pa s.',
  }),
  KITS_UNKNOWN: (v) => ({
    text: `${buyKg(Number(v.needKg))} must be bought; what kits it comes in was not said.`,
    hint: 'Give the kit sizes, with prices if you can, for the cheapest cover.',
  }),
  KITS_NONE: (v) => ({
    text: `Not checked what to buy for ${buyKg(Number(v.needKg))}: the card has no kits.`,
    hint: 'Add the kit sizes to the card, in kg of base and catalyst together, with their prices.',
  }),
  KITS_UNPRICED: (v) => ({
    text: `${amount(v.unpriced)} of ${counted(v.of, 'kit')} ${v.of === 1 ? 'has' : 'have'} no price: chosen was what leaves the least over, then the fewest kits. It need not be the cheapest.`,
    hint: 'Add the prices to the card to compare costs.',
  }),
  SCULPT_FLOATS: (v) => ({
    text: `The sculpt is lighter than the rubber it displaces: it floats up with ${amount(v.forceN, 3)} N, like a weight of ${amount(v.weightKg, 2)} kg pulling upward.`,
    hint:
      `Screw it to the base board from below, or load it with ${amount(v.holdKg, 2)} kg (${amount(v.holdN, 2)} N, ` +
      `${amount(v.safety)} times the lift), before the rubber goes in. Glue or clay alone can let go during the cure.`,
  }),
  SCULPT_MASS_UNKNOWN: (v) => ({
    text: `Not checked whether the sculpt floats: its mass is not known. Under ${amount(v.submergedCm3)} cm³ of rubber it stays down by itself from ${amount(Number(v.needG) / 1000, 3)} kg.`,
    hint: 'Weigh it with its board fixings and give the mass, or screw it to the base board in any case.',
  }),
  WALL_BULGES: (v) => ({
    text:
      `${String(v.material)} of ${amount(v.wallMm)} mm over a free span of ${amount(v.wallWidthMm)} mm ` +
      (Number(v.bulgeMm) > Number(v.givesWayMm)
        ? `gives way: by the formula it would bow out by more than ${amount(v.givesWayMm)} mm.`
        : `bows out by about ${amount(v.bulgeMm, 2)} mm, ${amount(v.bulgeHighMm, 2)} mm if the board is a soft one; ` +
          `${amount(v.limitMm)} mm is wanted. The bulges of all four walls take about ${amount(v.extraRubberCm3, 2)} cm³ more rubber.`),
    hint:
      `Take ${amount(Math.ceil(Number(v.neededWallMm)))} mm, or brace or band it: first ${amount(v.forceHeightMm, 2)} mm above the base, ` +
      `where the push acts, and so that no free span is wider than ${amount(Math.floor(Number(v.largestSpanMm)))} mm.`,
  }),
  BOX_LEAKS: (v) => ({
    text: `Not checked whether the seams of the box are tight: at the base they must hold ${amount(v.rubberHeightMm)} mm of rubber, ${amount(v.pressureKPa, 2)} kPa, until it has cured.`,
    hint: 'Seal every seam from inside, tape or clamp it from outside, the lowest first; keep sulfur-free clay at hand and stay with it for the first minutes.',
  }),
  LIFT_HEAVY: (v) => ({
    text: `The mold weighs ${amount(v.massKg, 3)} kg, more than the ${amount(v.lookKg)} kg one person should lift.`,
    hint:
      Number(v.massKg) > 2 * Number(v.lookKg)
        ? 'That is more than two persons should lift: hoist or lift table, and someone who knows how to sling a load. Make the jacket in lighter pieces if you can.'
        : 'Two persons, or a trolley at table height. Lift at the jacket, never at the rubber, and plan where it is set down.',
  }),
  SHRINK_ASSUMED: (v) => ({
    text:
      `The shrink of the mold was not given; ${percent(v.share)} in length was taken for ${String(v.cure)} cure, ` +
      `${percent(v.low)} to ${percent(v.high)} being usual.` +
      (v.cure === 'condensation'
        ? ' Sources disagree widely here: some mean length and some volume (three times as much), and they measure at ' +
          'different ages, while the rubber goes on losing what its cure sets free for weeks.'
        : ''),
    hint:
      'Measure the same length on the sculpt and in the mold, on the day of casting, and give the difference as a share. ' +
      'A skin keyed into a rigid jacket shrinks less than a block.',
  }),
};

/** A least figure is never rounded down in words. */
const roundedUp = (value: number | string | undefined): string =>
  typeof value === 'number' ? amount(ceilTo3(value)) : amount(value);

function ceilTo3(value: number): number {
  const step = 10 ** (Math.floor(Math.log10(value)) - 2);
  return Math.ceil((value / step) * (1 - 1e-12)) * step;
}
