import type { Vector } from '../../geometry';
import type { Size } from '../../plan';
import type { Place, Problem } from '../../problem';
import { pieceSizeWords } from '../../words/pieceWords';
import { otherwiseText } from '../../words/scaleWords';
import { amount } from '../../words/sentence';
import type { Word } from '../ticket/said';
import type { Ticket } from '../ticket/state';
import { sayOnPage } from '../words/sayOnPage';
import { whereWords } from '../words/whereWords';

/** A row of the findings: what, where, what it changes, and the one thing that can be chosen. */
export interface SoundRow {
  no: string;
  problem: Problem;
  text: string;
  hint: string;
  where?: string;
  at?: Place;
  effect: string;
  verb?: { label: string; word: Word };
}

/** Every finding, and below that of the separate pieces each of them. */
export function soundRows(size: Size, ticket: Ticket): SoundRow[] {
  return size.findings.flatMap((problem, n) => {
    const no = String(n + 1);
    const { text, hint } = sayOnPage(problem);
    const isBodies = problem.code === 'MULTI_SHELL' && problem.values.part === 'bodies';
    const row: SoundRow = {
      no,
      problem,
      text,
      hint,
      effect: effectWords(problem),
      ...placed(problem.at, size, Number(problem.values.count ?? 1)),
      ...verbOf(problem, size, ticket),
    };
    return isBodies ? [row, ...pieceRows(size, no)] : [row];
  });
}

/** A piece can be left out while another stays. */
function pieceRows(size: Size, no: string): SoundRow[] {
  const kept = size.shells.filter(({ isLeftOut }) => !isLeftOut);
  return kept.slice(0, MOST_PIECES).map((shell, n) => {
    const [wideMm, deepMm, tallMm] = shell.extentsMm;
    const [xMm, yMm, zMm] = shell.middleMm;
    const at = { xMm, yMm, zMm };
    return {
      no: `${no}.${n + 1}`,
      problem: { code: 'MULTI_SHELL', status: 'fine', values: { part: 'piece', count: 1 }, at },
      text: `Piece ${n + 1}: ${pieceSizeWords({ wideMm, deepMm, tallMm })}`,
      hint: '',
      effect: `holds ${amount(shell.holdsCm3)} cm³`,
      ...placed(at, size, 1),
      ...(shell.corner === undefined || kept.length < 2
        ? {}
        : { verb: { label: 'Leave out', word: { do: 'leaveOut', corner: shell.corner } as const } }),
    };
  });
}

/** The largest; more rows would bury the others. Chosen here. */
const MOST_PIECES = 12;

function placed(at: Place | undefined, { boundsMm }: Size, count: number): Pick<SoundRow, 'where' | 'at'> {
  const where = at === undefined ? undefined : whereWords(at, boundsMm);
  if (at === undefined || where === undefined) return {};
  return {
    at,
    where: count > 1 ? `The largest: ${where}` : `${where.charAt(0).toUpperCase()}${where.slice(1)}`,
  };
}

/** What the engine can do either way is offered; nothing else is. */
function verbOf({ code, values }: Problem, size: Size, ticket: Ticket): Pick<SoundRow, 'verb'> {
  const part = String(values.part);
  const word = VERBS[`${code} ${part}`] ?? VERBS[code];
  if (word !== undefined) return { verb: word };
  if (code === 'PIECE_LEFT_OUT' && typeof values.xUnits === 'number') {
    const corner: Vector = [values.xUnits, Number(values.yUnits), Number(values.zUnits)];
    return { verb: { label: 'Put back', word: { do: 'putBack', corner } } };
  }
  if (code === 'PIECE_LOST')
    return { verb: { label: 'Forget it', word: { do: 'leaveOutOnly', corners: foundCorners(size) } } };
  if (code === 'FLOOR_FOUND' && typeof values.topUnits === 'number')
    return {
      verb: { label: 'Cut it off', word: { do: 'cut', cut: { by: 'floor', atUnits: values.topUnits } } },
    };
  if (code === 'UNITS_SUSPECT' && part === 'disagree')
    return {
      verb: {
        label: 'Use it instead',
        word: { do: 'scaleFrom', which: ticket.measuring.isSecondScale ? 'first' : 'second' },
      },
    };
  return {};
}

const VERBS: Readonly<Record<string, SoundRow['verb']>> = {
  'MULTI_SHELL islands': rule('Put back', 'countSpecks', true),
  'PIECES_TAKEN specks': rule('Leave out', 'countSpecks', false),
  'NESTED_SHELL void': rule('Count it as full', 'fillHollows', true),
  'PIECES_TAKEN filled': rule('Take the hollow off', 'fillHollows', false),
  'NESTED_SHELL solid': rule('Take it off as a hollow', 'hollowInner', true),
  'PIECES_TAKEN hollowed': rule('Count it as solid', 'hollowInner', false),
  CUT_AWAY: { label: 'Put back', word: { do: 'cut', cut: undefined } },
};

function rule(
  label: string,
  which: Extract<Word, { do: 'pieceRule' }>['rule'],
  isOff: boolean,
): NonNullable<SoundRow['verb']> {
  return { label, word: { do: 'pieceRule', rule: which, isOff } };
}

const foundCorners = ({ shells }: Size): Vector[] =>
  shells.flatMap(({ isLeftOut, corner }) => (isLeftOut && corner !== undefined ? [corner] : []));

/** Holes, rounding and merged corners widen the range both ways; every other effect has a sign. */
export function effectWords({ code, values }: Problem): string {
  const { effectCm3, otherwiseCm3 } = values;
  if (typeof otherwiseCm3 === 'number') return otherwiseText(otherwiseCm3);
  if (typeof effectCm3 !== 'number') return UNTOLD[`${code} ${values.part}`] ?? UNTOLD[code] ?? 'not told';
  if (effectCm3 === 0) return 'none';
  if (Math.abs(effectCm3) < LEAST_CM3) return `under ${LEAST_CM3} cm³`;
  const size = `${amount(Math.abs(effectCm3))} cm³`;
  if (code === 'NOT_CLOSED' || code === 'PRECISION' || code === 'WELDED') return `± ${size}`;
  return `${effectCm3 < 0 ? '−' : '+'} ${size}`;
}

/** A milligram of water: no finer effect is worth a figure. Chosen here. */
const LEAST_CM3 = 0.001;

const UNTOLD: Readonly<Record<string, string>> = {
  'MULTI_SHELL bodies': 'all count',
  FLOOR_FOUND: 'not cut off',
  PIECE_LOST: 'counts',
};
