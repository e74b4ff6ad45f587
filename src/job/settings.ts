import * as v from 'valibot';
import { unchanged } from './json';

/** What a shop has said once and for all: a new casting begins with it. */
export interface ShopSettings {
  /** Above the sea, or the air pressure at the place itself; as typed, so that it can be read again as it was meant. */
  altitude?: { text: string; unit: string };
  station?: { text: string; unit: string };
  /** The unit chosen last, by the name of the box. */
  units?: Record<string, string>;
}

const typed = v.looseObject({ text: v.string(), unit: v.string() });

const SETTINGS = v.looseObject({
  altitude: v.exactOptional(typed),
  station: v.exactOptional(typed),
  units: v.exactOptional(v.record(v.string(), v.string())),
});

/** The settings that `json` is, or what is wrong with them. */
export function readSettings(json: unknown): ShopSettings | string {
  const read = v.safeParse(SETTINGS, json);
  if (read.success) return unchanged(read.output, json);
  const [issue] = read.issues;
  return `${v.getDotPath(issue) ?? 'settings'}: ${issue.message}`;
}
