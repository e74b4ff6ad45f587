import type { Assumption } from '../estimate';
import type { PourAsk } from '../plan';
import { bad, good, type Outcome } from '../problem';
import type { AirAround } from '../yield';
import { textOf, type OptionSpec, type OptionValues } from './command';
import { defined, readFigures, type Figure } from './moldFigures';

const AROUND = ['still room', 'still box', 'fan box', 'heat gun'] as const satisfies readonly AirAround[];

/** The wall of the mold and the air that warms it. */
export const WARM_OPTIONS: readonly OptionSpec[] = [
  { flags: '--wall <length>', about: 'thickness of the silicone that is warmed (bare number: mm)' },
  { flags: '--warm-air <temperature>', about: 'air that warms it (bare number: C)' },
  { flags: '--warm-to <temperature>', about: 'what it shall be warmed to (bare number: C)' },
  { flags: '--surroundings <kind>', about: 'what it stands in (assumed still box)', choices: AROUND },
  { flags: '--warm-sides <count>', about: 'faces in that air (assumed 1)', choices: ['1', '2'] },
  { flags: '--jacket <length>', about: 'jacket left on while it is warmed (bare number: mm)' },
];

const FIGURES: readonly Figure<'wallMm' | 'airTempC' | 'targetTempC' | 'jacketMm'>[] = [
  { key: 'wallMm', option: 'wall', kind: 'length', bareUnit: 'mm' },
  { key: 'airTempC', option: 'warmAir', kind: 'temperature', bareUnit: 'C', allowZero: true },
  { key: 'targetTempC', option: 'warmTo', kind: 'temperature', bareUnit: 'C', allowZero: true },
  { key: 'jacketMm', option: 'jacket', kind: 'length', bareUnit: 'mm' },
];

interface WarmWish {
  warm: NonNullable<PourAsk['warm']>;
  assumptions: (Assumption & { basis: string })[];
}

/** Only where something of it was asked for. Errors: BAD_CALL. */
export function warmOptions(options: OptionValues): Outcome<WarmWish | undefined> {
  const read = readFigures(options, FIGURES);
  if (!read.ok) return read;
  const { wallMm, airTempC, targetTempC, jacketMm } = read.value;
  const around = textOf(options, 'surroundings') as AirAround | undefined;
  const sides = textOf(options, 'warmSides');
  if (Object.keys(read.value).length === 0 && around === undefined && sides === undefined)
    return good(undefined);
  if (wallMm === undefined || airTempC === undefined || targetTempC === undefined)
    return bad('BAD_CALL', {
      text: 'To warm a mold, its wall, the air and the aim are needed.',
      hint: 'Give --wall "10 mm" --warm-air "50 C" --warm-to "35 C".',
    });
  const assume = (name: string, value: number | string, basis: string) =>
    ({ name, value, unit: '', from: 'assumed', basis }) as const;
  return good({
    warm: {
      wallMm,
      airTempC,
      targetTempC,
      surroundings: around ?? 'still box',
      sides: sides === '2' ? 2 : 1,
      ...defined({ jacket: jacketMm === undefined ? undefined : { thicknessMm: jacketMm } }),
    },
    assumptions: [
      ...(around === undefined ? [assume('surroundings', 'still box', 'chosen here: it takes longest')] : []),
      ...(sides === undefined ? [assume('warm_sides', 1, 'chosen here: it takes longer')] : []),
    ],
  });
}
