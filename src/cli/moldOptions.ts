import { MOLD_KEYS, MOLD_TYPES, type MoldKey } from '../geometry';
import type { MoldAsk } from '../plan';
import type { Assumption } from '../estimate';
import { bad, good, type Outcome } from '../problem';
import { JACKET_MATERIALS, MOLDMAKING_RULES } from '../yield';
import { flagOf, shopOption } from './batchOptions';
import { textOf, type OptionSpec, type OptionValues } from './command';
import type { Io } from './io';
import { FACT_OPTIONS, factOptions } from './moldFactOptions';
import { FINISH_OPTIONS, finishOptions } from './moldFinishOptions';
import { PARAMETER_OPTIONS, parameterOptions } from './moldParameterOptions';
import { SILICONE_OPTIONS, siliconeOptions } from './moldSiliconeOptions';
import { WORK_OPTIONS, workOptions } from './moldWorkOptions';
import { FIELD_OPTIONS, fieldOptions, SCAN_OPTIONS, type FieldWish } from './scanOptions';

/** A mold asks for no offsets and writes no surface: the rest of the field's options are its own. */
const MOLD_FIELD_OPTIONS = FIELD_OPTIONS.filter(({ flags }) => !/^--(offset|surface) /.test(flags));

export const MOLD_OPTIONS: readonly OptionSpec[] = [
  { flags: '--type <type>', about: 'type of the mold (assumed skin)', choices: MOLD_KEYS },
  { flags: '--all', about: 'every type side by side, each at three thicknesses' },
  ...PARAMETER_OPTIONS,
  ...SILICONE_OPTIONS,
  ...WORK_OPTIONS,
  ...FACT_OPTIONS,
  ...FINISH_OPTIONS,
  ...SCAN_OPTIONS,
  ...MOLD_FIELD_OPTIONS,
];

/** What the call asks for, before the scan is opened. */
export interface MoldCall {
  ask: MoldAsk;
  all: boolean;
  field: FieldWish;
  /** Paint, sealer, glue or paint at all: then the notes of finishing are told. */
  wantsFinish: boolean;
  assumptions: (Assumption & { basis?: string })[];
}

const ASSUMED_TYPE: MoldKey = 'skin';

/** Errors: BAD_CALL, and those of the shop and of its card. */
export function moldOptions(options: OptionValues, io: Io): Outcome<MoldCall> {
  const all = options.all === true;
  const named = textOf(options, 'type') as MoldKey | undefined;
  if (all && named !== undefined)
    return bad('BAD_CALL', {
      text: '--all and --type are two answers to one question.',
      hint: 'Leave --type out to see every type, or --all to plan that one.',
    });
  const field = fieldOptions(options);
  if (!field.ok) return field;
  const shop = shopOption(options, io);
  if (!shop.ok) return shop;
  const settings = parameterOptions(options);
  if (!settings.ok) return settings;
  const silicone = siliconeOptions(options, shop.value);
  if (!silicone.ok) return silicone;
  const work = workOptions(options, shop.value);
  if (!work.ok) return work;
  const facts = factOptions(options);
  if (!facts.ok) return facts;
  const finish = finishOptions(options);
  if (!finish.ok) return finish;
  const type = named ?? ASSUMED_TYPE;
  const foreign = all ? undefined : foreignMaterial(options, type);
  if (foreign !== undefined) return foreign;
  const jacket = usualJacket(work.value.jacketMaterial, all ? undefined : type, settings.value.jacketMm);
  return good({
    ask: {
      type,
      settings: jacket === undefined ? settings.value : { ...settings.value, jacketMm: jacket.value },
      ...silicone.value,
      ...work.value,
      facts: facts.value,
      ...(finish.value === undefined ? {} : { finish: finish.value }),
    },
    all,
    field: field.value,
    wantsFinish: finish.value !== undefined || facts.value.willPaint === true,
    assumptions: [
      ...(all || named !== undefined ? [] : [typeAssumed()]),
      ...(jacket === undefined ? [] : [jacket]),
    ],
  });
}

const has = (type: MoldKey | undefined, key: string): boolean =>
  MOLD_TYPES.some(
    (one) => (type === undefined || one.key === type) && one.parameters.some((p) => p.key === key),
  );

/** Options about what only some types have, by a parameter that tells them. */
const MATERIALS = [
  { options: ['jacketMaterial', 'jacketWater'], key: 'jacketMm', what: 'a jacket' },
  { options: ['boxMaterial', 'boxBoard'], key: 'wallMm', what: 'a box' },
] as const;

function foreignMaterial(options: OptionValues, type: MoldKey): ReturnType<typeof bad> | undefined {
  const title = MOLD_TYPES.find(({ key }) => key === type)!.title;
  for (const { options: names, key, what } of MATERIALS) {
    const given = names.find((name) => options[name] !== undefined);
    if (given === undefined || has(type, key)) continue;
    const flag = flagOf(given);
    return bad('BAD_CALL', {
      text: `${flag} is about ${what}, and a mold of the type "${title}" has none.`,
      hint: `Leave ${flag} out, or take another --type.`,
    });
  }
  return undefined;
}

/** Fifteen millimeters of bandage would be eighteen layers: a material that is named comes with its usual thickness. */
function usualJacket(
  material: string | undefined,
  type: MoldKey | undefined,
  given: number | string | undefined,
): (Assumption & { value: number; basis: string }) | undefined {
  const known = JACKET_MATERIALS.find(({ key }) => key === material);
  if (known === undefined || given !== undefined || !has(type, 'jacketMm')) return undefined;
  const { value, from: basis } = known.thickness;
  return { name: 'jacket_mm', value, unit: 'mm', from: 'assumed', basis };
}

function typeAssumed(): Assumption & { basis: string } {
  const { title } = MOLD_TYPES.find(({ key }) => key === ASSUMED_TYPE)!;
  return {
    name: 'type',
    value: ASSUMED_TYPE,
    unit: '',
    from: 'assumed',
    basis: `chosen here: ${title.toLowerCase()}, the least rubber; --all shows every type`,
  };
}

/** What box and jacket were taken to be of, where nothing was said. */
export function materialsAssumed(
  { box, jacketMaterial, jacketSettings }: MoldAsk,
  of: { box: boolean; jacket: boolean },
): (Assumption & { basis: string })[] {
  const { boxWall, plasterWater } = MOLDMAKING_RULES;
  const assume = (name: string, value: number | string, unit: string, basis: string) =>
    ({ name, value, unit, from: 'assumed', basis }) as const;
  const practice = 'chosen here: the usual one';
  return [
    ...(of.box && box?.material === undefined ? [assume('box_material', 'plywood', '', practice)] : []),
    ...(of.box && box?.wallMm === undefined
      ? [assume('box_board_mm', boxWall.value, boxWall.unit, boxWall.from)]
      : []),
    ...(of.jacket && jacketMaterial === undefined
      ? [assume('jacket_material', 'plaster', '', practice)]
      : []),
    ...(of.jacket && (jacketMaterial ?? 'plaster') === 'plaster' && jacketSettings === undefined
      ? [assume('water_per_plaster', plasterWater.value, '', plasterWater.from)]
      : []),
  ];
}
