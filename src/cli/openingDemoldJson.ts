import type { Demold, Squeeze } from '../plan';

type Json = Record<string, unknown>;

/** The way out as scripts know it. */
export function demoldJson({
  way,
  worst,
  mouth,
  allowedStretch,
  undercutShare,
  slit,
  locked,
  caught,
}: Demold): Json {
  return {
    way,
    stretch: worst.stretch,
    worst: squeezeJson(worst),
    mouth: squeezeJson(mouth),
    allowed_stretch: allowedStretch.value,
    allowed_stretch_range: [allowedStretch.low, allowedStretch.high],
    undercut_share: undercutShare,
    ...(slit === undefined ? {} : { slit: slitJson(slit) }),
    locked: locked.map(squeezeJson),
    caught: caught.map(({ atMm, kind, reachMm }) => ({ at_mm: atMm, kind, reach_mm: reachMm })),
  };
}

const squeezeJson = ({ neckAtMm, neckMm, bulbAtMm, bulbMm, stretch }: Squeeze): Json => ({
  neck_at_mm: neckAtMm,
  neck_mm: neckMm,
  bulb_at_mm: bulbAtMm,
  bulb_mm: bulbMm,
  stretch,
});

const slitJson = ({ lengthMm, byGirthMm, line }: NonNullable<Demold['slit']>): Json => ({
  length_mm: lengthMm,
  by_girth_mm: byGirthMm,
  ...(line === undefined
    ? {}
    : {
        side: line.side,
        from_mm: line.fromMm,
        to_mm: line.toMm,
        is_clear: line.isClear,
        is_tied: line.isTied,
      }),
});
