import type { Estimate } from '../../estimate';
import {
  MOLD_TYPES,
  moldType,
  moldWork,
  settleMold,
  type MoldKey,
  type MoldParameter,
  type MoldSettings,
  type MoldType,
  type MoldWish,
} from '../../geometry';
import { bad, good, type Outcome } from '../../problem';
import { MM3_PER_CM3 } from '../sizeDoubts';
import { bodyFor, type MoldBench } from './moldBench';
import { rubberEstimate } from './moldVolume';

/** The rubber of a mold at one thickness. */
export interface Rung {
  thicknessMm: number;
  /** By part, in the order of the mold. */
  parts: { name: string; volumeCm3: number }[];
  rubberCm3: Estimate;
  /** How fast the first part grows with the thickness, cm3 a mm: the area of the grown body, where there is one. */
  growsCm3PerMm?: number;
}

/** Rubber against thickness: measured on rungs, so that a thickness between two of them is told at once. */
export interface LadderOfType {
  type: MoldKey;
  /** The parameter that is the thickness. */
  of: string;
  /** All other parameters. */
  settings: MoldSettings;
  /** From thin to thick. */
  rungs: Rung[];
  /** How fast a skin grows from nothing: the area of the sculpt that it covers, cm3 a mm. */
  startsCm3PerMm?: number;
}

export type LadderWishes = Partial<Record<MoldKey, MoldWish>>;

/** Rungs that were measured before, by all they hang on; none where the type does not go so thick. */
export type KnownRungs = Map<string, Rung | undefined>;

/** Thicknesses that are measured, mm, beside the usual one and the ends of the range: closer together where they are thin. Chosen here. */
const LADDER_MM = [3, 6, 10, 15, 22, 30, 40, 55, 75, 100];

const THICKNESS_KEYS = ['skinMm', 'wallMm'];

/** The thickness of a type: of its skin, or of its wall. */
export const thicknessOf = ({ parameters }: MoldType): MoldParameter | undefined =>
  parameters.find(({ key }) => THICKNESS_KEYS.includes(key));

/**
 * A bench of its own on the same sculpt: a field that reaches as far as the thickest rung has larger voxels, and the molds must not come to depend on
 * whether a ladder was measured. A coarse one does: on the troll and the hand it differs from the fine one by a thousandth.
 */
export const ladderBench = (bench: MoldBench): MoldBench => ({
  ...bench,
  accuracy: 'fast',
  fields: new Map(),
  pulls: new Map(bench.pulls),
  thicknesses: new Map(),
});

/**
 * The ladders of all types asked for, on a bench of `ladderBench`. A type that does not fit this sculpt is left out: its mold says why. What was measured goes
 * into `known`, so that work which stood aside goes on where it was. Error: STOPPED.
 */
export function measureLadders(
  bench: MoldBench,
  wishes: LadderWishes,
  known: KnownRungs = new Map(),
): Outcome<LadderOfType[]> {
  const tasks = MOLD_TYPES.flatMap((type) => tasksOf(type, wishes[type.key]));
  // The thickest first: the field that it needs then stands for all.
  for (const [n, task] of [...tasks].sort((a, b) => b.thicknessMm - a.thicknessMm).entries()) {
    if (bench.options.shouldStop?.() === true) return bad('STOPPED');
    if (!known.has(task.key)) {
      const rung = rungOf(bench, task);
      if (!rung.ok && rung.problem.code === 'STOPPED') return rung;
      known.set(task.key, rung.ok ? rung.value : undefined);
    }
    bench.options.onProgress?.((n + 1) / tasks.length);
  }
  return good(
    MOLD_TYPES.flatMap((type) =>
      ladderFrom(
        bench,
        tasks.filter((task) => task.type === type.key),
        known,
      ),
    ),
  );
}

interface Task {
  type: MoldKey;
  of: string;
  settings: MoldSettings;
  thicknessMm: number;
  key: string;
}

function tasksOf(type: MoldType, wish: MoldWish | undefined): Task[] {
  const parameter = thicknessOf(type);
  if (wish === undefined || parameter === undefined) return [];
  const { key: of } = parameter;
  const settled = settleMold(type, { ...wish, [of]: parameter.default });
  if (!settled.ok) return [];
  return rungsOf(parameter).map((thicknessMm) => {
    const settings = { ...settled.value, [of]: thicknessMm };
    return { type: type.key, of, settings, thicknessMm, key: JSON.stringify([type.key, settings]) };
  });
}

function rungsOf({ low = 0, high = 0, default: usual }: MoldParameter): number[] {
  const within = LADDER_MM.filter((mm) => mm > low && mm < high);
  return [...new Set([low, ...within, Number(usual), high])].sort((a, b) => a - b);
}

/** Errors: those of the type's build, and STOPPED. */
function rungOf(bench: MoldBench, { type, settings, thicknessMm }: Task): Outcome<Rung> {
  const body = bodyFor(bench, type, settings);
  if (!body.ok) return body;
  const shape = moldWork(type).build(body.value, settings);
  if (!shape.ok) return shape;
  const { sculpt, voxel } = body.value;
  const { rubber, grown } = shape.value;
  return good({
    thicknessMm,
    parts: rubber.map(({ name, volumeMm3 }) => ({ name, volumeCm3: volumeMm3 / MM3_PER_CM3 })),
    rubberCm3: rubberEstimate(shape.value, bench.settled, sculpt, voxel?.voxelMm),
    ...(grown === undefined ? {} : { growsCm3PerMm: grown.areaMm2 / MM3_PER_CM3 }),
  });
}

function ladderFrom(bench: MoldBench, tasks: readonly Task[], known: KnownRungs): LadderOfType[] {
  const [first] = tasks;
  const rungs = tasks.map(({ key }) => known.get(key)).filter((rung) => rung !== undefined);
  if (first === undefined || rungs.length < 2) return [];
  const { type, of } = first;
  const { [of]: _, ...settings } = first.settings;
  const sculpt = bench.sculpts.get(settings.base === 'closed' ? 'closed' : 'open');
  const isSkin = moldType(type).parameters.some(({ key }) => key === 'jacketMm');
  return [
    {
      type,
      of,
      settings,
      rungs,
      ...(isSkin && sculpt !== undefined ? { startsCm3PerMm: sculpt.areaMm2 / MM3_PER_CM3 } : {}),
    },
  ];
}
