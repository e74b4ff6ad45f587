import {
  effusivity,
  MIX_HEAT,
  MOLDMAKING_RULES,
  SILICONE_HEAT,
  WARMTH_RULES,
  type HeatMaterial,
} from '../../../yield';
import type { PourAsk, WarmAssumed } from '../pourAsk';
import type { PreparedPour } from '../preparePour';
import { HALF_WAY, ROOM_C, WARM_BASIS } from '../warmth';
import { HERE, input, type OpenedFigure, type OpenedInput } from './openedFigure';

/** Warming, cooling, and where foam meets the mold. */
export const warmthFigures = (ready: PreparedPour, ask: PourAsk): OpenedFigure[] => [
  ...contactFigures(ready, ask),
  ...wallFigures(ready, ask),
];

function contactFigures({ warmth: { contactC } }: PreparedPour, ask: PourAsk): OpenedFigure[] {
  if (contactC === undefined) return [];
  const { moldC, warm, ingredientsC, roomC } = ask;
  const of = (title: string, material: HeatMaterial): OpenedInput[] => {
    const found = effusivity(material);
    return input(title, found.ok ? found.value : undefined, 'W s^0.5/(m2 K)', 'square root of k x rho x c');
  };
  return [
    {
      key: 'contact_c',
      title: 'Where foam meets the mold, at first',
      value: contactC,
      unit: 'C',
      formula: '(b_mix x T_mix + b_mold x T_mold) / (b_mix + b_mold)',
      inputs: [
        ...input(
          'T_mold',
          moldC ?? warm?.targetTempC,
          'C',
          moldC === undefined ? 'as it is warmed to' : 'given',
        ),
        ...input('T_mix', ingredientsC ?? roomC, 'C', ingredientsC === undefined ? 'as the room' : 'given'),
        ...of('b_mold, silicone', SILICONE_HEAT),
        ...of('b_mix', MIX_HEAT),
      ],
      source: `two bodies that touch (Carslaw and Jaeger), from memory; rubber: ${WARMTH_RULES.siliconeConductivity.from}; mix: ${WARMTH_RULES.mixConductivity.from}`,
    },
  ];
}

type Origin = Pick<OpenedInput, 'from' | 'isAssumed'>;

const HEAT_TRANSFER = {
  'still room': WARMTH_RULES.stillAir,
  'still box': WARMTH_RULES.stillAir,
  'fan box': WARMTH_RULES.fanBox,
  'heat gun': WARMTH_RULES.heatGun,
} as const;

const SERIES = 'theta = sum of C_n exp(-z_n^2 Fo) cos(z_n x/L), z tan z = Bi';

function wallFigures({ warmth }: PreparedPour, { warm, roomC }: PourAsk): OpenedFigure[] {
  const { warmUp, coolDown } = warmth;
  if (warm === undefined || warmUp === undefined || coolDown === undefined) return [];
  const { assumed = [] } = warm;
  const orAssumed = (name: WarmAssumed, basis: string): Origin =>
    assumed.includes(name) ? { from: basis, isAssumed: true } : { from: 'given' };
  const startC = warm.startTempC ?? roomC ?? ROOM_C;
  const isRoomKnown = roomC !== undefined || warm.startTempC !== undefined;
  const startFrom: Origin = isRoomKnown
    ? { from: 'given' }
    : { from: MOLDMAKING_RULES.roomTemp.from, isAssumed: true };
  const target = orAssumed('targetTempC', WARMTH_RULES.moldFine.from);
  const { value: transfer, unit, from } = HEAT_TRANSFER[warm.surroundings];
  const rubber = [
    ...material('conductivity of the rubber', WARMTH_RULES.siliconeConductivity),
    ...material('density of the rubber', WARMTH_RULES.siliconeDensity),
    ...material('heat capacity of the rubber', WARMTH_RULES.siliconeHeatCapacity),
  ];
  const wall = [
    ...input('wall', warm.wallMm, 'mm', 'given'),
    ...input('faces in the air', warm.sides, '', orAssumed('sides', WARM_BASIS.sides)),
    ...input('jacket left on', warm.jacket?.thicknessMm, 'mm', 'given'),
  ];
  const warming = [
    ...wall,
    ...input('Biot number', warmUp.biot, '', HERE),
    ...input('start', startC, 'C', startFrom),
    ...input('air around', warm.airTempC, 'C', 'given'),
    ...input('target', warm.targetTempC, 'C', target),
    ...input(
      'heat transfer',
      transfer,
      unit,
      assumed.includes('surroundings')
        ? { from: `still box, ${WARM_BASIS.surroundings}; ${from}`, isAssumed: true }
        : from,
    ),
    ...rubber,
  ];
  const source = 'heat conduction in a slab (Carslaw and Jaeger), from memory; curves are left out';
  return [
    {
      key: 'warm_heated_min',
      title: 'Warm-up, heated face',
      value: warmUp.heatedFaceMin.value,
      unit: 'min',
      formula: SERIES,
      inputs: warming,
      source,
    },
    {
      key: 'warm_deep_min',
      title: 'Warm-up, deep face',
      value: warmUp.deepFaceMin.value,
      unit: 'min',
      formula: SERIES,
      inputs: warming,
      source,
    },
    {
      key: 'warm_surface_c',
      title: 'Surface in the air when the deep face is warm',
      value: warmUp.surfaceAtEndC.value,
      unit: 'C',
      formula: `air + (start - air) x theta; ${SERIES}`,
      inputs: [...warming, ...input('time', warmUp.deepFaceMin.value, 'min', HERE)],
      source,
    },
    {
      key: 'pour_within_min',
      title: 'Pour within',
      value: coolDown.pourWithinMin,
      unit: 'min',
      formula: `${SERIES}; the early end`,
      inputs: [
        ...wall,
        ...input('start, the mold as warmed', warm.targetTempC, 'C', target),
        ...input('air of the room', startC, 'C', startFrom),
        ...input(
          'may cool to',
          warm.toTempC ?? startC + HALF_WAY * (warm.targetTempC - startC),
          'C',
          warm.toTempC === undefined ? 'half-way back to the room, chosen here' : 'given',
        ),
        ...rubber,
      ],
      source: `the same series in still air; ${WARMTH_RULES.stillAir.from}`,
    },
  ];
}

const material = (
  title: string,
  { value, unit, from }: { value: number; unit: string; from: string },
): OpenedInput[] => input(title, value, unit, from);
