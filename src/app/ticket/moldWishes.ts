import type { CheckFacts, FactName, MaterialFacts } from '../../checks';
import { MOLD_TYPES, type MoldKey, type MoldType, type MoldWish } from '../../geometry';
import type { CastingWish, FinishWish, SiliconeWish, WorkWish } from '../../plan';
import { JACKET_MATERIALS, SILICONE_RULES, type JacketMaterial, type JacketSettings } from '../../yield';
import type { MoldsAsk } from '../../worker/protocol';
import { textOf, type FieldName, type Fields, type OwnField } from './fields';
import { readKitsText } from './kits';
import { isPicked, jacketField, moldField } from './madeFields';
import { typeOf, type Molding } from './moldState';
import { readField, valueIn } from './readField';
import type { Ticket } from './state';

/** Fields of the silicone, its card and how it is mixed. */
export const SILICONE_FIELDS: readonly OwnField[] = [
  'siliconeDensity',
  'siliconeBase',
  'siliconeCatalyst',
  'potLife',
  'potLifeAt',
  'room',
  'mixingCup',
  'stays',
  'viscosity',
  'degasPressure',
  'stockBase',
  'stockCatalyst',
  'siliconeWaste',
  'cupLoss',
];
export const FACT_FIELDS: readonly OwnField[] = ['barrierDry', 'pigmentShare'];
export const CASTING_FIELDS: readonly OwnField[] = ['sheetShrink', 'measuredShrink', 'castingTemp', 'room'];
/** What stands in the cavity and takes up room for foam. */
export const CORE_FIELDS: readonly OwnField[] = ['coreVolume', 'coreMass', 'armature'];
/** No mold hangs on it. */
const isOfCore = (name: FieldName): boolean => CORE_FIELDS.some((one) => one === name);

export const FINISH_FIELDS: readonly OwnField[] = [
  'texture',
  'paintCoverage',
  'paintCoats',
  'sealCoverage',
  'sealCoats',
  'bondFace',
  'bondTakes',
  'openShare',
];

export const hasParameter = ({ parameters }: MoldType, key: string): boolean =>
  parameters.some((parameter) => parameter.key === key);

/** Poured rubber lifts the sculpt; rubber that goes on in coats does not. */
export const isPoured = (type: MoldType): boolean => !hasParameter(type, 'firstCoatMm');

export const jacketOf = ({ jacket }: Molding): JacketMaterial =>
  JACKET_MATERIALS.find(({ key }) => key === jacket) ?? JACKET_MATERIALS[0]!;

/** Fields of the walls around the rubber: those of a box, or of a jacket of the chosen material. */
export function holdFields(molding: Molding): FieldName[] {
  const type = typeOf(molding);
  const material = jacketOf(molding);
  return [
    ...(hasParameter(type, 'wallMm') ? (['boxWall'] as const) : []),
    ...(isPoured(type) ? (['sculptMass'] as const) : []),
    ...(hasParameter(type, 'jacketMm')
      ? material.parameters.map(({ key }) => jacketField(material.key, key))
      : []),
  ];
}

/** The typed parameters of one type. */
export const typeFields = (type: MoldType): FieldName[] =>
  type.parameters.filter((parameter) => !isPicked(parameter)).map((parameter) => moldField(type, parameter));

/** All fields that stand on the page for the chosen type. */
export const moldFields = ({ molding }: Ticket): FieldName[] => [
  ...typeFields(typeOf(molding)),
  ...holdFields(molding),
  ...SILICONE_FIELDS,
  ...FACT_FIELDS,
  ...CASTING_FIELDS.filter((name) => name !== 'room'),
  ...CORE_FIELDS,
  ...FINISH_FIELDS,
];

export const isUnreadField = (fields: Fields, name: FieldName): boolean => {
  const { kind } = readField(name, textOf(fields, name));
  return kind === 'ask' || kind === 'error';
};

/** The first box the molds hang on that has no single meaning; `kits` is a text of its own. */
export function unreadForMold(ticket: Ticket): FieldName | 'kits' | undefined {
  const field = [...moldFields(ticket), 'scaleStep' as const].find(
    (name) => !isOfCore(name) && isUnreadField(ticket.fields, name),
  );
  return field ?? halfRatio(ticket.fields) ?? (readKitsText(ticket.molding.kits).ok ? undefined : 'kits');
}

/** A ratio of which one side was typed: the other side is not guessed. */
export function halfRatio(fields: Fields): 'siliconeBase' | 'siliconeCatalyst' | undefined {
  const [base, catalyst] = [valueIn(fields, 'siliconeBase'), valueIn(fields, 'siliconeCatalyst')];
  if ((base === undefined) === (catalyst === undefined)) return undefined;
  return base === undefined ? 'siliconeBase' : 'siliconeCatalyst';
}

/** Base and catalyst by weight, as typed or as assumed. */
export function siliconeRatio(fields: Fields): { base: number; catalyst: number; isAssumed: boolean } {
  const [base, catalyst] = [valueIn(fields, 'siliconeBase'), valueIn(fields, 'siliconeCatalyst')];
  return base === undefined || catalyst === undefined
    ? { base: SILICONE_RULES.basePerCatalyst.value, catalyst: 1, isAssumed: true }
    : { base, catalyst, isAssumed: false };
}

/** What the molds are asked with, or undefined while a box for them is unread. */
export function moldsAskOf(ticket: Ticket): MoldsAsk | undefined {
  if (unreadForMold(ticket) !== undefined) return undefined;
  const { fields, molding } = ticket;
  return {
    settings: settingsOf(fields, molding),
    silicone: siliconeOf(fields, molding),
    work: workOf(fields, molding),
    jacketMaterial: jacketOf(molding).key,
    jacketSettings: jacketSettingsOf(fields, molding),
    ...given('sculptMassG', isUnreadField(fields, 'sculptMass') ? undefined : valueIn(fields, 'sculptMass')),
    box: {
      ...given('material', molding.box),
      ...given('wallMm', valueIn(fields, 'boxWall')),
    },
    ...castingOf(fields),
    facts: factsOf(ticket),
    finish: finishOf(fields),
  };
}

/** What is said of the cavity at casting. */
export function castingWishOf({ fields, molding }: Ticket): CastingWish {
  const { cure, linearShrinkShare } = siliconeOf(fields, molding);
  return {
    silicone: { ...given('cure', cure), ...given('linearShrinkShare', linearShrinkShare) },
    work: { ...given('roomC', valueIn(fields, 'room')) },
    ...castingOf(fields),
  };
}

/** Each type by what was said of its own parameters. One with a box that cannot be read is left out; of the chosen one there is none. */
function settingsOf(fields: Fields, molding: Molding): Partial<Record<MoldKey, MoldWish>> {
  return Object.fromEntries(
    MOLD_TYPES.filter((type) => !typeFields(type).some((name) => isUnreadField(fields, name))).map((type) => [
      type.key,
      Object.fromEntries(
        type.parameters.flatMap((parameter) => {
          const name = moldField(type, parameter);
          const value = isPicked(parameter) ? molding.picks[name] : valueIn(fields, name);
          return value === undefined || value === '' ? [] : [[parameter.key, value]];
        }),
      ),
    ]),
  );
}

function siliconeOf(fields: Fields, { siliconeName, kits, facts }: Molding): SiliconeWish {
  const base = valueIn(fields, 'siliconeBase');
  const catalyst = valueIn(fields, 'siliconeCatalyst');
  const read = readKitsText(kits);
  const cure = facts.siliconeCure;
  const stock = {
    ...given('baseKg', inKg(valueIn(fields, 'stockBase'))),
    ...given('catalystKg', inKg(valueIn(fields, 'stockCatalyst'))),
  };
  return {
    ...given('name', siliconeName.trim() === '' ? undefined : siliconeName.trim()),
    ...(cure === 'condensation' || cure === 'addition' ? { cure } : {}),
    ...given('densityKgM3', valueIn(fields, 'siliconeDensity')),
    ...(base === undefined || catalyst === undefined ? {} : { ratio: { base, catalyst, by: 'mass' } }),
    ...given('potLifeMin', valueIn(fields, 'potLife')),
    ...given('potLifeAtC', valueIn(fields, 'potLifeAt')),
    ...given('linearShrinkShare', valueIn(fields, 'sheetShrink')),
    ...given('mixedViscosityPaS', valueIn(fields, 'viscosity')),
    ...(read.ok && read.kits.length > 0 ? { kits: read.kits } : {}),
    ...(Object.keys(stock).length > 0 ? { stock: [stock] } : {}),
  };
}

function workOf(fields: Fields, { degassed }: Molding): WorkWish {
  return {
    ...given('wasteShare', valueIn(fields, 'siliconeWaste')),
    ...given('cupLossG', valueIn(fields, 'cupLoss')),
    ...given('scaleStepG', valueIn(fields, 'scaleStep')),
    ...given('roomC', valueIn(fields, 'room')),
    ...given('containerCm3', valueIn(fields, 'mixingCup')),
    degassed,
    ...given('degasPressureKPa', valueIn(fields, 'degasPressure')),
    ...given('staysMm', valueIn(fields, 'stays')),
  };
}

function jacketSettingsOf(fields: Fields, molding: Molding): JacketSettings {
  const material = jacketOf(molding);
  return Object.fromEntries(
    material.parameters.flatMap(({ key }) => {
      const value = valueIn(fields, jacketField(material.key, key));
      return value === undefined || isUnreadField(fields, jacketField(material.key, key))
        ? []
        : [[key, value]];
    }),
  );
}

function castingOf(fields: Fields): Pick<MoldsAsk, 'castingTempC' | 'measuredShrink'> {
  const share = valueIn(fields, 'measuredShrink');
  return {
    ...given('castingTempC', valueIn(fields, 'castingTemp')),
    ...(share === undefined ? {} : { measuredShrink: { share } }),
  };
}

/** The engine takes a fact in its own kind; what nobody said is left out. */
function factsOf({ fields, molding, today }: Ticket): MaterialFacts {
  return {
    ...factValues(molding.facts),
    ...given('barrierDryMin', valueIn(fields, 'barrierDry')),
    ...given('pigmentShare', valueIn(fields, 'pigmentShare')),
    today,
  };
}

/** Facts as they stand in the menus, each in its own kind. */
export function factValues(facts: Partial<Record<FactName, string>>): CheckFacts {
  const said = Object.entries(facts).filter(([, value]) => value !== '');
  return Object.fromEntries(
    said.map(([name, value]) => [name, value === 'yes' ? true : value === 'no' ? false : value]),
  );
}

function finishOf(fields: Fields): FinishWish {
  const coats = (name: OwnField): number => valueIn(fields, name) ?? 1;
  const paintM2 = valueIn(fields, 'paintCoverage');
  const sealM2 = valueIn(fields, 'sealCoverage');
  const faceCm2 = valueIn(fields, 'bondFace');
  return {
    ...given('textureFactor', valueIn(fields, 'texture')),
    ...(paintM2 === undefined ? {} : { paint: { coverageM2: paintM2, coats: coats('paintCoats') } }),
    ...(sealM2 === undefined ? {} : { seal: { coverageM2: sealM2, coats: coats('sealCoats') } }),
    ...(faceCm2 === undefined ? {} : { bond: { faceCm2, ...given('gPerM2', valueIn(fields, 'bondTakes')) } }),
    ...given('openShare', valueIn(fields, 'openShare')),
  };
}

/** Something about the cavity was said: then Batch pours for it, unless told otherwise. */
export function pourByOf({ fields, molding }: Ticket): 'sculpt' | 'cavity' {
  if (molding.pourBy !== undefined) return molding.pourBy;
  const said = (['sheetShrink', 'measuredShrink', 'castingTemp'] as const).some(
    (name) => fields[name].text.trim() !== '',
  );
  return said ? 'cavity' : 'sculpt';
}

const inKg = (massG: number | undefined): number | undefined =>
  massG === undefined ? undefined : massG / 1000;

export const given = <K extends string, V>(key: K, value: V | undefined): { [P in K]?: V } =>
  value === undefined ? {} : ({ [key]: value } as { [P in K]?: V });
