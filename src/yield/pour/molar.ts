/** g/mol, from standard atomic weights (IUPAC). */
export const WATER_G_PER_MOL = 18.01528;
/** Per isocyanate group. */
export const NCO_G_PER_EQ = 42.0168;
