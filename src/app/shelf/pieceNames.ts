/** Without its ending. */
export const nameOf = (file: string): string => file.replace(/\.[^.]+$/, '').trim() || file;

/** What a piece is called until somebody names it. */
export const NEW_NAME = 'New piece';

export const isNewName = (name: string): boolean => /^New piece( \d+)?$/.test(name);

/** "New piece", and "New piece 2" where there is one. */
export function freeName(name: string, taken: readonly string[]): string {
  if (!taken.includes(name)) return name;
  let no = 2;
  while (taken.includes(`${name} ${no}`)) no++;
  return `${name} ${no}`;
}
