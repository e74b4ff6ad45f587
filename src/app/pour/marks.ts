import type { PourOnPage } from '../../worker/pour';
import type { Mark } from '../parts/StatusMark';
import { worstMark } from '../words/statuses';
import { FOUND_IN } from '../batch/findings';

type Part = 'day' | 'mold' | 'cups' | 'warm' | 'forces' | 'times' | 'colors';

/** The marks of the questions of the pour, by what was found; what nobody asked about is open. */
export function pourMarks(
  pour: PourOnPage | undefined,
  only: (...codes: string[]) => Mark,
): Record<Part, Mark> {
  const marks = {} as Record<Part, Mark>;
  const parts: [Part, (pour: PourOnPage) => Mark[]][] = [
    ['day', ({ air }) => [air === undefined ? 'unknown' : 'fine', only(...FOUND_IN.day)]],
    [
      'mold',
      () => [
        only('MOLD_TEMP_UNKNOWN', 'MOLD_TEMP_COLD', 'MOLD_TEMP_COOL', 'MOLD_TEMP_WARM', 'MOLD_TEMP_HOT'),
      ],
    ],
    ['cups', () => [only(...FOUND_IN.cups)]],
    ['warm', ({ warmth }) => [warmth.warmUp === undefined ? 'open' : only(...FOUND_IN.warm)]],
    [
      'forces',
      ({ forces: { clamp, straps } }) => [
        clamp === undefined ? 'unknown' : 'fine',
        straps?.holds === false ? 'stop' : 'open',
      ],
    ],
    [
      'times',
      ({ times }) => [times.exotherm.known ? 'fine' : 'unknown', only('CORE_HOT', 'OPEN_TIME_UNKNOWN')],
    ],
    ['colors', (one) => [one.color === undefined ? 'open' : statusOf(one, 'PIGMENT')]],
  ];
  for (const [part, of] of parts) {
    const isRefused = pour !== undefined && part !== 'day' && pour.refused[part] !== undefined;
    marks[part] = pour === undefined ? 'open' : isRefused ? 'stop' : worstMark(of(pour));
  }
  return marks;
}

const statusOf = ({ checks }: PourOnPage, code: string): Mark =>
  checks.find((check) => check.code === code)?.status ?? 'open';
