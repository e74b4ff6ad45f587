import { bad } from '../../problem';
import { readAllReadings } from '../../units';
import type { CommandSpec } from '../command';
import { EXIT } from '../exit';
import { answer, complain } from '../report';

export const units: CommandSpec = {
  name: 'units',
  operands: '<text...>',
  about: 'Every way a quantity can be read, as "10 1/4 in" or "1,250"',
  options: [],
  run: ({ operands, options, io }) => {
    const text = operands.join(' ');
    const readings = readAllReadings(text);
    if (readings.length === 0)
      return complain(
        bad('BAD_CALL', {
          text: `"${text}" is not a quantity in any way known here.`,
          hint: 'Write a number and a unit, as "264 mm" or "6 pcf".',
        }).problem,
        options,
        io,
      );
    if (options.json === true) {
      answer(
        JSON.stringify({
          schema: 'risewright/units@1',
          inputs: { text },
          assumptions: [],
          findings: [],
          result: { readings },
          range: {},
          because: [],
        }),
        options,
        io,
      );
    } else answer(readings.map((r) => `  ${r.kind.padEnd(22)} ${r.text}`).join('\n'), options, io);
    return EXIT.answered;
  },
};
