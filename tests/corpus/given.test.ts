import { existsSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { boxAnswer, isWanted, type NumberCase } from './numbers';
import { filesOf, judge } from './readFile';
import { summaryOf, summaryText, type Judged } from './verdict';

/** A corpus from elsewhere: a folder with a manifest.json, and number_inputs.json where it has one. */
const named = process.env.RISEWRIGHT_CORPUS;
const folder = named === undefined || named === '' ? undefined : resolve(named);

/** Files whose right volume is known and that may be refused all the same, at most. */
const REFUSED_SHARE = 0.05;

if (folder === undefined) {
  it.skip('a corpus from elsewhere: set RISEWRIGHT_CORPUS to its folder, or run npm run corpus -- FOLDER', () => {
    expect.unreachable();
  });
} else {
  describe(`the corpus in ${folder}`, () => {
    const files = filesOf(folder);
    const judged: Judged[] = [];
    let longest = { file: '', seconds: 0 };
    it.each(files.map((one) => [one.file, one] as const))('%s', (_, one) => {
      const started = performance.now();
      const result = judge(folder, one);
      const seconds = (performance.now() - started) / 1000;
      if (seconds > longest.seconds) longest = { file: one.file, seconds };
      judged.push(result);
      expect(result.verdict, `${JSON.stringify(result.said)}, expected ${JSON.stringify(one.expect)}`).toBe(
        'pass',
      );
    });

    it('few files are refused whose right volume is known', () => {
      const { known } = summaryOf(judged);
      expect(known.refused).toBeLessThanOrEqual(REFUSED_SHARE * known.files);
    });

    afterAll(() => {
      const { file, seconds } = longest;
      console.log(
        `${summaryText(summaryOf(judged))}\n${refusedText(judged)}\nlongest: ${seconds.toFixed(2)} s, ${file}`,
      );
    });
  });

  const numbers = join(folder, 'number_inputs.json');
  if (existsSync(numbers)) {
    const { cases } = JSON.parse(readFileSync(numbers, 'utf8')) as { cases: NumberCase[] };
    let right = 0;
    describe('numbers as typed', () => {
      it.each(cases)('"%s" as %s: %j', (text, kind, wanted) => {
        const got = boxAnswer(text, kind);
        expect(isWanted(wanted, got), `got ${JSON.stringify(got)}`).toBe(true);
        right++;
      });
      afterAll(() => console.log(`numbers as typed, right: ${right} of ${cases.length}`));
    });
  }
}

function refusedText(judged: readonly Judged[]): string {
  return judged
    .filter(({ expect: { volume_mm3 }, said }) => volume_mm3 !== undefined && !said.ok)
    .map(({ file, said }) => `  ${file}: ${'code' in said ? said.code : 'crash'}`)
    .join('\n');
}
