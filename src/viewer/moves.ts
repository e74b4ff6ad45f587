import type { Eye } from './eye';
import { TURN_STEP_RAD, ZOOM_STEP } from './views';

/** So far a press moves the piece on the card, px. Chosen here. */
const MOVE_PX = 40;

export interface EyeMove {
  word: string;
  keys: readonly string[];
  /** With the Shift key. */
  shifted?: boolean;
  move: (eye: Eye) => void;
}

const turn = (word: string, key: string, sideRad: number, upRad: number): EyeMove => ({
  word,
  keys: [key],
  move: (eye) => eye.turn({ sideRad, upRad }),
});

const aside = (word: string, key: string, x: number, y: number): EyeMove => ({
  word,
  keys: [key],
  shifted: true,
  move: (eye) => eye.move({ x, y }),
});

/** Everything a drag, a wheel or two fingers do, as a word and a key. */
export const MOVES: readonly EyeMove[] = [
  turn('Turn left', 'ArrowLeft', TURN_STEP_RAD, 0),
  turn('Turn right', 'ArrowRight', -TURN_STEP_RAD, 0),
  turn('Higher', 'ArrowUp', 0, TURN_STEP_RAD),
  turn('Lower', 'ArrowDown', 0, -TURN_STEP_RAD),
  { word: 'Closer', keys: ['+', '='], move: (eye) => eye.zoom(ZOOM_STEP) },
  { word: 'Farther', keys: ['-', '_'], move: (eye) => eye.zoom(1 / ZOOM_STEP) },
  { word: 'Fit', keys: ['0'], move: (eye) => eye.fit() },
  aside('Move left', 'ArrowLeft', -MOVE_PX, 0),
  aside('Move right', 'ArrowRight', MOVE_PX, 0),
  aside('Move up', 'ArrowUp', 0, -MOVE_PX),
  aside('Move down', 'ArrowDown', 0, MOVE_PX),
];

/** What a key does to the eye, if anything. Plus and underscore are typed with Shift. */
export const moveOf = (key: string, isShifted: boolean): EyeMove | undefined =>
  MOVES.find(
    ({ keys, shifted }) =>
      keys.includes(key) && (!key.startsWith('Arrow') || (shifted ?? false) === isShifted),
  );
