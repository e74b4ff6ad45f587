/** What a section shows, by the axis it is cut across. Left and right are the piece's own. */
export const SECTION_WORDS = {
  x: 'Cut from front to back, seen from its right',
  y: 'Cut from left to right, seen from its front',
  z: 'Cut level, seen from above',
} as const;

/** The walls of a section, with the hatching that tells them apart. */
export const SECTION_KEYS = {
  skin: 'close lines: silicone',
  block: 'close lines: silicone',
  jacket: 'wide lines: jacket',
  sculpt: 'white: the sculpt, later the foam',
} as const;
