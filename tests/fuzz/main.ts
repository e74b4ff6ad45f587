import { mkdirSync, writeFileSync } from 'node:fs';
import { lcg } from '../support/lcg';
import { seedOf, type Target, type Verdict } from './target';
import { TARGETS } from './targets';

/**
 * One room of the fuzz, in a process of its own that scripts/fuzz.mjs starts and watches: it is told each mutant before that is tried, so that
 * it knows which one hangs. Arguments: name, seed, first mutant, one behind the last, clock time to end at (ms), folder for what fails.
 */
const [name = '', seedText, firstText, lastText, untilText, folder = ''] = process.argv.slice(2);
const [seed, first, last, until] = [seedText, firstText, lastText, untilText].map(Number) as [
  number,
  number,
  number,
  number,
];

/** Failures of one room after which it ends: more of them would say the same. Chosen here. */
const ENOUGH = 20;
const MOST_BYTES = 1e9;

const target = TARGETS.find((one) => one.name === name);
if (target === undefined)
  throw new Error(`fuzz: expected one of ${TARGETS.map((t) => t.name).join(', ')}, got ${name}`);
// Nobody watches any more.
process.once('disconnect', () => process.exit());
await fuzz(target as Target<unknown>);

async function fuzz(room: Target<unknown>): Promise<void> {
  const count = { mutants: 0, read: 0, refused: 0, failures: 0 };
  const notes: Record<string, number> = {};
  let wasTooLarge = false;
  const tell = (): void =>
    void process.send?.({ count, notes, peakBytes: 1024 * process.resourceUsage().maxRSS });
  for (let n = first; n < last && Date.now() < until && count.failures < ENOUGH; n++) {
    process.send?.({ begun: n });
    const mutant = room.make(lcg(seedOf(seed, n)));
    const verdict = await tried(room, mutant);
    count.mutants++;
    count[verdict.answer]++;
    if (verdict.note !== undefined) notes[verdict.note] = (notes[verdict.note] ?? 0) + 1;
    // The peak does not fall again, so it is enough to look now and then.
    const isTooLarge = n % 16 === 0 && 1024 * process.resourceUsage().maxRSS > MOST_BYTES;
    const fault = verdict.fault ?? (isTooLarge && !wasTooLarge ? 'more than 1 GB' : undefined);
    wasTooLarge ||= isTooLarge;
    if (fault !== undefined) {
      count.failures++;
      keep(room, mutant, n, fault);
    }
    // Now and then, so that what is told goes out.
    if (n % 64 === 0) {
      tell();
      await new Promise((resolve) => setImmediate(resolve));
    }
  }
  tell();
  process.disconnect?.();
}

async function tried(room: Target<unknown>, mutant: unknown): Promise<Verdict> {
  try {
    return await room.check(mutant);
  } catch (e) {
    return { answer: 'refused', fault: `thrown: ${e instanceof Error ? (e.stack ?? e.message) : String(e)}` };
  }
}

function keep(room: Target<unknown>, mutant: unknown, n: number, fault: string): void {
  const { ending, bytes } = room.fileOf(mutant);
  const file = `${folder}/${name}-${seed}-${n}`;
  mkdirSync(folder, { recursive: true });
  writeFileSync(`${file}.${ending}`, bytes);
  const again = `npm run fuzz -- --only ${name} --seed ${seed} --at ${n}`;
  writeFileSync(`${file}.txt`, `${fault}\n\nSeed ${seed}, mutant ${n}. Again: ${again}\n`);
  console.error(`${name} ${n}: ${fault.split('\n')[0]}\n  ${again}`);
}
