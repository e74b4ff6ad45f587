import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from '../../scripts/setup.mjs';

const tokens = readFileSync(join(root, 'src/app/styles/tokens.css'), 'utf8');
const color = (name) => new RegExp(`--${name}: (#[0-9a-f]+);`).exec(tokens)[1];
export const [PAPER, WELL, INK, LINE, HAIR, ACCENT] = ['paper', 'well', 'ink', 'line', 'hair', 'accent'].map(
  color,
);

/** Pixels per mm, room around and below the picture, height of a line of text. */
export const [SCALE, EDGE, TEXT] = [5, 14, 19];
export const round = (number) => String(Math.round(10 * number) / 10);

/** Where triangles meet the plane z: pairs of points. */
export function sliced({ positions: p, triangles }, z) {
  const found = [];
  for (let t = 0; t < triangles.length; t += 3) {
    const corners = [0, 1, 2].map((c) => 3 * triangles[t + c]);
    const ends = corners.flatMap((a, c) => {
      const b = corners[(c + 1) % 3];
      if (p[a + 2] < z === p[b + 2] < z) return [];
      const share = (z - p[a + 2]) / (p[b + 2] - p[a + 2]);
      return [[p[a] + share * (p[b] - p[a]), p[a + 1] + share * (p[b + 1] - p[a + 1])]];
    });
    if (ends.length === 2) found.push(ends);
  }
  return found;
}

/** Up in the picture is up in mm. */
export function viewOf([x0, y0], [x1, y1], scale = SCALE) {
  return {
    scale,
    width: scale * (x1 - x0) + 2 * EDGE,
    height: scale * (y1 - y0) + 2 * EDGE,
    x: (mm) => EDGE + scale * (mm - x0),
    y: (mm) => EDGE + scale * (y1 - mm),
  };
}

export const segments = (pairs, view) =>
  pairs
    .map((ends) => `M${ends.map(([x, y]) => `${round(view.x(x))} ${round(view.y(y))}`).join('L')}`)
    .join('');

/** Writes a picture with its lines of text below. */
export function draw(name, { width, height, body, words }) {
  const tall = height + TEXT * words.length + EDGE / 2;
  const told = words.map(
    (line, i) => `<text x="${EDGE}" y="${round(height + TEXT * i + EDGE / 2)}">${line}</text>`,
  );
  const svg = [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${round(width)} ${round(tall)}" width="${round(width)}" height="${round(tall)}" font-family="Liberation Sans, Noto Sans, sans-serif">`,
    `<rect width="100%" height="100%" fill="${PAPER}"/>`,
    ...body,
    `<g font-size="14" fill="${INK}">${told.join('')}</g>`,
    '</svg>',
    '',
  ].join('\n');
  writeFileSync(join(root, 'docs/pictures', name), svg);
  console.log(`docs/pictures/${name}: ${svg.length} bytes`);
}
