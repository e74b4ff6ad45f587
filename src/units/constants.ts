/**
 * Exact by definition: 1 ft = 0.3048 m, 1 lb = 0.45359237 kg, 1 US gallon = 231 in3 (international agreement of 1959;
 * tabulated in NIST SP 811, appendix B). Everything below follows by arithmetic, so nothing here is rounded.
 */
export const MM_PER_IN = 25.4;
export const MM_PER_FT = 304.8;
export const G_PER_LB = 453.59237;
export const G_PER_OZ = G_PER_LB / 16;
export const CM3_PER_IN3 = 2.54 ** 3;
export const CM3_PER_FT3 = 30.48 ** 3;
export const CM3_PER_GAL = 231 * CM3_PER_IN3;
export const CM3_PER_FL_OZ = CM3_PER_GAL / 128;

/** 16.018463…: one pound in a cubic foot, in kg/m3 (which is the same number in g/L). */
export const KG_M3_PER_LB_FT3 = (1000 * G_PER_LB) / CM3_PER_FT3;

/** Standard gravity, exact (ISO 80000-3); the pound-force and so the psi are defined with it. */
export const STANDARD_GRAVITY_M_S2 = 9.80665;
export const KPA_PER_PSI = (G_PER_LB * STANDARD_GRAVITY_M_S2) / MM_PER_IN ** 2;

export const KELVIN_AT_0_C = 273.15;
