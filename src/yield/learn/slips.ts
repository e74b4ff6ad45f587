import { G_PER_LB, G_PER_OZ } from '../../units';
import type { MassRatio } from '../foam';
import { RULES } from '../rules';
import { scaleReadingUG } from '../scaleCheck';
import { LEARN_RULES as R } from './rules';

/** A pour as it was typed. What was not written down is left out. */
export interface TypedPour {
  aG?: number;
  bG?: number;
  /** Weighed into the cup beside A and B: it is in the mix, and in all that comes of it. */
  colorG?: number;
  mixedG?: number;
  residueG?: number;
  castingG?: number;
  trimG?: number;
  roomC?: number;
  moldC?: number;
}

/** What the pour should have been, as far as anyone knows. */
export interface ExpectedPour {
  ratio?: MassRatio;
  mixedG?: number;
  castingG?: number;
  stepG?: number;
}

export type TypedField = Exclude<keyof TypedPour, 'colorG'>;

/**
 * Something to ask about. `field` was typed as `typed` and may have been meant as `instead`; until someone answers, nothing is
 * learned from the fields `heldBack`, and the row stays as it was typed.
 */
export interface Slip {
  code: 'casting-over' | 'ounces' | 'pounds' | 'fahrenheit' | 'sides-swapped' | 'sum-off';
  field: TypedField;
  typed: number;
  instead?: number;
  heldBack: TypedField[];
  /** Of a casting that is heavier than can be: it is just what was poured, so that was typed in its place. */
  isPoured?: boolean;
}

/**
 * Slips of the pen in one pour: a casting heavier than what was poured less its trim, ounces or pounds typed as grams, Fahrenheit typed
 * as C, A and B the other way round, a sum that is none. Asked about, never put right or dropped in silence. No slip is the absence of
 * proof only: a weight that is merely wrong looks like any other.
 */
export function findSlips(pour: TypedPour, expected: ExpectedPour = {}): Slip[] {
  const units = unitSlips(pour, expected);
  // A weight in the wrong unit upsets every sum it stands in: those are asked once it is answered.
  const doubted = units.flatMap(({ heldBack }) => heldBack);
  const sound = Object.fromEntries(
    Object.entries(pour).filter(([field]) => !doubted.includes(field as TypedField)),
  ) as TypedPour;
  return [
    ...units,
    ...warmthSlips(pour),
    ...swapped(sound, expected),
    ...castingOver(sound, expected),
    ...sumOff(sound, expected),
  ];
}

/** Twice the standard uncertainty of so many readings. */
const slackG = (readings: number, { stepG = RULES.scaleStep.value }: ExpectedPour): number =>
  2 * scaleReadingUG(stepG) * Math.sqrt(readings);

function castingOver(pour: TypedPour, expected: ExpectedPour): Slip[] {
  const { mixedG = sumOf(pour), residueG = 0, castingG, trimG = 0 } = pour;
  if (mixedG === undefined || castingG === undefined) return [];
  const mostG = mixedG - residueG - trimG;
  if (castingG <= mostG + slackG(4, expected)) return [];
  const isPoured =
    pour.residueG !== undefined && Math.abs(castingG - (mixedG - residueG)) <= slackG(3, expected);
  return [
    {
      code: 'casting-over',
      field: 'castingG',
      typed: castingG,
      instead: mostG,
      heldBack: ['castingG'],
      isPoured,
    },
  ];
}

const sumOf = ({ aG, bG, colorG = 0 }: TypedPour): number | undefined =>
  aG === undefined || bG === undefined ? undefined : aG + bG + colorG;

function sumOff(pour: TypedPour, expected: ExpectedPour): Slip[] {
  const { mixedG } = pour;
  const sumG = sumOf(pour);
  if (mixedG === undefined || sumG === undefined) return [];
  if (Math.abs(sumG - mixedG) <= slackG(3, expected)) return [];
  return [
    { code: 'sum-off', field: 'mixedG', typed: mixedG, instead: sumG, heldBack: ['mixedG', 'aG', 'bG'] },
  ];
}

/** A over B is the ratio of the card turned around. Near 1:1 nobody can tell. */
function swapped({ aG, bG }: TypedPour, { ratio }: ExpectedPour): Slip[] {
  if (aG === undefined || bG === undefined || ratio === undefined || aG <= 0 || bG <= 0) return [];
  const wanted = Math.log(ratio.a / ratio.b);
  const seen = Math.log(aG / bG);
  const near = Math.log(1 + R.slipRatio.value);
  if (Math.abs(wanted) < 2 * near || Math.abs(seen + wanted) > near) return [];
  return [{ code: 'sides-swapped', field: 'aG', typed: aG, instead: bG, heldBack: ['aG', 'bG'] }];
}

/** What each weight should come to: as planned, or as the other weights of the row leave it. */
function expectedG(
  pour: TypedPour,
  { mixedG: planned, castingG: plannedCasting, ratio }: ExpectedPour,
): TypedPour {
  const mixedG = planned ?? sumOf(pour) ?? pour.mixedG;
  const castingG =
    plannedCasting ?? (mixedG === undefined ? undefined : mixedG - (pour.residueG ?? 0) - (pour.trimG ?? 0));
  const share = ratio === undefined ? undefined : ratio.a / (ratio.a + ratio.b);
  return {
    ...(mixedG === undefined ? {} : { mixedG }),
    ...(castingG === undefined ? {} : { castingG }),
    ...(mixedG === undefined || share === undefined ? {} : { aG: mixedG * share, bG: mixedG * (1 - share) }),
  };
}

const UNITS = [
  { code: 'ounces', grams: G_PER_OZ },
  { code: 'pounds', grams: G_PER_LB },
] as const;

function unitSlips(pour: TypedPour, expected: ExpectedPour): Slip[] {
  const wanted = expectedG(pour, expected);
  const fields = ['mixedG', 'aG', 'bG', 'castingG'] as const;
  return fields.flatMap((field) => {
    const typed = pour[field];
    const want = wanted[field];
    if (typed === undefined || want === undefined || typed <= 0) return [];
    return UNITS.filter(({ grams }) => isNear(typed * grams, want)).map(({ code, grams }): Slip => ({
      code,
      field,
      typed,
      instead: typed * grams,
      heldBack: [field],
    }));
  });
}

const isNear = (massG: number, wantG: number): boolean => Math.abs(massG / wantG - 1) <= R.slipShare.value;

function warmthSlips(pour: TypedPour): Slip[] {
  const hottest = { roomC: R.hottestRoom.value, moldC: R.hottestMold.value };
  return (['roomC', 'moldC'] as const).flatMap((field): Slip[] => {
    const typed = pour[field];
    if (typed === undefined || typed <= hottest[field]) return [];
    const instead = (typed - 32) / 1.8;
    if (instead > hottest[field] || instead < R.coldest.value) return [];
    return [{ code: 'fahrenheit', field, typed, instead, heldBack: [field] }];
  });
}
