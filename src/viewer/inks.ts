/* The colors of tokens.css for shaders, which cannot read them. */
export const INK = '#1C1B19';
export const LINE = '#6B675F';
export const PAPER = '#FBFAF7';
export const SHEET = '#FFFFFF';
export const WELL = '#F1EFE8';
export const ACCENT = '#0B5F62';

/** Cividis in six steps, thin = dark (Nunez, Anderton, Renslow 2018, PLoS ONE 13(7) e0199239). */
export const STEP_COLORS = ['#00224E', '#35456C', '#666970', '#948E77', '#C8B866', '#FEE838'] as const;
