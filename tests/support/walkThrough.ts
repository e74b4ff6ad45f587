import { cpSync, mkdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

/** What the blocks of code in a part of a page ask for: files that are new, and hunks of files that are there. */
export interface WalkThrough {
  files: { path: string; text: string }[];
  hunks: { path: string; before: string; after: string }[];
}

/** Reads the blocks under a heading: `ts` with "// path" in its first line, `diff` with "--- path" before its hunks, which "@@" sets apart. */
export function walkThrough(page: string, heading: string): WalkThrough {
  const part = page.split(`\n### ${heading}\n`)[1]?.split(/\n##+ /)[0];
  if (part === undefined) throw new Error(`walkThrough: expected a heading "${heading}"`);
  const blocks = [...part.matchAll(/```(\w+)\n([\s\S]*?)```/g)].map(([, language, text]) => ({
    language,
    text: text!,
  }));
  return {
    files: blocks.filter(({ language }) => language === 'ts').map(({ text }) => newFile(text)),
    hunks: blocks.filter(({ language }) => language === 'diff').flatMap(({ text }) => hunksOf(text)),
  };
}

function newFile(text: string): { path: string; text: string } {
  const path = /^\/\/ (\S+)\n/.exec(text)?.[1];
  if (path === undefined) throw new Error(`newFile: expected "// path" first, got ${text.slice(0, 40)}`);
  return { path, text: text.slice(text.indexOf('\n') + 1) };
}

const hunksOf = (block: string): WalkThrough['hunks'] =>
  block
    .split(/^--- /m)
    .filter((file) => file.trim() !== '')
    .flatMap((file) => {
      const [path, ...lines] = file.trimEnd().split('\n');
      return lines
        .join('\n')
        .split(/^@@$\n?/m)
        .map((hunk) => ({ path: path!, before: linesOf(hunk, '-'), after: linesOf(hunk, '+') }));
    });

/** The lines of one side of a hunk, without their mark. */
const linesOf = (hunk: string, mark: '-' | '+'): string =>
  hunk
    .split('\n')
    .filter((line) => line.startsWith(' ') || line.startsWith(mark))
    .map((line) => line.slice(1))
    .join('\n');

/** A copy of the sources in a folder, with what is needed to build them. */
export function copyOfSources(root: string, folder: string): void {
  cpSync(join(root, 'src'), join(folder, 'src'), { recursive: true });
  for (const file of ['package.json', 'tsconfig.json']) cpSync(join(root, file), join(folder, file));
  symlinkSync(join(root, 'node_modules'), join(folder, 'node_modules'));
}

/** Does what is asked for; a hunk must fit in one place and no more. */
export function follow({ files, hunks }: WalkThrough, folder: string): void {
  for (const { path, text } of files) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
  for (const { path, before, after } of hunks) {
    const text = `\n${readFileSync(join(folder, path), 'utf8')}`;
    const places = text.split(`\n${before}\n`).length - 1;
    if (places !== 1) throw new Error(`follow: expected one place in ${path}, got ${places} for\n${before}`);
    // A function, as a text could hold a dollar sign.
    writeFileSync(join(folder, path), text.replace(`\n${before}\n`, () => `\n${after}\n`).slice(1));
  }
}
