import type { ExothermCase } from '../checks/exotherm';
import type { FireCase } from '../checks/fireRating';
import type { PanelCase } from '../checks/jacketPanels';
import type { DampCase } from '../checks/moldDamp';
import type { SealedCase } from '../checks/moldSealed';
import type { MoldTempCase } from '../checks/moldTemperature';
import type { OpeningCase } from '../checks/openingTime';
import type { PlugCase } from '../checks/plugForce';
import type { StrapCase } from '../checks/strapLoad';
import type { Words } from './byCase';
import { amount, celsius, counted, type Values } from './sentence';

/** What is common for a mold's inner surface: "27 to 45 °C". */
export const moldBand = (v: Values): string => `${amount(v.low)} to ${celsius(v.high)}`;

export const MOLD_TEMP_WORDS: Words<MoldTempCase> = {
  cold: (v) => ({
    text: `The mold is cold, ${celsius(v.moldTempC)}; ${moldBand(v)} is common. The foam rises less and leaves uneven places.`,
    hint: 'Warm it first, empty and dry, through to the thickest place, and measure it inside again; or expect a short fill and a thick skin.',
  }),
  cool: (v) => ({
    text: `The mold is cool, ${celsius(v.moldTempC)}; ${moldBand(v)} is common. The foam may rise less.`,
    hint: 'Warm it if you can, or make the cup test in a cup as cool.',
  }),
  fine: (v) => ({
    text: `The mold is ${celsius(v.moldTempC)} inside, within the ${moldBand(v)} that is common.`,
    hint: 'Pour before it cools; the data sheet of the foam has the last word.',
  }),
  warm: (v) => ({
    text: `The mold is warmer than usual, ${celsius(v.moldTempC)}; ${moldBand(v)} is common. Foam sets sooner on it and skins thinner.`,
    hint: 'Let it cool a little, or see that the data sheet allows it.',
  }),
  hot: (v) => ({
    text: `The mold is hot, ${celsius(v.moldTempC)}; ${moldBand(v)} is common. Skin held on it can burn, and foam can set before it has filled.`,
    hint: 'Do not pour yet: let it cool, measure it again, and only then touch it.',
  }),
  'too hot': (v) => ({
    text: `The mold is at ${celsius(v.moldTempC)}, over the ${celsius(v.stopC)} at which we stop: it burns within seconds.`,
    hint: 'Do not touch it and do not pour: let it cool and measure it again.',
  }),
};

export const DAMP_WORDS: Words<DampCase> = {
  'no water': () => ({
    text: 'No water was in the mold since it was last dry.',
    hint: 'A cold mold in a warm room can still be damp: wipe it with a dry cloth and look.',
  }),
  'confirmed dry': () => ({
    text: 'Water was in the mold, and someone has confirmed that it is dry.',
    hint: 'Seams, vents and undercuts dry last: look there once more.',
  }),
  'not confirmed dry': (v) => ({
    text: `Water was in the mold and nobody has confirmed that it is dry. ${dampStake(v)}`,
    hint: 'Do not pour. Empty it, wipe it, dry it with warm air, seams and vents too, and confirm it when a dry cloth stays dry everywhere.',
  }),
};

export const dampStake = (v: Values): string =>
  `Each gram of water left in it makes ${amount(v.gasLPerG, 3)} liters of gas with part A and uses it up: voids, a soft skin, more pressure.`;

export const SEALED_WORDS: Words<SealedCase> = {
  vented: (v) => ({
    text: `${vents(v)} to let the air out.`,
    hint: 'There should be one at every high spot; see daylight through each before you pour, and wipe them open after a release was sprayed.',
  }),
  'narrow vents': (v) => ({
    text: `${vents(v)}, narrower than the ${amount(v.narrowMm)} mm that is usual: foam closes them before the air is out.`,
    hint: `Open them to ${amount(v.narrowMm)} to ${amount(v.wideMm)} mm.`,
  }),
  'wide vents': (v) => ({
    text: `${vents(v)}, wider than the ${amount(v.wideMm)} mm that is usual: foam leaves through them, and the pack with it.`,
    hint: `Narrow them to ${amount(v.narrowMm)} to ${amount(v.wideMm)} mm, or count on more foam lost.`,
  }),
  'opening alone': () => ({
    text: 'The mold has no vents: all air must leave through the opening, and that of every other high spot stays in.',
    hint: 'Make a vent at each high spot, or tilt the mold so that the opening is the only one.',
  }),
  sealed: (v) => ({
    text: `The mold is sealed: no vent, and an opening that lets nothing out. ${sealedStake(v)}`,
    hint: 'Do not pour. Open vents at the high spots, and leave the opening free or close it with a vented plug that is held.',
  }),
};

export const sealedStake = (v: Values): string =>
  `Air that cannot leave raises the pressure to about ${amount(v.times)} times that of the foam alone: the mold can burst.`;

export const PANEL_WORDS: Words<PanelCase> = {
  'no flat panel': () => ({
    text: 'The jacket has no flat panel to bend.',
    hint: 'Look for cracks before each pour.',
  }),
  within: (v) => ({
    text: `The widest flat panel spans ${amount(v.panelSpanMm, 3)} mm, within the ${amount(v.panelLargestMm, 3)} mm it may.`,
    hint: 'Let plaster dry through: wet it bears about half.',
  }),
  wide: (v) => ({
    text: `The widest flat panel spans ${amount(v.panelSpanMm, 3)} mm, ${amount(v.overMm, 3)} mm over the ${amount(v.panelLargestMm, 3)} mm it may.`,
    hint: RIB,
  }),
  'may crack': (v) => ({
    text: `The widest flat panel spans ${amount(v.panelSpanMm, 3)} mm: plaster that is not dry can crack at this pressure; ${amount(v.panelLargestMm, 3)} mm would hold.`,
    hint: RIB,
  }),
  cracks: (v) => ({
    text: `The widest flat panel spans ${amount(v.panelSpanMm, 3)} mm and cracks at this pressure, dry or not; ${amount(v.panelLargestMm, 3)} mm would hold.`,
    hint: `Do not pour. ${RIB}`,
  }),
};

const RIB = 'Rib it, strap it over a board, or make the jacket thicker; or pack less.';

export const STRAP_WORDS: Words<StrapCase> = {
  'bears it': (v) => ({
    text: `Each strap is pulled to ${newtons(v.strapBuckleN)} at the buckle, within the ${newtons(v.strapWorkingN)} it may bear.`,
    hint: `Buckles on alternate sides; tighten again after ${amount(v.againMin)} min, before the pour. Stay out of the line of a tight strap.`,
  }),
  overloaded: (v) => ({
    text: `Each strap would have to be pulled to ${newtons(v.strapBuckleN)}, ${newtons(v.overN)} over the ${newtons(v.strapWorkingN)} it may bear.`,
    hint: 'Do not pour. Use more straps or stronger ones, bolt the flanges, or pack less.',
  }),
};

export const PLUG_WORDS: Words<PlugCase> = {
  none: () => ({
    text: 'No plug or lid is pushed by the foam.',
    hint: 'Keep faces and hands away from the opening all the same.',
  }),
  'held and vented': (v) => ({
    text: `The foam pushes on the plug or lid with ${push(v)}; it is held and vented.`,
    hint: 'Nobody stands or leans over it until the mold is quiet.',
  }),
  'held, not vented': (v) => ({
    text: `The foam pushes on the plug or lid with ${push(v)}; it is held, but lets no air out.`,
    hint: 'Drill a vent through it, and let nobody stand or lean over it.',
  }),
  'not held': (v) => ({
    text: `The foam pushes on the plug or lid with ${push(v)}, and nothing holds it: it will fly.`,
    hint: 'Do not pour. Hold it with clamp, strap or weight, never by hand, vent it, and let nobody stand over it.',
  }),
};

export const EXOTHERM_WORDS: Words<ExothermCase> = {
  'cool enough': (v) => ({
    text: `The core gets to ${celsius(v.coreTempC)} at most, not over ${celsius(v.lookC)}.`,
    hint: 'It stays hot inside for hours: skin and touch say when to open, and leftover mix is another matter.',
  }),
  'may scorch': (v) => ({
    text: `The core can get to ${celsius(v.coreTempC)}, over the ${celsius(v.lookC)} from which it can scorch.`,
    hint: 'Start cooler, pour in layers or with a hollow core, and ask the supplier. Leave the casting open and outdoors until it is cold.',
  }),
  'too hot': (v) => ({
    text: `The core can get to ${celsius(v.coreTempC)}, over the ${celsius(v.stopC)} at which we stop: it can discolor inside or light itself.`,
    hint: 'Do not pour this mass in one. Pour in layers or with a hollow core, start cooler, or take another foam.',
  }),
};

export const exothermStake = (v: Values): string =>
  `Over ${celsius(v.lookC)} deserves a look, over ${celsius(v.stopC)} a stop.`;

export const OPENING_WORDS: Words<OpeningCase> = {
  usual: (v) => ({
    text: `The card says to open after ${amount(v.cardOpenMin, 3)} min, which is common: ${minutes(v)}.`,
    hint: TOUCH_FIRST,
  }),
  sooner: (v) => ({
    text: `The card says to open after ${amount(v.cardOpenMin, 3)} min, sooner than the common ${minutes(v)}.`,
    hint: `Check the figure and its unit on the data sheet. ${TOUCH_FIRST}`,
  }),
  later: (v) => ({
    text: `The card says to open after ${amount(v.cardOpenMin, 3)} min, later than the common ${minutes(v)}.`,
    hint: `Check the figure and its unit on the data sheet, and wait as long as it says. ${TOUCH_FIRST}`,
  }),
};

const TOUCH_FIRST =
  'Touch the foam in the opening first; do not open a mold that hisses, and let a hot one cool.';

export const openingStake = (v: Values): string =>
  `Castings are commonly opened after ${minutes(v)}, still warm.`;

export const FIRE_WORDS: Words<FireCase> = {
  tested: () => ({
    text: 'A test report says that the casting meets the fire rules of the place where it will be.',
    hint: 'The report holds for that foam, as it was tested: color, paint and thickness count. Keep it with the piece.',
  }),
  'not tested': () => ({
    text: `The casting was not tested for fire. ${fireStake()}`,
    hint: 'Ask the venue and the local fire code before you pour. Keep it away from flames, lamps and heaters; where a report is asked for, take a foam that has one.',
  }),
};

export const fireStake = (): string => 'Flexible foam burns fast and with thick, toxic smoke.';

const minutes = (v: Values): string => `${amount(v.low)} to ${amount(v.high)} min`;
const newtons = (n: number | string | undefined): string => `${amount(n, 3)} N`;
const push = (v: Values): string => `about ${amount(v.plugN, 2)} N, as ${amount(v.likeKg, 2)} kg would weigh`;
const vents = (v: Values): string => `The mold has ${counted(v.ventCount, 'vent')} of ${amount(v.ventMm)} mm`;

export const moldTempStake = (v: Values): string =>
  `${moldBand(v)} is common; on a cold mold foam rises less and leaves uneven places.`;
export const plugStake = (v: Values): string | undefined =>
  v.plugN === undefined ? undefined : `The foam pushes on it with ${push(v)}.`;
