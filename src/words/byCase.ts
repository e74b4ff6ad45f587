import { notChecked } from './factWords';
import type { Sentence, Values } from './sentence';

/** A sentence for each case that a check can meet. */
export type Words<Case extends string> = Readonly<Record<Case, (v: Values) => Sentence>>;

/** What is at stake while a check still waits for facts: one sentence, or nothing. */
export type Stake = (v: Values) => string | undefined;

/** The case that the check met is in the values; each check has its own closed list of them. */
export function byCase(words: Words<string>, stake: Stake = () => undefined): (v: Values) => Sentence {
  return (v) => {
    if (v.because === 'not checked') return notChecked(v, stake(v));
    const sentence = words[String(v.because)];
    if (sentence === undefined) throw new Error(`checkWords: expected a case of the check, got ${v.because}`);
    return sentence(v);
  };
}
