import { formatTemperature } from '../../units';
import type { PourOnPage } from '../../worker/pour';
import type { Estimate } from '../../estimate';
import type { FigureRow } from '../parts/FigureTable';
import { minutesWords } from './figures';

const range = ({ low, high }: Estimate): string => `${minutesWords(low)} to ${minutesWords(high)}`;

/** Warming and cooling, a row each. */
export function warmRows({ warmUp, coolDown, contactC }: PourOnPage['warmth']): FigureRow[] {
  return [
    ...(warmUp === undefined
      ? []
      : [
          {
            name: 'The heated face is warm after',
            value: minutesWords(warmUp.heatedFaceMin.value),
            where: range(warmUp.heatedFaceMin),
          },
          {
            name: 'The deep face is warm after',
            value: minutesWords(warmUp.deepFaceMin.value),
            where: range(warmUp.deepFaceMin),
          },
          { name: 'Its surface is then at', value: formatTemperature(warmUp.surfaceAtEndC.value) },
        ]),
    ...(coolDown === undefined
      ? []
      : [
          {
            name: 'Pour within',
            value: minutesWords(coolDown.pourWithinMin),
            where: 'the early end, out in the room',
          },
        ]),
    ...(contactC === undefined ? [] : [{ name: 'Foam meets it at', value: formatTemperature(contactC) }]),
  ];
}
