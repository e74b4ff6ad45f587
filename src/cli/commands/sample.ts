import { finding, type Problem } from '../../problem';
import { SAMPLE_ROWS } from '../../job/sampleBook';
import { SAMPLE_SHOP } from '../../job/sampleShop';
import type { CommandSpec } from '../command';
import { EXIT } from '../exit';
import type { Io } from '../io';
import { answer, complain, orCannotWrite } from '../report';

/** The scan to try with the shop: unit lost, y up, neck open. */
const SAMPLE_SCAN = 'quay-troll-scan.stl';

export const sample: CommandSpec = {
  name: 'sample',
  operands: '<dir>',
  about: 'Writes an invented shop and a scan to try things with',
  options: [],
  run: ({ operands, options, io }) => {
    const dir = operands[0]!.replace(/(.)\/+$/, '$1');
    const files = [`${dir}/shop.json`, `${dir}/${SAMPLE_SCAN}`] as const;
    const there = files.find((file) => isThere(file, io));
    if (there !== undefined) return complain(alreadyThere(there), options, io);
    const scan = io.readSample(SAMPLE_SCAN);
    orCannotWrite(dir, 'folder', () => io.makeFolder(dir));
    orCannotWrite(files[0], 'folder', () =>
      io.writeFile(files[0], `${JSON.stringify({ ...SAMPLE_SHOP, book: SAMPLE_ROWS }, null, 2)}\n`),
    );
    orCannotWrite(files[1], 'folder', () => io.writeFile(files[1], scan));
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
          `  Try         risewright mold ${dir}/${SAMPLE_SCAN} --shop ${dir}/shop.json --silicone "Sample Silicone 25" --up +y --tall "290.9 mm" --type skin`,
          `  Try         risewright batch --shop ${dir}/shop.json --foam "Sample Foam Light" --scan ${dir}/${SAMPLE_SCAN} --up +y --tall "290.9 mm"`,
          `  Try         risewright book learn --book ${dir}/shop.json`,
        ].join('\n'),
        options,
        io,
      );
    }
    return EXIT.answered;
  },
};

function isThere(file: string, io: Io): boolean {
  let there = false;
  orCannotWrite(file, 'folder', () => (there = io.exists(file)));
  return there;
}

const alreadyThere = (file: string): Problem =>
  finding('BAD_CALL', 'stop', {
    text: `${file} is already there, and it is not written over.`,
    hint: 'Nothing was written. Name another folder.',
  });
