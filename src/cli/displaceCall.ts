import type { Estimate } from '../estimate';
import { bad, good, type Outcome } from '../problem';
import {
  displacedByLevel,
  displacedByOverflow,
  VOLUME_RULES,
  type BatchAssumption,
  type VesselLevels,
} from '../yield';
import { flagOf } from './batchOptions';
import { listOf, textOf, type OptionSpec, type OptionValues } from './command';
import { assumedOf } from './fillAssumed';
import { massesOption } from './fillMasses';
import { SCALE_STEP_OPTION, WATER_TEMP_OPTION, weighedWater } from './fillWater';
import type { Io } from './io';
import { readFigures } from './moldFigures';

export const DISPLACE_OPTIONS: readonly OptionSpec[] = [
  { flags: '--medium <medium>', about: 'what the sculpt is sunk into', choices: ['water', 'rice'] },
  { flags: '--before <volume>', about: 'level without the sculpt (bare number: cm3)' },
  { flags: '--after <volume>', about: 'level with the sculpt wholly under (bare number: cm3)' },
  {
    flags: '--reading <volume>',
    about: 'smallest step that can be read (bare number: cm3; assumed a fiftieth of the higher level)',
  },
  {
    flags: '--overflow <mass>',
    about:
      'instead of levels: water that ran over a full rim, weighed (bare number: g); more of them are added up',
    repeat: true,
  },
  WATER_TEMP_OPTION,
  SCALE_STEP_OPTION,
];

export type DisplacedBy =
  | { by: 'level'; medium: 'water' | 'rice'; readingCm3: number }
  | { by: 'overflow'; waterG: number; waterTempC: number };

export interface Displaced {
  volumeCm3: Estimate;
  way: DisplacedBy;
  assumptions: BatchAssumption[];
}

const OF_LEVELS = ['before', 'after', 'reading'];
const OF_OVERFLOW = ['waterTemp', 'scaleStep'];

/** A sculpt's volume by what it pushes out. Errors: BAD_CALL, those of the shop and of the two ways. */
export function displaceCall(options: OptionValues, io: Io): Outcome<Displaced> {
  const isOverflow = listOf(options, 'overflow').length > 0;
  const stray = (isOverflow ? OF_LEVELS : OF_OVERFLOW).find((option) => options[option] !== undefined);
  if (stray !== undefined)
    return bad('BAD_CALL', {
      text: isOverflow
        ? `${flagOf(stray)} is about levels, and water that ran over was given.`
        : `${flagOf(stray)} is about water that ran over and was weighed, and there is none.`,
      hint: 'Give --before and --after, or --overflow "910 g" with --water-temp.',
    });
  return isOverflow ? byOverflow(options, io) : byLevel(options);
}

function byOverflow(options: OptionValues, io: Io): Outcome<Displaced> {
  if (textOf(options, 'medium') === 'rice')
    return bad('BAD_CALL', {
      text: 'Rice does not run over a rim evenly.',
      hint: 'Give its levels as --before and --after, or the water that ran over.',
    });
  const weighings = massesOption(options, 'overflow');
  if (!weighings.ok) return weighings;
  const weighed = weighedWater(weighings.value, options, io);
  if (!weighed.ok) return weighed;
  const { water, waterTempC, assumptions } = weighed.value;
  const volume = displacedByOverflow(water);
  if (!volume.ok) return volume;
  return good({
    volumeCm3: volume.value,
    way: { by: 'overflow', waterG: water.waterG, waterTempC },
    assumptions: [...assumptions, assumedOf('u_overflow', VOLUME_RULES.overflowU)],
  });
}

/** Chosen here: a jug has some 50 marks. */
const MARKS = 50;

function byLevel(options: OptionValues): Outcome<Displaced> {
  const medium = textOf(options, 'medium') as VesselLevels['medium'] | undefined;
  const read = readFigures<'beforeCm3' | 'afterCm3' | 'readingCm3'>(options, [
    { key: 'beforeCm3', option: 'before', kind: 'volume', bareUnit: 'cm3', allowZero: true },
    { key: 'afterCm3', option: 'after', kind: 'volume', bareUnit: 'cm3' },
    { key: 'readingCm3', option: 'reading', kind: 'volume', bareUnit: 'cm3' },
  ]);
  if (!read.ok) return read;
  const { beforeCm3, afterCm3, readingCm3: toldCm3 } = read.value;
  if (medium === undefined || beforeCm3 === undefined || afterCm3 === undefined)
    return bad('BAD_CALL', {
      text: `${medium === undefined ? 'What the sculpt was sunk into' : `The level ${beforeCm3 === undefined ? 'before' : 'after'}`} is missing.`,
      hint: 'Give --medium water or rice, --before "3 L" and --after "3.91 L"; or --overflow "910 g".',
    });
  const readingCm3 = toldCm3 ?? afterCm3 / MARKS;
  const volume = displacedByLevel({ medium, beforeCm3, afterCm3, readingCm3 });
  if (!volume.ok) return volume;
  const marks = {
    value: readingCm3,
    unit: 'cm3',
    from: `Chosen here: a jug has some ${MARKS} marks up to its level`,
  };
  return good({
    volumeCm3: volume.value,
    way: { by: 'level', medium, readingCm3 },
    assumptions: [
      ...(toldCm3 === undefined ? [assumedOf('step_of_the_vessel', marks)] : []),
      medium === 'rice' ? assumedOf('u_rice', VOLUME_RULES.riceU) : assumedOf('u_level', VOLUME_RULES.levelU),
    ],
  });
}
