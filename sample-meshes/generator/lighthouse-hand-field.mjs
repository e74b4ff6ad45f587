import { roundBox, smoothUnion, taperedCapsule, union } from './fields.mjs';

/** Boxes that hold the hand without its thumb, and the thumb, mm (x symmetric). */
export const HAND_REACH = { x: 86, y: [-40, 40], z: 282 };
export const THUMB_REACH = { x: 122, y: [-48, 16], z: 208 };

const FINGER_RADII_MM = [13.5, 12, 9.5]; // at the knuckle, the joint and the tip
const THUMB_RADII_MM = [17, 14, 10.5];

/** Share of a finger's length that its first bone has. */
const FIRST_BONE = 0.55;

// Knuckles stand at z 178.5; a bone goes `ways` = [across, towards the back of the hand] for each mm it goes up.
const FINGERS = [
  { x: -34.5, lengthMm: 74, blendMm: 10, ways: [-0.3, 0, -0.2, -0.25] }, // index
  { x: -11.5, lengthMm: 88, blendMm: 10, ways: [-0.1, 0, 0.1, -0.12] }, // middle
  { x: 11.5, lengthMm: 84, blendMm: 6, ways: [0.1, 0, -0.1, -0.12] }, // ring
  { x: 34.5, lengthMm: 64, blendMm: 10, ways: [0.32, 0, 0.2, -0.25] }, // little
];
const KNUCKLE_Z = 178.5;

/** The Lighthouse Giant's hand without its thumb: z up, palm towards -y, mm. The cut at z = 0 is left to the mesher. */
export const handField = FINGERS.reduce(
  (hand, finger) => smoothUnion(hand, fingerField(finger), finger.blendMm),
  smoothUnion(
    roundBox([0, 0, 140], [92, 40, 104], 18), // palm
    taperedCapsule([0, 0, 0], 36, [0, 0, 95], 33), // wrist
    18,
  ),
);

/** The thumb, a solid of its own that reaches into the palm. */
export const thumbField = bones(
  [
    [-30, -6, 108],
    [-78, -20, 142],
    [-106, -30, 192],
  ],
  THUMB_RADII_MM,
);

function fingerField({ x, lengthMm, ways: [across1, back1, across2, back2] }) {
  const [first, second] = [FIRST_BONE * lengthMm, (1 - FIRST_BONE) * lengthMm];
  const knuckle = [x, 0, KNUCKLE_Z];
  const joint = along(knuckle, [across1, back1, 1], first);
  return bones([knuckle, joint, along(joint, [across2, back2, 1], second)], FINGER_RADII_MM);
}

// Two tapered capsules that share the ball at the joint.
function bones([a, b, c], [ra, rb, rc]) {
  return union(taperedCapsule(a, ra, b, rb), taperedCapsule(b, rb, c, rc));
}

function along(from, way, lengthMm) {
  const size = Math.sqrt(way.reduce((sum, w) => sum + w * w, 0));
  return from.map((f, n) => f + (way[n] * lengthMm) / size);
}
