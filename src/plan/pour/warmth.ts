import { good, type Outcome, type Problem } from '../../problem';
import {
  contactTempC,
  coolDown,
  moldTemperatureBand,
  warmWall,
  type CoolDown,
  type MoldTemperatureBand,
  type WarmthCaution,
  type WarmUp,
} from '../../yield';
import type { PourAsk } from './pourAsk';

/** How warm the mold is, how it gets there and how long it stays so. */
export interface Warmth {
  band: MoldTemperatureBand;
  warmUp?: WarmUp;
  coolDown?: CoolDown;
  /** Where foam meets the mold. */
  contactC?: number;
  cautions: WarmthCaution[];
  findings: Problem[];
}

/** Errors: those of `warmWall`, `coolDown` and `contactTempC`. */
export function warmthOf({ warm, moldC, roomC, ingredientsC }: PourAsk): Outcome<Warmth> {
  const tempC = moldC ?? warm?.targetTempC;
  const band = moldTemperatureBand(tempC);
  if (!band.ok) return band;
  const mixTempC = ingredientsC ?? roomC;
  const contact =
    tempC === undefined || mixTempC === undefined ? undefined : contactTempC({ moldTempC: tempC, mixTempC });
  if (contact?.ok === false) return contact;
  const heated = warm === undefined ? undefined : heat(warm, roomC);
  if (heated?.ok === false) return heated;
  const { warmUp, cool } = heated?.value ?? {};
  return good({
    band: band.value.band,
    ...(warmUp === undefined ? {} : { warmUp }),
    ...(cool === undefined ? {} : { coolDown: cool }),
    ...(contact === undefined ? {} : { contactC: contact.value }),
    cautions: warmUp?.cautions ?? [],
    findings: [...band.value.findings, ...(warmUp?.findings ?? [])],
  });
}

/** Why one face, and a still box, are taken while nobody has said so. Chosen here. */
export const WARM_BASIS = {
  sides: 'the other side lies in a jacket or on a board',
  surroundings: 'the gentlest way that takes no watching',
} as const;

/** Room to start from and to cool in when nothing is said: that of data sheets (from memory, not verified). */
export const ROOM_C = 23;

/** How far the surface may fall before the pour, when not said: half-way back to the room. Chosen here. */
export const HALF_WAY = 0.5;

function heat(
  warm: NonNullable<PourAsk['warm']>,
  roomC: number | undefined,
): Outcome<{ warmUp: WarmUp; cool: CoolDown }> {
  const { targetTempC, toTempC, startTempC = roomC ?? ROOM_C, assumed: _, ...wall } = warm;
  const warmUp = warmWall({ ...wall, startTempC, targetTempC });
  if (!warmUp.ok) return warmUp;
  const coolTo = toTempC ?? startTempC + HALF_WAY * (targetTempC - startTempC);
  const cool = coolDown({
    wallMm: wall.wallMm,
    sides: wall.sides,
    surroundings: 'still room',
    airTempC: startTempC,
    startTempC: targetTempC,
    toTempC: coolTo,
    ...(wall.jacket === undefined ? {} : { jacket: wall.jacket }),
  });
  return cool.ok ? good({ warmUp: warmUp.value, cool: cool.value }) : cool;
}
