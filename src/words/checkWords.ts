import type { CureCase } from '../checks/cureInhibition';
import type { GloveCase } from '../checks/gloves';
import type { MoldAgeCase } from '../checks/moldLife';
import type { PaintCase } from '../checks/paintFlex';
import type { PigmentCase } from '../checks/pigment';
import type { ReleaseCase } from '../checks/releaseForPaint';
import type { ShelfCase } from '../checks/shelfLife';
import type { ThickCase } from '../checks/thickCondensation';
import type { CheckCode } from '../problem';
import { monthsAgo, monthsOver } from './ageWords';
import { byCase, type Words } from './byCase';
import { CURE_WORDS, riskWords } from './cureWords';
import {
  AIR_WORDS,
  CUP_TEST_WORDS,
  CUP_WORDS,
  FOAM_AGE_WORDS,
  MIXING_WORDS,
  PACK_WORDS,
  RATIO_ORDER_WORDS,
  SCALE_WORDS,
  SHORT_FILL_WORDS,
  WINDOW_WORDS,
  windowStake,
} from './foamCheckWords';
import {
  dampStake,
  DAMP_WORDS,
  exothermStake,
  EXOTHERM_WORDS,
  fireStake,
  FIRE_WORDS,
  moldTempStake,
  MOLD_TEMP_WORDS,
  openingStake,
  OPENING_WORDS,
  PANEL_WORDS,
  plugStake,
  PLUG_WORDS,
  sealedStake,
  SEALED_WORDS,
  STRAP_WORDS,
} from './moldCheckWords';
import {
  CEILING_WORDS,
  demoldStake,
  DEMOLD_WORDS,
  LIQUID_WORDS,
  OPENING_SIZE_WORDS,
  openingSizeStake,
  SLENDER_WORDS,
  THIN_CASTING_WORDS,
  THIN_RUBBER_WORDS,
  trapStake,
  TRAP_WORDS,
} from './openingCheckWords';
import { amount, counted, percent, type Sentence, type Values } from './sentence';

const GLOVE_WORDS: Words<GloveCase> = {
  right: (v) => ({
    text: `Gloves of ${v.gloves} suit ${v.cure} cure.`,
    hint: 'The data sheet of the silicone has the last word on gloves. A new brand of gloves: touch the sculpt only after a patch test.',
  }),
  'latex with addition cure': () => ({
    text: 'Latex gloves can leave sulfur on all they touch, and sulfur stops addition cure.',
    hint: 'Change to nitrile or vinyl before you touch sculpt, cups or silicone; wipe down what latex has touched and make a patch test.',
  }),
  latex: () => ({
    text: 'Latex gloves do not harm condensation cure; they would harm addition cure in the same shop.',
    hint: 'Take nitrile gloves, or those the data sheet names for the catalyst.',
  }),
  'bare hands': (v) => ({
    text: `No gloves with ${v.cure}-cure silicone${v.cure === 'condensation' ? ': its tin catalyst is toxic and harms skin and eyes' : ': it stays on the skin and gets everywhere'}.`,
    hint: 'Wear nitrile gloves, or those the data sheet names, and keep a spare pair in reach.',
  }),
};

const THICK_WORDS: Words<ThickCase> = {
  addition: () => ({
    text: 'Addition cure needs no moisture: a thick place cures like a thin one.',
    hint: 'The time on the data sheet holds.',
  }),
  thin: (v) => ({
    text: `The thickest silicone is ${amount(v.thickestMm, 3)} mm, within the ${amount(v.limitMm)} mm that condensation cure is taken to manage in its usual time.`,
    hint: 'Cold or dry air still slows it.',
  }),
  thick: (v) => ({
    text: `The thickest silicone is ${amount(v.thickestMm, 3)} mm, ${amount(v.overMm, 3)} mm over the ${amount(v.limitMm)} mm limit: condensation cure needs moisture, and gives off alcohol, through all of it.`,
    hint: 'Fill the bulk with cured rubber or build it in coats, or leave it open to the air for longer than the data sheet says; press the thickest place before you open it.',
  }),
};

const SHELF_WORDS: Words<ShelfCase> = {
  unopened: (v) => ({
    text: 'The silicone is not opened yet: the date on its label counts.',
    hint: `Write the day on it when you open it; from ${counted(v.lookMonths, 'month')} on it wants a test.`,
  }),
  fresh: (v) => ({
    text: `The silicone was opened ${monthsAgo(v)}, less than the ${counted(v.lookMonths, 'month')} after which it wants a test.`,
    hint: 'Close it well after each use. A date on the label that comes sooner counts.',
  }),
  aging: (v) => ({
    text: `The silicone was opened ${monthsAgo(v)}: past ${counted(v.lookMonths, 'month')} it may cure late, or not.`,
    hint: 'Mix a small test cup and let it cure through before you pour the mold.',
  }),
  'old, patch cured': (v) => ({
    text: `The silicone was opened ${monthsAgo(v)}, ${monthsOver(v)}; a patch test of it has cured.`,
    hint: 'Pour only if that test was made these days, with this lot of both parts; expect another working time.',
  }),
  old: (v) => ({
    text: `The silicone was opened ${monthsAgo(v)}, ${monthsOver(v)}, and no patch test of it has cured.`,
    hint: 'Make a patch test and pour only if it cures through; else buy fresh silicone, both parts.',
  }),
};

const MOLD_AGE_WORDS: Words<MoldAgeCase> = {
  addition: () => ({
    text: 'A mold of addition-cure silicone outlasts one of condensation cure; we know no figure for it.',
    hint: 'Bend it and look for small tears before each casting.',
  }),
  'not made': (v) => ({
    text: `The mold is not made yet. One of condensation cure lasts ${amount(v.fromYears)} to ${amount(v.toYears)} years before it tears; one of addition cure keeps longer, no figure is known.`,
    hint: 'Write the day on the mold when it is cast.',
  }),
  young: (v) => ({
    text: `The mold is ${years(v)} old, younger than the ${counted(v.fromYears, 'year')} at which molds of condensation cure may begin to tear.`,
    hint: 'Bend it and look for small tears before each casting.',
  }),
  aging: (v) => ({
    text: `The mold is ${years(v)} old: molds of condensation cure tear after ${amount(v.fromYears)} to ${amount(v.toYears)} years.`,
    hint: 'Bend the thin places and look for tears; measure it, as it shrinks with age; keep the sculpt for the next mold.',
  }),
  'past the usual': (v) => ({
    text: `The mold is ${years(v)} old, past the ${counted(v.toYears, 'year')} that molds of condensation cure are known to last.`,
    hint: 'Expect it to tear. Measure and bend it before you trust it with a batch, or cast a new mold.',
  }),
};

const RELEASE_WORDS: Words<ReleaseCase> = {
  'no paint': () => ({
    text: 'The casting is not painted: any release that suits the foam will do.',
    hint: 'Ask again if that changes; silicone release does not wash out.',
  }),
  'silicone-free': () => ({
    text: 'The release is free of silicone, as paint wants it.',
    hint: 'Wash the casting before you paint all the same.',
  }),
  'no release': () => ({
    text: 'No release is left on the casting for paint to slip on.',
    hint: 'Cast one test piece: foam begins to hold on to silicone that is used bare.',
  }),
  'wash it off': () => ({
    text: 'Wax or release of the polyurethane type stays on the casting, and paint does not hold on it.',
    hint: 'Wash the casting, let it dry, and try the paint on a place that does not show.',
  }),
  silicone: () => ({
    text: 'Silicone release goes into the skin of the foam, and paint crawls off it or peels.',
    hint: 'Clean the mold and use a release free of silicone before you pour. A casting that has it: try the paint on a place that does not show.',
  }),
};

const PAINT_WORDS: Words<PaintCase> = {
  'no paint': () => ({ text: 'The casting is not painted.', hint: 'Nothing to do.' }),
  flexible: () => ({
    text: 'The paint stays flexible, as the foam does.',
    hint: 'Paint a swatch of foam, let it dry, and bend it further than the piece will bend.',
  }),
  stiff: () => ({
    text: 'The paint dries stiff and the foam bends: it will crack.',
    hint: 'Take a flexible binder, or add the flexible medium its maker names; bend a painted swatch first.',
  }),
};

const PIGMENT_WORDS: Words<PigmentCase> = {
  none: () => ({ text: 'No pigment goes into the foam.', hint: 'Nothing to do.' }),
  silicone: () => ({
    text: 'Pigment in silicone oil breaks the cells: the oil pushes away what holds the bubbles, and the foam can collapse at any amount.',
    hint: 'Use a dry paste in polyol or plasticizer, made for polyurethane.',
  }),
  oil: () => ({
    text: 'Oil color is not made for polyurethane: its oil disturbs the cells at any amount.',
    hint: 'Use a dry paste in polyol or plasticizer, made for polyurethane.',
  }),
  water: (v) => ({
    text: `Water in the pigment, as in acrylic color, reacts with part A: each gram of it makes ${amount(v.gasLPerG, 3)} liters of gas and uses up isocyanate.`,
    hint: 'Never in the mix, at any amount. Use a dry paste in polyol or plasticizer, made for polyurethane.',
  }),
  little: (v) => ({
    text: `Pigment is ${percent(v.share)} of the mix, within ${percent(v.lookShare)}.`,
    hint: 'Weigh it into part B, do not count drops, and leave the ratio A:B as it is.',
  }),
  'of unknown make': (v) => ({
    text: `Pigment is ${percent(v.share)} of the mix; what it is made with is not known.`,
    hint: 'Ask its maker whether it is dry and holds nothing that reacts with isocyanate, and foam a test cup first.',
  }),
  much: (v) => ({
    text: `Pigment is ${percent(v.share)} of the mix, over the ${percent(v.lookShare)} that is usual.`,
    hint: `Take a stronger pigment, or foam a test cup and use its density. Over ${percent(v.stopShare)}: do not.`,
  }),
  'too much': (v) => ({
    text: `Pigment is ${percent(v.share)} of the mix, over the limit of ${percent(v.stopShare)}: the foam may not rise or cure.`,
    hint: `Cut it to ${percent(v.lookShare)} or less, or take a stronger pigment.`,
  }),
};

export const CHECK_WORDS: Record<CheckCode, (v: Values) => Sentence> = {
  CURE_INHIBITION: byCase(CURE_WORDS satisfies Words<CureCase>, riskWords),
  GLOVES: byCase(GLOVE_WORDS),
  THICK_CONDENSATION: byCase(THICK_WORDS),
  SHELF_LIFE: byCase(SHELF_WORDS),
  MOLD_LIFE: byCase(MOLD_AGE_WORDS),
  PIGMENT: byCase(PIGMENT_WORDS),
  RELEASE_FOR_PAINT: byCase(RELEASE_WORDS),
  PAINT_FLEX: byCase(PAINT_WORDS),
  CUP_TEST_TODAY: byCase(CUP_TEST_WORDS),
  FOAM_AGE: byCase(FOAM_AGE_WORDS),
  AIR_PRESSURE: byCase(AIR_WORDS),
  RATIO_ORDER: byCase(RATIO_ORDER_WORDS),
  SCALE_STEP: byCase(SCALE_WORDS),
  PACK_RANGE: byCase(PACK_WORDS),
  SHORT_FILL_RISK: byCase(SHORT_FILL_WORDS),
  CUP_ROOM: byCase(CUP_WORDS),
  MIXING_METHOD: byCase(MIXING_WORDS),
  POUR_WINDOW: byCase(WINDOW_WORDS, windowStake),
  MOLD_TEMPERATURE: byCase(MOLD_TEMP_WORDS, moldTempStake),
  MOLD_DAMP: byCase(DAMP_WORDS, dampStake),
  MOLD_SEALED: byCase(SEALED_WORDS, sealedStake),
  JACKET_PANELS: byCase(PANEL_WORDS),
  STRAP_LOAD: byCase(STRAP_WORDS),
  PLUG_FORCE: byCase(PLUG_WORDS, plugStake),
  EXOTHERM: byCase(EXOTHERM_WORDS, exothermStake),
  OPENING_TIME: byCase(OPENING_WORDS, openingStake),
  FIRE_RATING: byCase(FIRE_WORDS, fireStake),
  OPENING_SIZE: byCase(OPENING_SIZE_WORDS, openingSizeStake),
  LIQUID_STAYS: byCase(LIQUID_WORDS),
  AIR_TRAPPED: byCase(TRAP_WORDS, trapStake),
  FLAT_CEILING: byCase(CEILING_WORDS),
  THIN_CASTING: byCase(THIN_CASTING_WORDS),
  SLENDER: byCase(SLENDER_WORDS),
  THIN_RUBBER: byCase(THIN_RUBBER_WORDS),
  DEMOLD_STRETCH: byCase(DEMOLD_WORDS, demoldStake),
};

function years(v: Values): string {
  const months = Math.round(12 * Number(v.years));
  return months < 12 ? counted(months, 'month') : `${amount(v.years, 2)} ${months === 12 ? 'year' : 'years'}`;
}
