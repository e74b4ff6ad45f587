import type { Assumption, Estimate } from '../../estimate';
import { bad, good, type Outcome, type Problem } from '../../problem';
import { CHECK_FIGURES, runChecks } from '../../checks';
import {
  moldType,
  moldWork,
  settleMold,
  type MoldKey,
  type MoldParameter,
  type MoldSettings,
  type MoldShape,
  type MoldType,
  type Sculpt,
} from '../../geometry';
import { MOLDMAKING_RULES, planCoats } from '../../yield';
import type { VoxelChoice } from '../chooseVoxel';
import { MM3_PER_CM3 } from '../sizeDoubts';
import { castingCavity, type Casting } from './castingCavity';
import { cautionKeys } from './moldCautions';
import { finishingOf, type Finishing } from './finishing';
import { bodyFor, type MoldBench } from './moldBench';
import { rubberEstimate } from './moldVolume';
import type { MoldAsk } from './moldWish';
import { processOf, type Process } from './process';
import { siliconeFor, type SiliconeNeed } from './siliconeFor';
import { surroundingsOf, type Surroundings } from './surroundings';

/** One mold: its shape, the silicone to mix and buy, and everything around it. */
export interface Mold {
  type: MoldKey;
  title: string;
  goodFor: string;
  settings: MoldSettings;
  shape: MoldShape;
  sculpt: Sculpt;
  siliconeCm3: Estimate;
  silicone: SiliconeNeed;
  process: Process;
  /** Clay to have at hand, and what the rubber weighs against the clay it replaces. */
  clay?: { volumeCm3: number; massG: Estimate; rubberPerClay: Estimate };
  surroundings: Surroundings;
  casting: Casting;
  finishing: Finishing;
  /** Area times thickness, the sum by hand, for comparison; only of skins. */
  areaTimesSkinCm3?: number;
  voxel?: VoxelChoice;
  /** Keys of the cautions that belong to the materials of this mold. */
  cautions: string[];
  assumptions: Assumption[];
  findings: Problem[];
}

/**
 * A mold of one type around the sculpt of a bench. Errors: those of `settleMold`, SKIN_OVER_WALL, of `bodyFor`, of the type's build, of the
 * silicone and of what is around it.
 *
 * @example
 * const opened = openMoldBench(scan, { taped: [{ along: 'tall', lengthMm: 290 }], up: '+y' });
 * const mold = opened.ok ? planMold(opened.value.bench, { type: 'skin', settings: { skinMm: 8 } }) : opened;
 */
export function planMold(bench: MoldBench, ask: MoldAsk): Outcome<Mold> {
  const type = moldType(ask.type);
  const thick = skinOverWall(type, ask);
  if (thick !== undefined) return thick;
  const settled = settleMold(type, ask.settings ?? {});
  if (!settled.ok) return settled;
  const settings = settled.value;
  const body = bodyFor(bench, ask.type, settings);
  if (!body.ok) return body;
  const coatsMm = coatsIn(settings);
  if (!coatsMm.ok) return coatsMm;
  const shape = moldWork(ask.type).build({ ...body.value, coatsMm: coatsMm.value }, settings);
  if (!shape.ok) return shape;
  const { sculpt, voxel } = body.value;
  const siliconeCm3 = rubberEstimate(shape.value, bench.settled, sculpt, voxel?.voxelMm);
  const wish = { silicone: ask.silicone ?? {}, work: ask.work ?? {} };
  const silicone = siliconeFor(shape.value, siliconeCm3, wish);
  if (!silicone.ok) return silicone;
  const process = processOf(shape.value, silicone.value, wish);
  if (!process.ok) return process;
  const { densityKgM3 } = silicone.value;
  const around = surroundingsOf(
    shape.value,
    { siliconeG: (siliconeCm3.value * densityKgM3) / 1000, siliconeKgM3: densityKgM3 },
    ask,
  );
  if (!around.ok) return around;
  const casting = castingCavity(moldedVolume(bench, sculpt), ask);
  if (!casting.ok) return casting;
  const finishing = finishingOf(sculpt.areaMm2 / 100, ask.finish ?? {});
  if (!finishing.ok) return finishing;
  const skinMm = settings.skinMm;
  return good({
    type: type.key,
    title: type.title,
    goodFor: type.goodFor,
    settings,
    shape: shape.value,
    sculpt,
    siliconeCm3,
    silicone: silicone.value,
    process: process.value,
    ...clayOf(shape.value, densityKgM3),
    surroundings: around.value,
    casting: casting.value,
    finishing: finishing.value,
    ...(typeof skinMm === 'number' ? { areaTimesSkinCm3: (sculpt.areaMm2 * skinMm) / MM3_PER_CM3 } : {}),
    ...(voxel === undefined ? {} : { voxel }),
    cautions: cautionKeys(shape.value, around.value, ask),
    assumptions: [
      ...assumedSettings(type.parameters, ask),
      ...silicone.value.assumptions,
      ...process.value.assumptions,
      ...casting.value.assumptions,
    ],
    findings: [
      ...sculpt.findings,
      ...shape.value.findings,
      ...silicone.value.findings,
      ...process.value.findings,
      ...around.value.findings,
      ...casting.value.findings,
      ...runChecks(
        {
          ...(ask.silicone?.cure === undefined ? {} : { siliconeCure: ask.silicone.cure }),
          ...(ask.silicone?.openedOn === undefined ? {} : { siliconeOpenedOn: ask.silicone.openedOn }),
          ...thickFact(shape.value),
          ...ask.facts,
        },
        'mold',
      ),
    ],
  });
}

/** A skin was asked for in a block: it must fit in the wall, and a block has none of its own. */
function skinOverWall(type: MoldType, { settings = {} }: MoldAsk): ReturnType<typeof bad> | undefined {
  const { skinMm } = settings;
  const wall = type.parameters.find(({ key }) => key === 'wallMm');
  if (typeof skinMm !== 'number' || wall === undefined) return undefined;
  const wallMm = Number(settings.wallMm ?? wall.default);
  return skinMm > wallMm ? bad('SKIN_OVER_WALL', { skinMm, wallMm }) : undefined;
}

/** How thick the rubber is at most; where it may be thicker than that, only if that is too thick already. */
const thickFact = ({ thickestMm, hasThickerPlaces }: MoldShape): { thickestMm?: number } =>
  hasThickerPlaces !== true || thickestMm > CHECK_FIGURES.thickSection.value ? { thickestMm } : {};

/** What the mold's cavity is cast from: the sculpt as rubber meets it, its hollows filled, with the range of the scan. */
function moldedVolume({ volumeCm3 }: MoldBench, sculpt: Sculpt): Estimate {
  const value = sculpt.volumeMm3 / MM3_PER_CM3;
  return {
    value,
    low: Math.max(0, value - (volumeCm3.value - volumeCm3.low)),
    high: value + (volumeCm3.high - volumeCm3.value),
    from: volumeCm3.from,
  };
}

/** Thickness after each coat, for a type that goes on in coats. */
function coatsIn(settings: MoldSettings): Outcome<number[]> {
  const { skinMm, firstCoatMm, coatMm } = settings;
  if (typeof skinMm !== 'number' || typeof firstCoatMm !== 'number' || typeof coatMm !== 'number')
    return good([]);
  const coats = planCoats({ skinMm, firstCoatMm, coatMm });
  return coats.ok ? good(coats.value.outerMm) : coats;
}

function clayOf(shape: MoldShape, siliconeKgM3: number): Pick<Mold, 'clay'> {
  if (shape.clay.length === 0) return {};
  const volumeCm3 = shape.clay.reduce((sum, { volumeMm3 }) => sum + volumeMm3, 0) / MM3_PER_CM3;
  const { value, low, high } = MOLDMAKING_RULES.clayDensity;
  const grams = (kgM3: number): number => (volumeCm3 * kgM3) / 1000;
  return {
    clay: {
      volumeCm3,
      massG: { value: grams(value), low: grams(low), high: grams(high), from: 'assumed' },
      rubberPerClay: {
        value: siliconeKgM3 / value,
        low: siliconeKgM3 / high,
        high: siliconeKgM3 / low,
        from: 'assumed',
      },
    },
  };
}

/** Every parameter that was not said, with where its default comes from. */
function assumedSettings(parameters: readonly MoldParameter[], { settings = {} }: MoldAsk): Assumption[] {
  return parameters
    .filter(({ key }) => settings[key] === undefined)
    .map(({ key, kind, default: value, from }): Assumption & { basis: string } => ({
      name: snake(key),
      value,
      unit: kind === 'length' || kind === 'height' ? 'mm' : kind === 'angle' ? 'degrees' : '',
      from: 'assumed',
      basis: from,
    }));
}

/** skinMm -> skin_mm. */
const snake = (key: string): string => key.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);
