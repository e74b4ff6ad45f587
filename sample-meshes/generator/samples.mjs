import { boxInText, boxWithVoid, capsule20, hollow50, sphere50, torus50, twin40 } from './clean-shapes.mjs';
import { quayTroll } from './quay-troll.mjs';

/** Every sample: a function without arguments that gives [{file, bytes, truth}]. One line each. */
export const SAMPLES = [quayTroll, sphere50, capsule20, torus50, hollow50, twin40, boxWithVoid, boxInText];
