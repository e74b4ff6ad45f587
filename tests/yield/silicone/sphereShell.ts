/** Volume in cm3 of a shell of this thickness on a sphere of 50 mm, by the closed formula. */
export const shellOnR50Cm3 = (skinMm: number): number =>
  ((4 / 3) * Math.PI * ((50 + skinMm) ** 3 - 50 ** 3)) / 1000;
