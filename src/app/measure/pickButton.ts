/** Where the focus goes back to when pointing is left. */
export const PICK_BUTTON = 'pick-points';
