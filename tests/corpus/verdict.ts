/** What a good program answers for a file that is bad or odd, and how an answer is held against it. */

export interface Expectation {
  /**
   * `exact`: the right volume. `warn`: the same, beside one of the warnings. `no_volume`: none, unless beside one of the warnings.
   * `reject`: an error of one of the codes. `either`: such an error, or the right volume beside one of the warnings.
   */
  outcome: 'exact' | 'warn' | 'no_volume' | 'reject' | 'either';
  volume_mm3?: number;
  /** Other volumes that are as right, where the file has more than one reading. */
  volume_also_ok_mm3?: number[];
  /** Relative; 1e-5 where it is not said. */
  rel_tol?: number;
  /** `NONE`: no warning is needed. */
  warnings_any_of?: string[];
  error_codes_any_of?: string[];
}

/** A file of a corpus; its path is in the corpus's folder. */
export interface CorpusFile {
  file: string;
  expect: Expectation;
}

/** What the program said. */
export type Said =
  | { ok: true; warnings: string[]; triangles: number; volumeMm3: number }
  | { ok: false; code: string }
  | { ok: false; crash: string };

export const VERDICTS = [
  'pass',
  'crash',
  // A number that is not right, and no word beside it: the worst.
  'silent wrong',
  'wrong with warning',
  'missing warning',
  // A good file refused.
  'refused',
  // Refused with another code than it should have.
  'unclear error',
] as const;
export type Verdict = (typeof VERDICTS)[number];

export function verdictOf(expect: Expectation, said: Said): Verdict {
  if (!said.ok) {
    if ('crash' in said) return 'crash';
    if (expect.outcome === 'exact' || expect.outcome === 'warn') return 'refused';
    return expect.error_codes_any_of?.includes(said.code) === true ? 'pass' : 'unclear error';
  }
  const isRight = isRightVolume(expect, said.volumeMm3);
  const isWarned = warningsOf(expect).some((code) => said.warnings.includes(code));
  switch (expect.outcome) {
    case 'reject':
      return 'silent wrong';
    case 'no_volume':
      if (!isWarned) return 'silent wrong';
      return isRight || rightVolumes(expect).length === 0 ? 'pass' : 'wrong with warning';
    case 'exact':
    case 'warn':
    case 'either': {
      const isSaid = expect.outcome === 'exact' || isWarned || warningsOf(expect).includes('NONE');
      if (isRight || rightVolumes(expect).length === 0) return isSaid ? 'pass' : 'missing warning';
      return isWarned ? 'wrong with warning' : 'silent wrong';
    }
  }
}

const warningsOf = ({ warnings_any_of = [] }: Expectation): string[] => warnings_any_of;

const rightVolumes = ({ volume_mm3, volume_also_ok_mm3 = [] }: Expectation): number[] =>
  volume_mm3 === undefined ? volume_also_ok_mm3 : [volume_mm3, ...volume_also_ok_mm3];

function isRightVolume(expect: Expectation, volumeMm3: number): boolean {
  const { rel_tol = 1e-5 } = expect;
  return rightVolumes(expect).some(
    (right) => Math.abs(volumeMm3 - right) <= rel_tol * Math.abs(right) + 1e-12,
  );
}

export interface Judged extends CorpusFile {
  said: Said;
  verdict: Verdict;
}

export interface Summary {
  files: number;
  verdicts: Record<Verdict, number>;
  /** Files that may be refused or read: how many, and how many of them were read right and with a warning where one is needed. */
  either: { files: number; answered: number };
  /** Files whose right volume is known: how many, and how many of them were refused. */
  known: { files: number; refused: number };
}

export function summaryOf(judged: readonly Judged[]): Summary {
  const count = (is: (one: Judged) => boolean): number => judged.filter(is).length;
  const isEither = ({ expect }: Judged): boolean => expect.outcome === 'either';
  const isKnown = ({ expect }: Judged): boolean => expect.volume_mm3 !== undefined;
  return {
    files: judged.length,
    verdicts: Object.fromEntries(
      VERDICTS.map((verdict) => [verdict, count((one) => one.verdict === verdict)]),
    ) as Record<Verdict, number>,
    either: {
      files: count(isEither),
      answered: count((one) => isEither(one) && one.said.ok && one.verdict === 'pass'),
    },
    known: { files: count(isKnown), refused: count((one) => isKnown(one) && !one.said.ok) },
  };
}

/** The summary in lines, for people. */
export function summaryText({ files, verdicts, either, known }: Summary): string {
  const share = (part: number, of: number): string =>
    `${part} of ${of}${of === 0 ? '' : ` (${((100 * part) / of).toFixed(1)} %)`}`;
  return [
    `right: ${share(verdicts.pass, files)}`,
    ...VERDICTS.slice(1).map((verdict) => `${verdict}: ${verdicts[verdict]}`),
    `may be refused or read, read right and said: ${share(either.answered, either.files)}`,
    `right volume known, refused: ${share(known.refused, known.files)}`,
  ].join('\n');
}
