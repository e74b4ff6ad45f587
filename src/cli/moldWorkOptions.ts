import type { Shop } from '../job/shop';
import type { MoldAsk, WorkWish } from '../plan';
import { bad, good, type Outcome } from '../problem';
import { JACKET_MATERIALS, WALL_MATERIALS } from '../yield';
import { textOf, type OptionSpec, type OptionValues } from './command';
import { defined, readFigures, type Figure } from './moldFigures';

/** How the shop works, and what jacket and box are made of. */
export const WORK_OPTIONS: readonly OptionSpec[] = [
  { flags: '--waste <share>', about: 'silicone that ends beside the mold, as "10 %"' },
  { flags: '--cup-loss <mass>', about: 'silicone that stays in each cup (bare number: g)' },
  { flags: '--scale-step <mass>', about: "step of the scale (bare number: g); the shop's scale else" },
  { flags: '--cup-volume <volume>', about: 'cup or pail that is mixed in (bare number: cm3)' },
  { flags: '--degas', about: 'the mix is degassed: the cup needs headroom, the pot life gives time for it' },
  { flags: '--room <temperature>', about: 'temperature of the room (bare number: C)' },
  {
    flags: '--mold-temp <temperature>',
    about: 'temperature of the mold when the foam is poured (bare number: C)',
  },
  {
    flags: '--sculpt-mass <mass>',
    about: 'mass of the sculpt with its fixings (bare number: g): does it float?',
  },
  {
    flags: '--jacket-material <kind>',
    about: 'what the jacket is made of (assumed plaster)',
    choices: JACKET_MATERIALS.map(({ key }) => key),
  },
  { flags: '--jacket-water <ratio>', about: 'water to plaster by mass, as 0.65' },
  {
    flags: '--box-material <kind>',
    about: 'what the walls of the box are made of (assumed plywood)',
    choices: WALL_MATERIALS.map(({ key }) => key),
  },
  {
    flags: '--box-board <length>',
    about: 'thickness of the walls of the box (bare number: mm; assumed 12 mm)',
  },
];

type Key =
  | 'wasteShare'
  | 'cupLossG'
  | 'scaleStepG'
  | 'containerCm3'
  | 'roomC'
  | 'castingTempC'
  | 'sculptMassG'
  | 'waterPerPlaster'
  | 'wallMm';

const FIGURES: readonly Figure<Key>[] = [
  { key: 'wasteShare', option: 'waste', kind: 'share', allowZero: true },
  { key: 'cupLossG', option: 'cupLoss', kind: 'mass', bareUnit: 'g', allowZero: true },
  { key: 'scaleStepG', option: 'scaleStep', kind: 'mass', bareUnit: 'g' },
  { key: 'containerCm3', option: 'cupVolume', kind: 'volume', bareUnit: 'cm3' },
  { key: 'roomC', option: 'room', kind: 'temperature', bareUnit: 'C' },
  { key: 'castingTempC', option: 'moldTemp', kind: 'temperature', bareUnit: 'C' },
  { key: 'sculptMassG', option: 'sculptMass', kind: 'mass', bareUnit: 'g' },
  { key: 'waterPerPlaster', option: 'jacketWater', kind: 'plain' },
  { key: 'wallMm', option: 'boxBoard', kind: 'length', bareUnit: 'mm' },
];

type WorkAsk = Pick<MoldAsk, 'sculptMassG' | 'castingTempC' | 'jacketMaterial' | 'jacketSettings' | 'box'> & {
  work: WorkWish;
};

/** A scale step that is typed wins over the shop's. Errors: BAD_CALL. */
export function workOptions(options: OptionValues, shop: Shop | undefined): Outcome<WorkAsk> {
  const read = readFigures(options, FIGURES);
  if (!read.ok) return read;
  const { wasteShare, cupLossG, containerCm3, roomC, castingTempC, sculptMassG, ...more } = read.value;
  const jacketMaterial = textOf(options, 'jacketMaterial');
  const { waterPerPlaster, wallMm } = more;
  if (waterPerPlaster !== undefined && (jacketMaterial ?? 'plaster') !== 'plaster')
    return bad('BAD_CALL', {
      text: `--jacket-water is about plaster, and the jacket is of ${jacketMaterial}.`,
      hint: 'Leave --jacket-water out, or take --jacket-material plaster.',
    });
  const scaleStepG = more.scaleStepG ?? shop?.scale?.stepG;
  const degassed = options.degas === true ? true : undefined;
  const material = textOf(options, 'boxMaterial');
  return good({
    work: defined({ wasteShare, cupLossG, scaleStepG, containerCm3, roomC, degassed }),
    ...defined({ castingTempC, sculptMassG, jacketMaterial }),
    ...(waterPerPlaster === undefined ? {} : { jacketSettings: { waterPerPlaster } }),
    ...(material === undefined && wallMm === undefined ? {} : { box: defined({ material, wallMm }) }),
  });
}
