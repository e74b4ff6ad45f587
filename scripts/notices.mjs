// The notices of what others wrote and stands in what is built: their license texts, collected from node_modules. The build of the command line and
// the library calls it (scripts/build.mjs), and that of the page (scripts/app/thirdParty.ts).
import { readdirSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';

/** https://opensource.org/license/isc-license-txt */
const ISC = `Permission to use, copy, modify, and/or distribute this software for any purpose with or without fee is hereby granted, provided that the above
copyright notice and this permission notice appear in all copies.

THE SOFTWARE IS PROVIDED "AS IS" AND THE AUTHOR DISCLAIMS ALL WARRANTIES WITH REGARD TO THIS SOFTWARE INCLUDING ALL IMPLIED WARRANTIES OF
MERCHANTABILITY AND FITNESS. IN NO EVENT SHALL THE AUTHOR BE LIABLE FOR ANY SPECIAL, DIRECT, INDIRECT, OR CONSEQUENTIAL DAMAGES OR ANY DAMAGES
WHATSOEVER RESULTING FROM LOSS OF USE, DATA OR PROFITS, WHETHER IN AN ACTION OF CONTRACT, NEGLIGENCE OR OTHER TORTIOUS ACTION, ARISING OUT OF OR IN
CONNECTION WITH THE USE OR PERFORMANCE OF THIS SOFTWARE.`;

/** https://opensource.org/license/mit */
const MIT = `Permission is hereby granted, free of charge, to any person obtaining a copy of this software and associated documentation files (the "Software"), to
deal in the Software without restriction, including without limitation the rights to use, copy, modify, merge, publish, distribute, sublicense, and/or
sell copies of the Software, and to permit persons to whom the Software is furnished to do so, subject to the following conditions:

The above copyright notice and this permission notice shall be included in all copies or substantial portions of the Software.

THE SOFTWARE IS PROVIDED "AS IS", WITHOUT WARRANTY OF ANY KIND, EXPRESS OR IMPLIED, INCLUDING BUT NOT LIMITED TO THE WARRANTIES OF MERCHANTABILITY,
FITNESS FOR A PARTICULAR PURPOSE AND NONINFRINGEMENT. IN NO EVENT SHALL THE AUTHORS OR COPYRIGHT HOLDERS BE LIABLE FOR ANY CLAIM, DAMAGES OR OTHER
LIABILITY, WHETHER IN AN ACTION OF CONTRACT, TORT OR OTHERWISE, ARISING FROM, OUT OF OR IN CONNECTION WITH THE SOFTWARE OR THE USE OR OTHER DEALINGS
IN THE SOFTWARE.`;

/** Of packages that name their license and hold no file of it. */
const UNTOLD = {
  // From the file LICENSE of its repository.
  '@react-three/fiber': `MIT License\n\nCopyright (c) 2020 react-spring\n\n${MIT}`,
};

/** What a package holds of others past its modules, and does not tell itself. */
const WITHIN = {
  '@react-three/fiber':
    'It holds react-reconciler, Copyright (c) Meta Platforms, Inc. and affiliates, under the same license as react.',
  'manifold-3d':
    'Its manifold.wasm holds, compiled, Clipper2 by Angus Johnson (its names stand in the file) under the Boost Software License 1.0, which asks for no ' +
    'notice with compiled code, and what Emscripten puts under every program: musl (MIT), libc++ and compiler-rt (Apache-2.0 with LLVM exception). These ' +
    'licenses are told from memory.',
};

/** Behind this line Vite tells of what it holds itself: none of that goes into a page. */
const VITES_OWN = /^# Licenses of bundled dependencies/m;

/** The folder of the package that a module is of, the innermost of nested ones; undefined for a module of ours. */
export function packageFolder(module) {
  const path = module.replaceAll('\\', '/').replace(/[?#].*$/, '');
  const [, folder] = /^(.*node_modules\/(?:@[^/]+\/)?[^/]+)(?:\/|$)/.exec(path) ?? [];
  return folder?.replaceAll('/', sep);
}

/** The notices as one text: every package once a version, by name. `modules`: files whose code, or a part of it, stands in what was built. */
export function noticesText(modules) {
  const folders = new Set([...modules].map(packageFolder).filter((folder) => folder !== undefined));
  const packages = [...folders].map((folder) => ({ ...manifestOf(folder), folder }));
  const texts = new Map(packages.map((one) => [`${one.name} ${one.version}`, textOf(one)]));
  const sections = [...texts].sort(([one], [other]) => (one < other ? -1 : 1));
  return [
    HEAD,
    ...sections.map(([title, text]) => `${title}\n${'='.repeat(title.length)}\n\n${text}\n`),
  ].join('\n\n');
}

const HEAD = `Risewright stands under the license in its file LICENSE (MIT). What is built from it holds code that others wrote, or parts of it. Each of
these packages is named here with its version, and with the license that its authors gave it.
`;

function manifestOf(folder) {
  return JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
}

/** All of a package that tells of its rights: license and notice. */
function textOf({ folder, license, author, name }) {
  const files = readdirSync(folder)
    .filter((entry) => /^(licen[cs]e|copying|notice)/i.test(entry))
    .sort();
  const texts = files.map((file) => readFileSync(join(folder, file), 'utf8').split(VITES_OWN)[0].trim());
  const text =
    texts.length > 0 ? texts.join('\n\n').replaceAll('\r\n', '\n') : untold({ license, author, name });
  return Object.hasOwn(WITHIN, name) ? `${text}\n\n${WITHIN[name]}` : text;
}

function untold({ license, author, name }) {
  if (Object.hasOwn(UNTOLD, name)) return UNTOLD[name];
  if (license !== 'ISC')
    throw new Error(`${name} has no license file: write the text of ${license} into scripts/notices.mjs`);
  return `ISC License\n\nCopyright (c) ${typeof author === 'string' ? author : author?.name}\n\n${ISC}`;
}
