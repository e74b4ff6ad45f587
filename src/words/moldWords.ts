import type { MoldCode } from '../problem';
import { amount, percent, type Sentence, type Values } from './sentence';

export const MOLD_WORDS: Record<MoldCode, (v: Values) => Sentence> = {
  MOLD_PARAMETER: (v) => ({
    text: `${v.label}: ${typeof v.value === 'number' ? amount(v.value) : v.value} does not fit.`,
    hint: `Give ${v.need}.`,
  }),
  MOLD_PARAMETER_FOREIGN: (v) => ({
    text: `A mold of the type "${v.type}" has no such choice (${v.key}).`,
    hint: `It has: ${v.has}.`,
  }),
  SKIN_OVER_WALL: (v) => ({
    text: `A skin of ${amount(v.skinMm)} mm is thicker than the wall of ${amount(v.wallMm)} mm that the box leaves for it.`,
    hint: 'Make the wall at least as thick as the skin, or leave the skin out: a block has none of its own.',
  }),
  PARTING_OUTSIDE: (v) => ({
    text: `A parting plane ${amount(v.partingMm)} mm over the lowest point misses the sculpt, which is ${amount(v.tallMm)} mm tall.`,
    hint: 'Put it between the lowest and the highest point; 0 takes half the height.',
  }),
  MOLD_NEEDS_SURFACE: (v) => ({
    text: `The facets of this scan do not join to a surface, so ${v.what} cannot be measured on it.`,
    hint: 'A block in one part can: it only needs the volume and the size. For the rest, scan again or join the surface.',
  }),
  STANDS_ON_POINT: (v) => ({
    text: `The sculpt has no flat face to stand on: it meets the board on ${Number(v.contactCm2) < 0.05 ? 'a point or an edge' : `${amount(v.contactCm2, 2)} cm² or less`}${standHint(v)}.`,
    hint: 'Say which side is up (--up), cut it level (--cut), or let it hang free (--base closed).',
  }),
  BASE_TRIMMED: (v) => ({
    text: `The lowest ${amount(v.trimMm, 2)} mm were trimmed level, where the edge on the board is uneven: ${amount(Math.abs(Number(v.effectCm3)), 2)} cm³.`,
    hint: 'The board stands at that height; seal the gap below with clay.',
  }),
  HOLLOW_ON_BOARD: (v) => ({
    text: `The sculpt is hollow from below: ${amount(v.hollowCm3, 3)} cm³ are closed by the board, and no rubber gets in.`,
    hint: 'Seal the edge on the board. Foam would fill that hollow too, unless a core keeps it free.',
  }),
  JACKET_NOT_FREE: () => ({
    text: 'A jacket in one piece cannot leave a sculpt that hangs free: it goes all round.',
    hint: 'Make it in two pieces (--parts 2), or stand the sculpt on its board (--base open).',
  }),
  PULL_THROUGH_BOARD: (v) => ({
    text:
      v.pieces === 2
        ? 'Of two pieces drawn apart by that pull one would have to pass through the board.'
        : 'That pull takes the jacket into the board or along it, not off it.',
    hint:
      v.pieces === 2
        ? 'Draw them apart level, as along +x or +y; lift one piece (--parts 1 --pull +z), or let the sculpt hang free (--base closed).'
        : 'Lift it (--pull +z), or make it in two pieces.',
  }),
  HALVES_BOND: () => ({
    text: 'Rubber bonds to cured rubber: poured onto the bare first half, the second one makes it one block.',
    hint: 'Coat the first half, its keys too, with a release that its data sheet names, and try it on a scrap (common practice, no source).',
  }),
  BLOCK_SHUT: () => ({
    text: 'This block closes all round the sculpt: it has no parting and no opening.',
    hint: 'Plan where it is cut open and where the foam goes in, or make it in two parts (--parts 2).',
  }),
  COATS_BY_AREA: (v) => ({
    text: `The first coats are thin against the voxels (${amount(v.voxelMm, 2)} mm): they are reckoned from the area of the sculpt and of the whole skin, which is exact on rounded shapes and a little off in grooves.`,
    hint: 'The whole skin is measured. A smaller voxel (--accuracy fine) measures the coats too.',
  }),
  KEYS_SMALLER: (v) => ({
    text: `Keys of ${amount(v.askedMm)} mm radius do not fit the flange: ${amount(v.radiusMm)} mm were taken, half of its width.`,
    hint: 'Make the flange wider for larger keys.',
  }),
  UNDERCUT_LOCKED: (v) =>
    Number(v.fillCm3) < NEXT_TO_NOTHING_CM3 || Number(v.share) < NEXT_TO_NOTHING_SHARE
      ? {
          text: `${jacketWords(v)}, pulled ${pullWords(v)}, draws: undercuts behind the skin hold next to nothing (${Number(v.fillCm3) < NEXT_TO_NOTHING_CM3 ? `under ${NEXT_TO_NOTHING_CM3} cm³` : 'less than the grid tells apart'}).`,
          hint: 'Nothing needs filling.',
        }
      : {
          text: `${jacketWords(v)} would be held by ${amount(v.fillCm3, 3)} cm³ of undercuts${Number(v.draftDegrees) > 0 ? ' and draft' : ''} behind the skin, ${percent(v.share)} of skin and fill, pulled ${pullWords(v)}.`,
          hint: 'That much is filled, so that the jacket draws; another pull or one more piece may need less.',
        },
  PULL_TIED: () => ({
    text: 'Other pulls lock as little.',
    hint: 'Of those the one that would lock least with a draft was taken, then the one nearest to an axis; name another if it suits the seam.',
  }),
};

/** Chosen here: a fill that no hand would notice. */
const NEXT_TO_NOTHING_CM3 = 1;
/** Of the skin and the fill: the grid's own noise. */
const NEXT_TO_NOTHING_SHARE = 0.004;

const standHint = (v: Values): string =>
  v.rimUp === undefined
    ? ''
    : `; its largest open rim looks another way, and would be below with ${v.rimUp} up (--up ${v.rimUp})`;

const jacketWords = (v: Values): string =>
  v.pieces === 2 ? 'A jacket in two pieces' : 'A jacket in one piece';

/** "straight up", "apart along x": a direction in words where it has one. */
export function pullWords({ x, y, z, pieces }: Values): string {
  const [a, b, c] = [Number(x), Number(y), Number(z)];
  if (pieces !== 2 && c > 0.999) return 'straight up';
  const apart = pieces === 2 ? 'apart ' : '';
  if (Math.abs(c) < 0.01) {
    const turn = ((Math.atan2(b, a) * 180) / Math.PI + 360) % (pieces === 2 ? 180 : 360);
    const near = AXES.find(({ at }) => Math.abs(turn - at) < 0.5);
    return `${apart}${near?.words ?? `level, ${amount(turn, 3)}° from x toward y`}`;
  }
  if (pieces === 2 && Math.abs(c) > 0.999) return 'apart, up and down';
  return `${apart}along ${[a, b, c].map((n) => n.toFixed(2)).join(', ')} (x, y, z)`;
}

const AXES = [
  { at: 0, words: 'along x (left and right)' },
  { at: 180, words: 'along x (left and right)' },
  { at: 90, words: 'along y (front and back)' },
  { at: 270, words: 'along y (front and back)' },
] as const;
