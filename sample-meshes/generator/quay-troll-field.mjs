import { ball, box, ellipsoid, mirrored, smoothMinus, smoothUnion, taperedCapsule } from './fields.mjs';

/** Box that holds the head, mm (x symmetric). */
export const TROLL_REACH = { x: 134, y: [-98, 136], z: 293 };

/** The Quay Troll's head: z up, face towards +y, mm. The cut at z = 0 is left to the mesher. */
export const trollField = steps().reduce(
  (head, [join, part, kMm]) => join(head, part, kMm),
  ellipsoid([0, 0, 150], [78, 96, 108]), // skull
);

// [how, part, width of the blend in mm], in order: a later blend acts on all that came before.
function steps() {
  return [
    [smoothUnion, ellipsoid([0, 58, 105], [62, 52, 50]), 30], // muzzle
    [smoothUnion, taperedCapsule([0, 0, 0], 56, [0, 0, 70], 60), 24], // neck
    [smoothUnion, taperedCapsule([-46, 66, 172], 15, [46, 66, 172], 15), 14], // brow
    [smoothUnion, taperedCapsule([0, 84, 150], 16, [0, 112, 126], 22), 10], // nose
    [smoothUnion, mirrored(ellipsoid([98, 0, 160], [34, 9, 30])), 8], // ears
    [smoothUnion, mirrored(taperedCapsule([44, 10, 240], 13, [60, -6, 286], 5)), 8], // horns
    [smoothMinus, mirrored(ball([32, 88, 158], 13)), 6], // eyes
    [smoothMinus, box([0, 112, 86], [68, 52, 14]), 6], // mouth
  ];
}
