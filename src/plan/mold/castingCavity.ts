import type { Assumption, Estimate } from '../../estimate';
import { good, type Outcome, type Problem } from '../../problem';
import { cavityAtCasting, MOLDMAKING_RULES, settleShrink } from '../../yield';
import { doubtsOf, MM3_PER_CM3 } from '../sizeDoubts';
import type { SettledSolid } from '../settleSolid';
import type { MoldAsk } from './moldWish';

/** What the mold's cavity holds when the foam is poured: shrunk as the silicone cured, grown as the mold was warmed. */
export interface Casting {
  /** Linear, as a share. */
  shrink: Estimate;
  castingTempC: number;
  roomTempC: number;
  /** Cavity over sculpt. */
  volumeShare: Estimate;
  /** With the range of the scan and of shrink and growth. */
  cavityCm3: Estimate;
  assumptions: Assumption[];
  findings: Problem[];
}

/** Errors: INPUT_OUT_OF_BOUNDS, INPUT_NOT_A_NUMBER. */
export function castingCavity({ solid, scale }: SettledSolid, ask: MoldAsk): Outcome<Casting> {
  const { silicone = {}, work = {}, measuredShrink } = ask;
  const settled = settleShrink({
    cure: silicone.cure ?? 'condensation',
    ...(measuredShrink === undefined ? {} : { measured: measuredShrink }),
    ...(silicone.linearShrinkShare === undefined ? {} : { dataSheet: { share: silicone.linearShrinkShare } }),
  });
  if (!settled.ok) return settled;
  const assumptions: Assumption[] = [];
  const { roomTemp, growthPerK } = MOLDMAKING_RULES;
  const assume = (name: string, value: number, unit: string, basis: string): void => {
    assumptions.push({ name, value, unit, from: 'assumed', basis } as Assumption);
  };
  const roomTempC = work.roomC ?? roomTemp.value;
  const castingTempC = ask.castingTempC ?? roomTempC;
  if (ask.castingTempC === undefined)
    assume('casting_temp_c', castingTempC, 'C', 'the mold as warm as the room');
  else assume('silicone_growth_per_k', growthPerK.value, '1/K', growthPerK.from);
  const sculptCm3 = solid.volumeMm3 / MM3_PER_CM3;
  const cavity = cavityAtCasting({ sculptCm3, shrink: settled.value.shrink, castingTempC, roomTempC });
  if (!cavity.ok) return cavity;
  const { volumeShare } = cavity.value;
  const doubts = doubtsOf(solid, scale);
  const scan = Math.hypot(...Object.values(doubts as unknown as Record<string, number>));
  const value = sculptCm3 * volumeShare.value;
  // Scan and silicone do not know of each other: their doubts add as squares (JCGM 100:2008, 5.1.2).
  const below = Math.hypot(scan * volumeShare.value, sculptCm3 * (volumeShare.value - volumeShare.low));
  const above = Math.hypot(scan * volumeShare.value, sculptCm3 * (volumeShare.high - volumeShare.value));
  return good({
    shrink: settled.value.shrink,
    castingTempC,
    roomTempC,
    volumeShare,
    cavityCm3: {
      value,
      low: Math.max(0, value - below),
      high: value + above,
      from: scale.from === 'taped' ? 'taped' : 'scanned',
    },
    assumptions,
    findings: settled.value.findings,
  });
}
