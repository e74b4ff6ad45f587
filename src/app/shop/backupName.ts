/** "wrack-lane-puppet-works-2026-11-29.json": letters and figures of any script, so that every disk takes it. */
export function backupName(shop: string, day: string): string {
  const words = shop.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? ['shop'];
  return `${words.join('-').slice(0, LONGEST)}-${day}.json`;
}

const LONGEST = 80;
