import { RULES } from './rules';

/** What a wetted wall keeps: viscosity, height and time of draining, liquid density, wetted area. */
export interface DrainingWall {
  viscosityPaS: number;
  heightM: number;
  drainS: number;
  densityKgM3: number;
  wettedAreaM2: number;
}

/**
 * Mix that stays on the wall of a cup, g, and its mean film, mm. A film draining from a vertical wall is
 * sqrt(mu z / (rho g t)) thick at its lower end and two thirds of that on average (Jeffreys 1930, from memory).
 */
export function wallHoldUp({ viscosityPaS, heightM, drainS, densityKgM3, wettedAreaM2 }: DrainingWall): {
  meanFilmMm: number;
  massG: number;
} {
  const endFilmM = Math.sqrt((viscosityPaS * heightM) / (densityKgM3 * RULES.gravity.value * drainS));
  const meanFilmM = (2 / 3) * endFilmM;
  return { meanFilmMm: 1000 * meanFilmM, massG: 1000 * densityKgM3 * wettedAreaM2 * meanFilmM };
}
