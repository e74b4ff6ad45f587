import { COMMANDS } from '../../src/cli/commands';
import { COMMON_OPTIONS, type CommandSpec, type OptionSpec } from '../../src/cli/command';
import { EXIT } from '../../src/cli/exit';
import { SAMPLE_ROWS } from '../../src/job/sampleBook';
import { SAMPLE_SHOP } from '../../src/job/sampleShop';
import { callAsync, type Called, type Desk } from '../support/cliCall';
import { box } from '../support/shapes';
import { stlBytes, stlText } from '../support/writeMesh';
import { pick, whole, type Target, type Verdict } from './target';

/** Files that calls find: a box, a broken one, a shop with its book, and nothing. */
const DESK: Desk = {
  files: {
    'box.stl': stlBytes(box([40, 30, 20])),
    'broken.stl': stlText(box([40, 30, 20])).slice(0, 700),
    'shop.json': JSON.stringify({ ...SAMPLE_SHOP, book: SAMPLE_ROWS }),
    'empty.json': '',
    'list.csv': 'foam,aG\nSample Foam Light,100\n',
  },
};

const FILES = ['box.stl', 'broken.stl', 'shop.json', 'empty.json', 'list.csv', 'none.stl', '-', ''];

/** Words that options are given: right for one, wrong for most. */
const WORDS = [
  ...[
    'mm',
    'in',
    '290.9 mm',
    '12',
    '0',
    '-1',
    '1e9',
    'nan',
    '5 ft 3 in',
    '96 kg/m3',
    '6 pcf',
    '100:55',
    '52:100',
    '1:1',
  ],
  ...[
    '23 C',
    '70 F',
    '50 %',
    '0.01',
    '1,250',
    '500 g',
    '4500',
    '4500 cm3',
    '20 min',
    '+y',
    '-z',
    'x',
    'z=10mm',
    'z<=5mm',
  ],
  ...[
    'skin',
    'block',
    'box',
    'jacket',
    'Sample Foam Light',
    'Sample Silicone 25',
    'cup-test',
    'open',
    'plug',
    'learn',
    'list',
    'add',
  ],
  ...[
    '0,0,0:0,0,20',
    '0.5',
    '2',
    'true',
    '',
    ' ',
    '--json',
    '<b>',
    '__proto__',
    'constructor',
    'é',
    '2026-02-30',
    'all',
    'none',
  ],
];

/** Without an operand: what a good call of each takes at least. */
const STARTS: Readonly<Record<string, readonly string[]>> = {
  size: ['box.stl', '--file-unit', 'mm'],
  batch: ['--volume', '4500', '--free-rise', '96', '--ratio', '100:55'],
  packs: ['--volume', '4500', '--free-rise', '96', '--ratio', '100:55'],
  mold: ['box.stl', '--file-unit', 'mm', '--type', 'block'],
  cup: ['--water', '200 g', '--foam', '20 g'],
  fill: ['--water', '500 g'],
  units: ['10 1/4 in'],
  book: ['learn', '--book', 'shop.json'],
  sample: ['folder'],
};

/** Commands that take seconds come seldom. */
const SLOW: readonly string[] = ['mold', 'opening', 'batch', 'packs', 'sheet', 'run'];

interface CallOf {
  args: string[];
}

export const CALLS: Target<CallOf> = {
  name: 'cli',
  make: (random) => {
    let command = pick(random, COMMANDS);
    if (SLOW.includes(command.name) && random() < 0.5) command = pick(random, COMMANDS);
    const start = random() < 0.7 ? (STARTS[command.name] ?? []) : [];
    const args = [
      ...start,
      ...Array.from({ length: whole(random, 6) }, () => optionOf(command, random)).flat(),
    ];
    if (random() < 0.2) args.splice(whole(random, args.length + 1), 0, pick(random, [...FILES, ...WORDS]));
    if (random() < 0.1) args.splice(whole(random, args.length + 1), 1);
    if (random() < 0.4) args.push('--json');
    return { args: random() < 0.97 ? [command.name, ...args] : args };
  },
  check: async ({ args }) => verdictOn(args, await callAsync(args, DESK)),
  fileOf: ({ args }) => ({ ending: 'json', bytes: new TextEncoder().encode(JSON.stringify(args)) }),
};

function optionOf({ options }: CommandSpec, random: () => number): string[] {
  const { flags, choices } = pick<OptionSpec>(
    random,
    random() < 0.85 && options.length > 0 ? options : COMMON_OPTIONS,
  );
  const name = /--[\w-]+/.exec(flags)![0];
  if (!flags.includes('<')) return [name];
  if (choices !== undefined && random() < 0.7) return [name, pick(random, choices)];
  const isFile = /<(file|scan|dir|path)/.test(flags);
  return [name, pick(random, isFile && random() < 0.8 ? FILES : WORDS)];
}

/** Options that take the word behind them, also where that is meant as an option. */
const TAKING = new Set(
  [...COMMANDS.flatMap(({ options }) => options), ...COMMON_OPTIONS]
    .filter(({ flags }) => flags.includes('<'))
    .flatMap(({ flags }) => flags.match(/--?[\w-]+/g) ?? []),
);

const isJson = (args: readonly string[]): boolean =>
  args.some((arg, k) => arg === '--json' && !TAKING.has(args[k - 1] ?? ''));

/** A line of a stack trace of Node. */
const TRACE = /\n\s+at .+(:\d+:\d+|<anonymous>)/;

function verdictOn(args: readonly string[], called: Called): Verdict {
  const { exit, out, notes, files } = called;
  const answer = exit === EXIT.answered ? 'read' : 'refused';
  const written = [...files.values()].filter((data) => typeof data === 'string');
  for (const text of [out, notes, ...written]) {
    if (TRACE.test(text)) return { answer, fault: `a stack trace: ${text.slice(0, 200)}` };
    const odd = /(?<![\w"'<-])(NaN|undefined|\[object Object\]|Infinity)(?![\w"'>-])/.exec(text);
    if (odd !== null)
      return { answer, fault: `says ${odd[0]}: ${text.slice(Math.max(0, odd.index - 80), odd.index + 40)}` };
  }
  if (!Object.values(EXIT).some((code) => code === exit) || exit === EXIT.ourFault)
    return { answer, fault: `exit ${exit}` };
  if (
    exit !== EXIT.answered &&
    out === '' &&
    notes === '' &&
    written.length === 0 &&
    !args.includes('--json')
  )
    return { answer, fault: `exit ${exit} without a word` };
  const isHelp = args.some((arg) => ['--help', '-h', '--version', '-V', 'help'].includes(arg));
  if (!isJson(args) || isHelp) return { answer };
  for (const line of out.split('\n').filter((text) => text !== '')) {
    try {
      JSON.parse(line);
    } catch {
      return { answer, fault: `--json gives ${line.slice(0, 100)}` };
    }
  }
  return { answer };
}
