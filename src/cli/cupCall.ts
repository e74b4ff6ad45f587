import { bad, good, type Outcome } from '../problem';
import { cupTest, type BatchAssumption, type CupTest, type CupWeights } from '../yield';
import { listOf, type OptionSpec, type OptionValues } from './command';
import { doubtOfCups } from './cupDoubt';
import { massesOption } from './fillMasses';
import { WATER_TEMP_OPTION, waterTempOption } from './fillWater';
import { readFigures } from './moldFigures';

export const CUP_OPTIONS: readonly OptionSpec[] = [
  { flags: '--cup-water <mass>', about: 'water that fills the empty cup to its rim (bare number: g)' },
  WATER_TEMP_OPTION,
  {
    flags: '--foam-mass <mass>',
    about: 'foam trimmed flush with the rim, without its cup (bare number: g); once for each cup',
    repeat: true,
  },
  {
    flags: '--full-mass <mass>',
    about: 'instead: cup and trimmed foam together, with --cup-mass; once for each cup',
    repeat: true,
  },
  { flags: '--cup-mass <mass>', about: 'such a cup empty (bare number: g)' },
];

/** A cup test as it was called for. */
export interface CupCall extends CupTest {
  waterG: number;
  waterTempC: number;
  assumptions: BatchAssumption[];
}

/** The free rise from cups of one size. Errors: BAD_CALL, those of `cupTest`. */
export function cupCall(options: OptionValues): Outcome<CupCall> {
  const weights = weightsOption(options);
  if (!weights.ok) return weights;
  const temperature = waterTempOption(options);
  if (!temperature.ok) return temperature;
  const { usedC: waterTempC, toldC, assumptions } = temperature.value;
  const tests = weights.value.map((one): CupWeights => ({ ...one, waterTempC }));
  const mean = cupTest(tests);
  if (!mean.ok) return mean;
  const { uShare, cups } = mean.value;
  return good({
    ...mean.value,
    waterG: tests[0]!.waterG,
    waterTempC,
    // Within a degree or two the doubt of the thermometer is nothing beside that of the foam.
    assumptions: [...(toldC === undefined ? assumptions : []), ...doubtOfCups({ uShare, cups: cups.length })],
  });
}

type Weights = Omit<CupWeights, 'waterTempC'>;

function weightsOption(options: OptionValues): Outcome<Weights[]> {
  const figures = readFigures<'waterG' | 'cupG'>(options, [
    { key: 'waterG', option: 'cupWater', kind: 'mass', bareUnit: 'g' },
    { key: 'cupG', option: 'cupMass', kind: 'mass', bareUnit: 'g' },
  ]);
  if (!figures.ok) return figures;
  const { waterG, cupG } = figures.value;
  if (waterG === undefined)
    return bad('BAD_CALL', {
      text: 'The size of the cup is missing.',
      hint: 'Give --cup-water "500 g": the water that fills it to its rim, weighed.',
    });
  const wrong = wrongWay(options, cupG);
  if (wrong !== undefined) return bad('BAD_CALL', wrong);
  const masses = massesOption(options, cupG === undefined ? 'foamMass' : 'fullMass');
  if (!masses.ok) return masses;
  return good(masses.value.map((fullG) => ({ fullG, cupG: cupG ?? 0, waterG })));
}

/** Either the foam alone, or full cups and an empty one. */
function wrongWay(
  options: OptionValues,
  cupG: number | undefined,
): { text: string; hint: string } | undefined {
  const [foam, full] = ['foamMass', 'fullMass'].map((option) => listOf(options, option).length > 0);
  if (foam === true && (full === true || cupG !== undefined))
    return {
      text: '--foam-mass is the foam alone, and --full-mass less --cup-mass is the same again.',
      hint: 'Give --foam-mass, or --full-mass with --cup-mass.',
    };
  if ((full === true) !== (cupG !== undefined))
    return {
      text: full === true ? 'The empty cup is missing.' : 'The full cup is missing.',
      hint: 'Give --full-mass and --cup-mass together, or the foam alone as --foam-mass.',
    };
  if (foam !== true && full !== true)
    return {
      text: 'The mass of the foam is missing.',
      hint: 'Give --foam-mass "53.4 g", trimmed flush with the rim and without its cup; once for each cup.',
    };
  return undefined;
}
