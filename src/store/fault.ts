import { finding, type Problem } from '../problem';

/** Why something is not kept. `lost`: the data is gone or shut from outside while the page was open. */
type Reason = 'full' | 'refused' | 'newer' | 'lost' | 'other';

/** What a fault of the browser's store means, as a problem the page can say. */
export function storeProblem(fault: unknown): Problem {
  const why = whyOf(fault);
  // Dexie adds the inner fault on lines below.
  const [message = ''] = (fault instanceof Error ? fault.message : String(fault)).split('\n');
  return finding(CODES[reasonOf(why)], 'stop', { why: message });
}

const CODES = {
  full: 'STORE_FULL',
  refused: 'STORE_REFUSED',
  newer: 'STORE_NEWER',
  lost: 'STORE_LOST',
  other: 'STORE_FAILED',
} as const;

/** Dexie wraps what the browser throws, and of many writes at once it lists the faults: the innermost name tells most. */
function whyOf(fault: unknown): string {
  const names: string[] = [];
  for (let at: unknown = fault; isNamed(at) && names.length < 5; at = at.inner ?? at.failures?.[0])
    names.push(at.name);
  return names.join(' ');
}

interface Named {
  name: string;
  inner?: unknown;
  failures?: readonly unknown[];
}

const isNamed = (fault: unknown): fault is Named =>
  typeof fault === 'object' && fault !== null && typeof (fault as { name?: unknown }).name === 'string';

function reasonOf(names: string): Reason {
  if (names.includes('QuotaExceeded')) return 'full';
  if (names.includes('Version')) return 'newer';
  if (names.includes('DatabaseClosed') || names.includes('InvalidState')) return 'lost';
  if (names.includes('MissingAPI') || names.includes('OpenFailed') || names.includes('Security'))
    return 'refused';
  return 'other';
}
