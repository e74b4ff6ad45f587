// Draws the app's icons: foam that has risen out of its mold. One drawing of rectangles and a round, on a field of 64, written as
// SVG and, sampled 8 x 8 a pixel, as PNG. `--check` writes nothing and fails when a file differs from the drawing.
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { deflateSync, inflateSync } from 'node:zlib';
import { root } from './setup.mjs';

const FIELD = 64;
const PAPER = [0xfb, 0xfa, 0xf7];
const INK = [0x1c, 0x1b, 0x19];
const FOAM = [0x0b, 0x5f, 0x62];
/** Its sides meet the top corners of the box: 15² + 20² = 25². */
const DOME = { x: 32, y: 38, r: 25 };
const FOAM_BOX = [17, 18, 47, 47];
const MOLD = [
  [9, 29, 15, 55],
  [49, 29, 55, 55],
  [9, 49, 55, 55],
];
const SAMPLES = 8;

const folder = join(root, 'src', 'app', 'public', 'icons');
/** name, pixels, and how large the drawing is in it: what masks an icon may cut all but the middle four fifths. */
const PNGS = [
  ['icon-192.png', 192, 1],
  ['icon-512.png', 512, 1],
  ['icon-maskable-512.png', 512, 0.72],
  ['apple-touch-180.png', 180, 0.86],
];

const files = [['icon.svg', Buffer.from(svg())], ...PNGS.map(([name, px, size]) => [name, png(px, size)])];
if (process.argv.includes('--check')) {
  const off = files.filter(([name, bytes]) => !isSame(join(folder, name), bytes)).map(([name]) => name);
  if (off.length > 0) console.error(`Not as drawn: ${off.join(', ')}. Run node scripts/icons.mjs.`);
  process.exitCode = off.length === 0 ? 0 : 1;
} else {
  mkdirSync(folder, { recursive: true });
  for (const [name, bytes] of files) writeFileSync(join(folder, name), bytes);
}

function svg() {
  const hex = (color) => `#${color.map((c) => c.toString(16).padStart(2, '0')).join('')}`;
  const box = ([x0, y0, x1, y1]) => `M${x0} ${y0}H${x1}V${y1}H${x0}z`;
  const [x0, y0, x1, y1] = FOAM_BOX;
  const foam = `M${x0} ${y1}V${y0}A${DOME.r} ${DOME.r} 0 0 1 ${x1} ${y0}V${y1}z`;
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${FIELD} ${FIELD}"><path fill="${hex(PAPER)}" d="${box([0, 0, FIELD, FIELD])}"/><path fill="${hex(FOAM)}" d="${foam}"/><path fill="${hex(INK)}" d="${MOLD.map(box).join('')}"/></svg>\n`;
}

function colorAt(x, y) {
  const within = ([x0, y0, x1, y1]) => x >= x0 && x < x1 && y >= y0 && y < y1;
  if (MOLD.some(within)) return INK;
  const isOverBox = y < FOAM_BOX[1] && Math.hypot(x - DOME.x, y - DOME.y) < DOME.r;
  return within(FOAM_BOX) || isOverBox ? FOAM : PAPER;
}

function png(px, size) {
  const rows = Buffer.alloc(px * (1 + 3 * px));
  const at = (k) => FIELD / 2 + ((k / px - 0.5) * FIELD) / size;
  for (let row = 0; row < px; row++) {
    for (let col = 0; col < px; col++) {
      const sum = [0, 0, 0];
      for (let i = 0; i < SAMPLES; i++)
        for (let j = 0; j < SAMPLES; j++)
          colorAt(at(col + (j + 0.5) / SAMPLES), at(row + (i + 0.5) / SAMPLES)).forEach(
            (c, k) => (sum[k] += c),
          );
      sum.forEach((c, k) => (rows[row * (1 + 3 * px) + 1 + 3 * col + k] = Math.round(c / SAMPLES ** 2)));
    }
  }
  const head = Buffer.alloc(13);
  head.writeUInt32BE(px, 0);
  head.writeUInt32BE(px, 4);
  // 8 bits, red green blue, nothing else.
  head.set([8, 2, 0, 0, 0], 8);
  const sign = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return Buffer.concat([
    sign,
    chunk('IHDR', head),
    chunk('IDAT', deflateSync(rows, { level: 9 })),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

function chunk(kind, bytes) {
  const body = Buffer.concat([Buffer.from(kind), bytes]);
  const out = Buffer.alloc(body.length + 8);
  out.writeUInt32BE(bytes.length, 0);
  body.copy(out, 4);
  out.writeUInt32BE(crc32(body), body.length + 4);
  return out;
}

function crc32(bytes) {
  let crc = ~0;
  for (const byte of bytes) {
    crc ^= byte;
    for (let k = 0; k < 8; k++) crc = (crc >>> 1) ^ (0xedb88320 & -(crc & 1));
  }
  return ~crc >>> 0;
}

/** Pictures are compared by their pixels: another zlib packs the same ones into other bytes. */
function isSame(file, bytes) {
  if (!existsSync(file)) return false;
  const there = readFileSync(file);
  return file.endsWith('.svg') ? there.equals(bytes) : pixelsOf(there).equals(pixelsOf(bytes));
}

/** Of a picture as written here: one part with all pixels, after sign and head. */
function pixelsOf(bytes) {
  const at = 8 + 25;
  const packed = bytes.subarray(at + 8, at + 8 + bytes.readUInt32BE(at));
  return Buffer.concat([bytes.subarray(0, at), inflateSync(packed)]);
}
