import type { Assumption, Estimate } from '../../estimate';
import { good, type Outcome, type Problem } from '../../problem';
import { cavityAtCasting, MOLDMAKING_RULES, settleShrink } from '../../yield';
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

/** What of a mold's wish bears on its cavity. */
export type CastingWish = Pick<MoldAsk, 'silicone' | 'work' | 'measuredShrink' | 'castingTempC'>;

/** From the volume of the sculpt, cm3, to that of the cavity. Errors: INPUT_OUT_OF_BOUNDS, INPUT_NOT_A_NUMBER. */
export function castingCavity(sculptCm3: Estimate, ask: CastingWish): Outcome<Casting> {
  const { silicone = {}, work = {}, measuredShrink } = ask;
  const settled = settleShrink({
    cure: silicone.cure ?? 'condensation',
    ...(measuredShrink === undefined ? {} : { measured: measuredShrink }),
    ...(silicone.linearShrinkShare === undefined ? {} : { dataSheet: { share: silicone.linearShrinkShare } }),
  });
  if (!settled.ok) return settled;
  const assumptions: Assumption[] = [];
  const { roomTemp, growthPerK } = MOLDMAKING_RULES;
  const assume = (name: string, value: number | string, unit: string, basis: string): void => {
    assumptions.push({ name, value, unit, from: 'assumed', basis } as Assumption);
  };
  if (settled.value.shrink.from === 'assumed' && silicone.cure === undefined)
    assume('silicone_cure', 'condensation', '', 'chosen here: it shrinks more');
  const roomTempC = work.roomC ?? roomTemp.value;
  const castingTempC = ask.castingTempC ?? roomTempC;
  if (ask.castingTempC === undefined)
    assume('casting_temp_c', castingTempC, 'C', 'the mold as warm as the room');
  else assume('silicone_growth_per_k', growthPerK.value, '1/K', growthPerK.from);
  const cavity = cavityAtCasting({
    sculptCm3: sculptCm3.value,
    shrink: settled.value.shrink,
    castingTempC,
    roomTempC,
  });
  if (!cavity.ok) return cavity;
  const { volumeShare: share } = cavity.value;
  // Scan and silicone do not know of each other: their doubts add as squares (JCGM 100:2008, 5.1.2).
  const below = Math.hypot(
    (sculptCm3.value - sculptCm3.low) * share.value,
    sculptCm3.value * (share.value - share.low),
  );
  const above = Math.hypot(
    (sculptCm3.high - sculptCm3.value) * share.value,
    sculptCm3.value * (share.high - share.value),
  );
  const value = sculptCm3.value * share.value;
  return good({
    shrink: settled.value.shrink,
    castingTempC,
    roomTempC,
    volumeShare: share,
    cavityCm3: {
      value,
      low: Math.max(0, value - below),
      high: value + above,
      from: sculptCm3.from,
    },
    assumptions,
    findings: settled.value.findings,
  });
}
