import { MOLD_TYPES, type MoldParameter, type MoldType } from '../../geometry';
import { unitSign } from '../../words/unitSign';
import { JACKET_MATERIALS, MOLDMAKING_BOUNDS, type JacketParameter } from '../../yield';
import type { FieldSpec } from './fieldSpec';
import { DROPS_WEIGHED } from './pourFields';
import { MOST_COLORS } from './pourState';
import { BODY_SIDES, bodyFields, MOST_BODIES, type BodySide } from './sizingFields';

/*
 * Fields that nobody wrote down: one a parameter of a mold type or of a jacket material, so that a new one appears on the page by being in its list; and
 * those of each row of the color recipe, of the list of vents and of the bodies that a tape takes.
 */

export type MadeField =
  `mold.${string}` | `jacket.${string}` | `color.${string}` | `vent.${string}` | `body.${string}`;

interface Made {
  label: string;
  spec: FieldSpec;
  /** A height on this one scan: forgotten with it. */
  isOfScan: boolean;
}

/** One word for all types that have it: the first type with a parameter of that key and label gives the name. */
export function moldField(type: MoldType, { key, label }: MoldParameter): MadeField {
  const first = MOLD_TYPES.find(({ parameters }) =>
    parameters.some((one) => one.key === key && one.label === label),
  );
  return `mold.${(first ?? type).key}.${key}`;
}

export const jacketField = (material: string, key: string): MadeField => `jacket.${material}.${key}`;

/** Share and drops of one color, counted from 0. */
export const colorFields = (row: number): { share: MadeField; drops: MadeField } => ({
  share: `color.${row}.share`,
  drops: `color.${row}.drops`,
});

/** As many as are ever advised. */
export const MOST_VENTS = 24;

const AXES = ['x', 'y', 'z'] as const;

const SIDE_NAMES: Readonly<Record<BodySide, string>> = {
  length: 'Length',
  girth: 'Girth',
  otherGirth: 'Girth of the other end',
  width: 'Width',
  depth: 'Depth',
  height: 'Height',
};

/** Where one planned vent is, counted from 0: x, y, z. */
export const ventFields = (row: number): MadeField[] => AXES.map((axis): MadeField => `vent.${row}.${axis}`);

/** Chosen from a list or a direction, not typed. */
export const isPicked = ({ kind }: MoldParameter): boolean => kind === 'choice' || kind === 'pull';

export const MADE_FIELDS: ReadonlyMap<MadeField, Made> = new Map([
  ...MOLD_TYPES.flatMap((type) =>
    type.parameters
      .filter((parameter) => !isPicked(parameter))
      .map((parameter): [MadeField, Made] => [
        moldField(type, parameter),
        { label: parameter.label, spec: specOfMold(parameter), isOfScan: parameter.kind === 'height' },
      ]),
  ),
  ...JACKET_MATERIALS.flatMap(({ key, parameters }) =>
    parameters.map((parameter): [MadeField, Made] => [
      jacketField(key, parameter.key),
      { label: parameter.title, spec: specOfJacket(parameter), isOfScan: false },
    ]),
  ),
  ...Array.from({ length: MOST_COLORS }, (_, row) => row).flatMap((row): [MadeField, Made][] => [
    [
      colorFields(row).share,
      {
        label: `Share of color ${row + 1}`,
        spec: { kind: 'share', units: ['%'], allowZero: true },
        isOfScan: false,
      },
    ],
    [
      colorFields(row).drops,
      {
        label: `${DROPS_WEIGHED} drops of color ${row + 1} weigh`,
        spec: { kind: 'mass', units: ['g', 'oz'] },
        isOfScan: false,
      },
    ],
  ]),
  ...Array.from({ length: MOST_VENTS }, (_, row) => row).flatMap((row) =>
    ventFields(row).map((name, axis): [MadeField, Made] => [
      name,
      {
        label: `${AXES[axis]} of vent ${row + 1}`,
        spec: { kind: 'length', units: ['mm', 'in'], allowZero: true, isSigned: true },
        isOfScan: true,
      },
    ]),
  ),
  ...Array.from({ length: MOST_BODIES }, (_, row) => row).flatMap((row) =>
    BODY_SIDES.map((side): [MadeField, Made] => [
      bodyFields(row)[side],
      {
        label: `${SIDE_NAMES[side]} of body ${row + 1}`,
        spec: { kind: 'length', units: ['mm', 'in'] },
        isOfScan: false,
      },
    ]),
  ),
]);

function specOfMold({ kind, low }: MoldParameter): FieldSpec {
  const zero = low === 0 ? { allowZero: true as const } : {};
  if (kind === 'length' || kind === 'height') return { kind: 'length', units: ['mm', 'in'], ...zero };
  return { kind: 'plain', units: [], ...zero, ...(kind === 'angle' ? { after: 'degrees' } : {}) };
}

/** Shares are typed in percent, where the rule is below 1 and bounded so; everything else by its unit. */
function specOfJacket({ key, rule }: JacketParameter): FieldSpec {
  const { low, high } = MOLDMAKING_BOUNDS[key];
  const zero = low === 0 ? { allowZero: true as const } : {};
  if (rule.unit === 'mm') return { kind: 'length', units: ['mm', 'in'], ...zero };
  if (rule.unit === 'kg/m3') return { kind: 'density', units: ['kg/m3', 'g/cm3', 'lb/ft3'] };
  if (rule.unit === '' && high <= 1) return { kind: 'share', units: ['%'], ...zero };
  return {
    kind: 'plain',
    units: [],
    ...zero,
    ...(rule.unit === '' ? {} : { after: unitSign(rule.unit) }),
  };
}
