import type { PreparedPour } from '../plan';
import { pourCautions, type Caution } from './cautions';
import { cautionsFor } from './materialCautions';
import { WARMTH_CAUTIONS } from './warmthWords';

/** A caution with its key. */
export type KeyedCaution = Caution & { key: string; from: string };

/** All cautions that apply to a pour, each once: those of the pour, of warming, and of the mold's materials. */
export function cautionsOfPour({ cautions, forces, warmth }: PreparedPour): KeyedCaution[] {
  const { plugN } = forces;
  const warming = Object.keys(WARMTH_CAUTIONS) as (keyof typeof WARMTH_CAUTIONS)[];
  const isWarming = (key: string): boolean => warming.some((known) => known === key);
  const ofPour = cautions.filter((key) => isPourKey(key));
  const ofMaterial = cautions.filter((key) => !isPourKey(key) && !isWarming(key));
  return [
    ...pourCautions(ofPour, plugN === undefined ? {} : { plugN }),
    ...warming
      .filter((key) => cautions.includes(key) || warmth.cautions.includes(key))
      .map((key) => ({ key, ...WARMTH_CAUTIONS[key] })),
    ...cautionsFor(ofMaterial).filter(({ key }) => key !== 'first'),
  ];
}

const POUR_KEYS = new Set(pourCautions().map(({ key }) => key as string));
const isPourKey = (key: string): boolean => POUR_KEYS.has(key);
