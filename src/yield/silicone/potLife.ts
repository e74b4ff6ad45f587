import { SILICONE_RULES } from './rules';

export interface PotLife {
  potLifeMin: number;
  /** Temperature the figure holds at, C; 23 when the data sheet names none. */
  atC?: number;
  roomC: number;
}

/**
 * Pot life at the room's temperature, min: the stated one x 2^((stated at - room) / 10). A rule of thumb after Arrhenius,
 * from memory, not verified; good for some 10 K to either side. Only a trial cup tells more.
 */
export const potLifeAtRoomMin = ({
  potLifeMin,
  atC = SILICONE_RULES.potLifeTemperature.value,
  roomC,
}: PotLife): number => potLifeMin * 2 ** ((atC - roomC) / SILICONE_RULES.potLifeHalves.value);
