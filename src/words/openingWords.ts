import type { OpeningCode } from '../problem';
import { atLeast, atMost } from './roundedMm';
import { amount, counted, percent, type Sentence, type Values } from './sentence';

/** What the plan finds where the mold is opened, vented and pulled off: what, by how much, what to do now. */
export const OPENING_FINDING_WORDS: Record<OpeningCode, (v: Values) => Sentence> = {
  OPENING_BAND_EMPTY: (v) => ({
    text: `No single opening suits: ${atLeast(v.leastMm)} are needed to pour in time, and ${atMost(v.mostMm)} are the most that is advised.`,
    hint: 'Pour through a large mouth and close it right after with a vented plug that is held down, or make a second opening, or take a slower or cooler mix.',
  }),
  OPENING_OFF_SURFACE: (v) => ({
    text: `The opening you gave does not lie on the surface: it was moved by ${amount(v.movedMm, 3)} mm onto it.`,
    hint: 'Check where it is now. If that is far from where you meant, check the unit and the zero of its place.',
  }),
  OPENING_UNDERSIDE: (v) => ({
    text: `The opening does not face up as the mold is poured: it is tilted by ${amount(v.tiltDegrees, 3)}° from straight up.`,
    hint: 'Turn the mold until the opening faces up, or choose another place for it; from below or from the side the mix runs out again.',
  }),
  OPENING_NONE_FOUND: () => ({
    text: 'No place for the opening was found on this surface: 0 places face up in any attitude that was tried.',
    hint: 'Say yourself where the opening is and which way is up, or look at what was found about the scan first.',
  }),
  VENT_OFF_SURFACE: (v) => ({
    text: `Vent ${amount(v.n)} does not lie on the surface: it was moved by ${amount(v.movedMm, 3)} mm onto it.`,
    hint: 'Check where it is now. If that is far from where you meant, check the unit and the zero of its place.',
  }),
  TRAP_PINHOLE: (v) => ({
    text: `Air stays in ${counted(v.count, 'small high spot')}, less than ${amount(v.volumeCm3, 2)} cm³ in each: a risk of pinholes there.`,
    hint: 'Prick a vent where it would show, or brush a little of the mix into these places first; else fill the pinholes on the casting.',
  }),
  THICKNESS_NOT_MEASURED: () => ({
    text: 'How thick casting and rubber are was not measured: 0 places were checked for being too thin.',
    hint: 'Measure ears, fins and fingers on the sculpt with a caliper, or mend the scan and ask again.',
  }),
  SHEET_LOST: (v) => ({
    text: `The scan has ${counted(v.count, 'sheet')} without thickness, ${amount(v.areaCm2, 3)} cm² in all: the volume knows nothing of ${Number(v.count) === 1 ? 'it, and it is' : 'them, and they are'} not among the thin places.`,
    hint: 'Look at what they are, such as hair, cloth or a fin. Give them a thickness in the scan, or measure them on the sculpt and add their foam.',
  }),
  LOCKED_PIECE: (v) => ({
    text: `Part ${amount(v.n)} is locked in the rubber: ${amount(v.bulbMm, 3)} mm around behind a neck of ${amount(v.neckMm, 3)} mm. The rubber must stretch by ${percent(v.stretchShare)} there.`,
    hint: 'Free it before the pull: peel the rubber off it, slit the rubber along its neck, or cast it as a piece of its own.',
  }),
  LIMB_CAUGHT: (v) => ({
    text:
      v.part === 'hook'
        ? `A part points back to the opening: rubber reaches ${amount(v.reachMm, 3)} mm behind it.`
        : `Two parts join deeper in: a web of rubber, ${amount(v.reachMm, 3)} mm long at least, runs between them.`,
    hint:
      v.part === 'hook'
        ? 'Turn the rubber back over its tip before the pull, or slit it there.'
        : 'No stretch frees it: turn the rubber inside out between them, or slit it from one side.',
  }),
  PIECE_CUT_OFF: (v) => ({
    text: `Nothing poured here reaches ${counted(v.count, 'piece')} of ${amount(v.volumeCm3, 3)} cm³ in all: ${Number(v.count) === 1 ? 'it is' : 'they are'} not joined to the rest.`,
    hint: 'Join them in the scan, or plan an opening for each and pour them apart.',
  }),
  DIRECTION_NONE: (v) => ({
    text: `The direction "${String(v.text)}" points nowhere: its length is not a number above 0.`,
    hint: 'Give an axis such as -z, or three numbers of which one at least is not 0.',
  }),
  VENT_NOT_REACHED: (v) => ({
    text: `Air was not followed into ${counted(v.count, 'planned vent')}: the part there is thinner than the ${amount(v.columnStepMm, 2)} mm between two columns.`,
    hint: 'Ask again with a finer accuracy, or move the vent to where the part is thicker.',
  }),
  OPENING_OVER_EDGE: (v) => ({
    text: `The opening of ${amount(v.openingMm, 3)} mm reaches over the edge of the surface it is in: ${percent(v.missedShare)} of its rim lies beside it.`,
    hint: 'Make it narrower, or move it to where the surface is wide enough.',
  }),
  VENT_UNDER_LIQUID: (v) => ({
    text: `The poured liquid stands over ${counted(v.count, 'vent')} before it rises: it would run out there.`,
    hint: 'Keep them shut until the foam has risen past them, or move them higher.',
  }),
};
