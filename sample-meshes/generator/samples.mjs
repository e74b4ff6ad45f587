import { boxInText, boxWithVoid, capsule20, hollow50, sphere50, torus50, twin40 } from './clean-shapes.mjs';
import { lampEel } from './lamp-eel.mjs';
import { lighthouseHand } from './lighthouse-hand.mjs';
import { fineTroll, quayTroll } from './quay-troll.mjs';
import { fineRock, singingRock } from './singing-rock.mjs';

const SCULPTS = [quayTroll, lighthouseHand, singingRock, lampEel];
const SHAPES = [sphere50, capsule20, torus50, hollow50, twin40, boxWithVoid, boxInText];

/** Every sample that is kept: a function without arguments that gives [{file, bytes, truth}]. */
export const SAMPLES = [...SCULPTS, ...SHAPES];

/** Finer versions, too large to keep: made on demand by --fine. */
export const FINE_SAMPLES = [fineTroll, fineRock];
