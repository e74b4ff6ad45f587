import { bad } from '../../problem';
import { SAMPLE_SHOP } from '../../job/sampleShop';
import type { CommandSpec } from '../command';
import { EXIT } from '../exit';
import { answer, complain } from '../report';
import { fileTrouble } from '../fileTrouble';

/** The scan to try with the shop: unit lost, y up, neck open. */
const SAMPLE_SCAN = 'quay-troll-scan.stl';

export const sample: CommandSpec = {
  name: 'sample',
  operands: '<dir>',
  about: 'Writes an invented shop and a scan to try things with',
  options: [],
  run: ({ operands, options, io }) => {
    const dir = operands[0]!.replace(/\/+$/, '');
    try {
      io.makeFolder(dir);
      io.writeFile(`${dir}/shop.json`, `${JSON.stringify(SAMPLE_SHOP, null, 2)}\n`);
      io.writeFile(`${dir}/${SAMPLE_SCAN}`, io.readSample(SAMPLE_SCAN));
    } catch (e) {
      return complain(bad('CANNOT_READ_FILE', { file: dir, why: fileTrouble(e) }).problem, options, io);
    }
    const files = [`${dir}/shop.json`, `${dir}/${SAMPLE_SCAN}`];
    if (options.json === true) {
      answer(
        JSON.stringify({
          schema: 'risewright/sample@1',
          inputs: { dir },
          assumptions: [],
          findings: [],
          result: { files },
          range: {},
          because: [],
        }),
        options,
        io,
      );
    } else {
      answer(
        [
          ...files.map((file) => `  Wrote       ${file}`),
          `  Try         risewright size ${dir}/${SAMPLE_SCAN} --up +y --tall "290.9 mm"`,
          `  Try         risewright batch --shop ${dir}/shop.json --foam "Sample Foam Light" --scan ${dir}/${SAMPLE_SCAN} --up +y --tall "290.9 mm"`,
        ].join('\n'),
        options,
        io,
      );
    }
    return EXIT.answered;
  },
};
