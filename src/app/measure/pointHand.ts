/** Pointing at the picture, as the questions see it. */
export interface PointHand {
  /** There is a picture to point at. */
  canPoint: boolean;
  isPointing: boolean;
  /** Points from here on set marks 1 and 2; those that stand are let go. */
  onStart: () => void;
  onLeave: () => void;
}
