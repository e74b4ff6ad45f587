import { preparePour } from '../plan';
import { good, type Outcome, type Problem } from '../problem';
import type { PackColumn, PackComparison, PackLevels, RefusedPack } from '../yield';
import type { OptionSpec, OptionValues } from './command';
import { readFigures } from './moldFigures';
import { POUR_CALL_OPTIONS, pourFor, type PourCall, type Poured } from './pourCall';

export const PACKS_OPTIONS: readonly OptionSpec[] = [
  { flags: '--from <factor>', about: 'first pack factor to compare (assumed 1.10)' },
  { flags: '--to <factor>', about: 'last pack factor (assumed 1.60)' },
  { flags: '--step <factor>', about: 'step from pack to pack (assumed 0.10)' },
  ...POUR_CALL_OPTIONS,
];

/** One level: the pour at that pack with its stiffness, cost and past castings, or why it cannot be. */
export type Column = { packFactor: number } & (
  { poured: Poured; compared: PackColumn; own: Problem[]; refused?: undefined } | { refused: Problem }
);

export interface Packs {
  columns: Column[];
  reference: PackComparison['reference'];
  /** What holds at every level; what holds at some only is with its column. */
  findings: Problem[];
}

/** Errors: BAD_CALL. */
export const packLevelsOf = (options: OptionValues): Outcome<PackLevels> =>
  readFigures<'from' | 'to' | 'step'>(options, [
    { key: 'from', option: 'from', kind: 'packFactor' },
    { key: 'to', option: 'to', kind: 'packFactor' },
    { key: 'step', option: 'step', kind: 'plain' },
  ]);

/** The same pour at every level. Errors: those of the batch apart from its pack, PACK_LEVELS. */
export function packsFor(call: PourCall, levels: PackLevels): Outcome<Packs> {
  // Neither straps nor cups: what they cannot do at one level is no reason against the others.
  const ask = { ...call.ask };
  const timesAtC = ask.foam?.timesAtC;
  for (const key of ['clamp', 'cups', 'foam'] as const) delete ask[key];
  const listed = preparePour({
    ...ask,
    ...(timesAtC === undefined ? {} : { foam: { timesAtC } }),
    packs: levels,
  });
  if (!listed.ok) return listed;
  const { columns: bare, reference } = listed.value.packs!;
  const columns = bare.map((each) => columnAt(call, each));
  const shared = inAll(columns);
  return good({
    columns: columns.map((column) =>
      column.refused === undefined
        ? { ...column, own: column.own.filter((one) => !shared.has(keyOf(one))) }
        : column,
    ),
    reference,
    findings: firstFindings(columns).filter((one) => shared.has(keyOf(one))),
  });
}

function columnAt(call: PourCall, bare: PackColumn | RefusedPack): Column {
  const { packFactor } = bare;
  if (bare.refused !== undefined) return { packFactor, refused: bare.refused };
  const pour = { ...call.ask.pour };
  for (const way of ['shortFillChance', 'overpackShare'] as const) delete pour[way];
  const poured = pourFor({
    ...call,
    ask: { ...call.ask, pour: { ...pour, packFactor: { value: packFactor, from: 'given' as const } } },
  });
  if (!poured.ok) return { packFactor, refused: poured.problem };
  return { packFactor, poured: poured.value, compared: bare, own: poured.value.findings };
}

const keyOf = (one: Problem): string => JSON.stringify([one.code, one.status, one.values, one.at]);

const firstFindings = (columns: readonly Column[]): Problem[] => {
  const first = columns.find((column) => column.refused === undefined);
  return first === undefined || first.refused !== undefined ? [] : first.own;
};

/** Keys of the findings that every level has that can be poured. */
function inAll(columns: readonly Column[]): Set<string> {
  const each = columns.flatMap((column) =>
    column.refused === undefined ? [new Set(column.own.map(keyOf))] : [],
  );
  const [first, ...others] = each;
  return new Set([...(first ?? [])].filter((key) => others.every((other) => other.has(key))));
}
