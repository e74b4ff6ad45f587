/**
 * The first name that an object of a JSON text has twice, or undefined. The language's own reader takes the last of them without a word, and what
 * stood under the others is lost. The text must be JSON; long strings are stepped over, not looked through.
 */
export function keyTwice(text: string): string | undefined {
  const open: (Set<string> | undefined)[] = [];
  const next = /["{}[\]]/g;
  for (let found = next.exec(text); found !== null; found = next.exec(text)) {
    const [sign] = found;
    if (sign === '{') open.push(new Set());
    else if (sign === '[') open.push(undefined);
    else if (sign !== '"') open.pop();
    else {
      const end = endOfString(text, found.index);
      next.lastIndex = end;
      const names = open.at(-1);
      if (names === undefined || !isName(text, end)) continue;
      const name = JSON.parse(text.slice(found.index, end)) as string;
      if (names.has(name)) return name;
      names.add(name);
    }
  }
  return undefined;
}

/** First character behind the string that starts at `start`. */
function endOfString(text: string, start: number): number {
  for (let at = text.indexOf('"', start + 1); ; at = text.indexOf('"', at + 1)) {
    let slashes = 0;
    while (text[at - 1 - slashes] === '\\') slashes++;
    if (slashes % 2 === 0) return at + 1;
  }
}

function isName(text: string, end: number): boolean {
  let at = end;
  while (' \t\r\n'.includes(text[at] ?? 'x')) at++;
  return text[at] === ':';
}
