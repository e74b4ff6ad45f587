import { CHECK_FIGURES } from '../checks';
import type { Assumption } from '../estimate';
import { moldType } from '../geometry';
import { compareMolds, openMoldBench, planMold, type Compared, type Mold, type Size } from '../plan';
import { good, type Outcome, type Problem } from '../problem';
import { MOLDMAKING_RULES } from '../yield';
import type { OptionValues } from './command';
import type { Io } from './io';
import { measureScan } from './measureScan';
import { materialsAssumed, type MoldCall } from './moldOptions';
import { flagOfParameter } from './moldParameterOptions';

/** The size of the scan, and its mold or all of them. */
export interface Made {
  size: Size;
  mold?: Mold;
  compared?: Compared[];
}

/** Measures the scan once and plans what the call asks for. Errors: those of `openMoldBench`, `planMold` and `compareMolds`. */
export function makeMolds(path: string, call: MoldCall, options: OptionValues, io: Io): Outcome<Made> {
  const { ask, all, field } = call;
  // A block needs no field.
  const needsField = all || moldType(ask.type).parameters.some(({ key }) => key === 'skinMm');
  return measureScan(path, { options, io, field, needsField }, (scan, how) => {
    const opened = openMoldBench(scan, how);
    if (!opened.ok) return opened;
    const { size, bench } = opened.value;
    const made = all ? comparedOn(bench, call) : moldOn(bench, call);
    return made.ok ? good({ size, ...made.value }) : withFlag(made);
  });
}

type Bench = Parameters<typeof planMold>[0];

function moldOn(bench: Bench, { ask }: MoldCall): Outcome<{ mold: Mold }> {
  const mold = planMold(bench, ask);
  return mold.ok ? good({ mold: mold.value }) : mold;
}

/** Where no type can be made as asked, or a value is wrong for the one that has it, the call is answered with that. */
function comparedOn(bench: Bench, { ask }: MoldCall): Outcome<{ compared: Compared[] }> {
  const compared = compareMolds(bench, ask);
  if (!compared.ok) return compared;
  const refused = compared.value.filter(({ isUsual }) => isUsual).map(({ mold }) => mold);
  const wrong = refused.find((mold) => !mold.ok && mold.problem.code === 'MOLD_PARAMETER');
  if (wrong !== undefined && !wrong.ok) return wrong;
  const first = refused[0]!;
  if (!first.ok && refused.every(({ ok }) => !ok)) return first;
  return good({ compared: compared.value });
}

/** The parameter by its option rather than by its key. */
function withFlag(refused: { ok: false; problem: Problem }): { ok: false; problem: Problem } {
  const { problem } = refused;
  if (problem.code !== 'MOLD_PARAMETER_FOREIGN') return refused;
  const values = { ...problem.values, key: flagOfParameter(String(problem.values.key)) };
  return { ok: false, problem: { ...problem, values } };
}

/** All that was taken for granted for one mold, the size of the scan apart. */
export function assumedFor(mold: Mold, { ask, field }: MoldCall): (Assumption & { basis?: string })[] {
  const { surroundings, voxel, finishing } = mold;
  const { adhesive, clayDensity, texture } = MOLDMAKING_RULES;
  const assume = (name: string, rule: { value: number; unit: string; from: string }) =>
    ({ name, value: rule.value, unit: rule.unit, from: 'assumed', basis: rule.from }) as const;
  const isCoarse = voxel !== undefined && field.accuracy === undefined && field.voxelMm === undefined;
  return [
    ...mold.assumptions,
    ...materialsAssumed(ask, {
      box: surroundings.wall !== undefined,
      jacket: surroundings.jacket !== undefined,
    }),
    ...(mold.clay === undefined ? [] : [assume('clay_density_kg_m3', clayDensity)]),
    ...(ask.finish !== undefined && ask.finish.textureFactor === undefined
      ? [assume('texture_factor', texture)]
      : []),
    ...(finishing.bondG === undefined ? [] : [assume('adhesive_g_per_m2', adhesive)]),
    ...(isCoarse ? [{ name: 'accuracy', value: 'normal', unit: '', from: 'assumed' } as const] : []),
  ];
}

/** The cautions of a mold, and those of what the call adds: paint and release, a mold that is hot when foam is poured. */
export const cautionsOf = (mold: Mold, { ask, wantsFinish }: MoldCall): string[] => [
  ...mold.cautions,
  ...(wantsFinish || ![undefined, 'none'].includes(ask.facts?.release) ? ['solvents'] : []),
  ...((ask.castingTempC ?? 0) > CHECK_FIGURES.hotSurface.value ? ['hot-mold'] : []),
];
