import type { FinishWish } from '../plan';
import { bad, good, type Outcome } from '../problem';
import type { OptionSpec, OptionValues } from './command';
import { defined, readFigures, type Figure } from './moldFigures';

/** Paint, sealer and glue for one casting, by the user's own figures. */
export const FINISH_OPTIONS: readonly OptionSpec[] = [
  {
    flags: '--paint-coverage <area>',
    about: 'what 1 L or 1 kg of paint covers in one coat (bare number: m2)',
  },
  { flags: '--paint-coats <count>', about: 'coats of paint' },
  {
    flags: '--seal-coverage <area>',
    about: 'what 1 L or 1 kg of sealer covers in one coat (bare number: m2)',
  },
  { flags: '--seal-coats <count>', about: 'coats of sealer' },
  { flags: '--bond-area <area>', about: 'area of a seam to be glued, one face (bare number: cm2)' },
  { flags: '--texture <factor>', about: 'real surface over that of the scan (assumed 1.1)' },
  { flags: '--open-skin <share>', about: 'share of the surface without a closed skin, as "5 %"' },
];

type Key = 'paintM2' | 'paintCoats' | 'sealM2' | 'sealCoats' | 'bondCm2' | 'textureFactor' | 'openShare';

const FIGURES: readonly Figure<Key>[] = [
  { key: 'paintM2', option: 'paintCoverage', kind: 'coverage' },
  { key: 'paintCoats', option: 'paintCoats', kind: 'plain' },
  { key: 'sealM2', option: 'sealCoverage', kind: 'coverage' },
  { key: 'sealCoats', option: 'sealCoats', kind: 'plain' },
  { key: 'bondCm2', option: 'bondArea', kind: 'area' },
  { key: 'textureFactor', option: 'texture', kind: 'plain' },
  { key: 'openShare', option: 'openSkin', kind: 'share', allowZero: true },
];

/** Only where something of it was asked for. Errors: BAD_CALL. */
export function finishOptions(options: OptionValues): Outcome<FinishWish | undefined> {
  const figures = readFigures(options, FIGURES);
  if (!figures.ok) return figures;
  const { paintM2, paintCoats, sealM2, sealCoats, bondCm2, textureFactor, openShare } = figures.value;
  const paint = coatOf('paint', paintM2, paintCoats);
  if (!paint.ok) return paint;
  const seal = coatOf('seal', sealM2, sealCoats);
  if (!seal.ok) return seal;
  if (Object.keys(figures.value).length === 0) return good(undefined);
  return good(
    defined({
      paint: paint.value,
      seal: seal.value,
      bond: bondCm2 === undefined ? undefined : { faceCm2: bondCm2 },
      textureFactor,
      openShare,
    }),
  );
}

function coatOf(
  what: 'paint' | 'seal',
  coverageM2: number | undefined,
  coats: number | undefined,
): Outcome<{ coverageM2: number; coats: number } | undefined> {
  if (coverageM2 === undefined && coats === undefined) return good(undefined);
  if (coverageM2 === undefined || coats === undefined)
    return bad('BAD_CALL', {
      text: `--${what}-coverage and --${what}-coats belong together.`,
      hint: `Give both: --${what}-coverage "8 m2" --${what}-coats 2.`,
    });
  if (Number.isInteger(coats)) return good({ coverageM2, coats });
  return bad('BAD_CALL', {
    text: `--${what}-coats ${coats} is not a number of coats.`,
    hint: 'Give a whole number.',
  });
}
