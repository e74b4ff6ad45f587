import { bad, finding, good, type Outcome } from '../../problem';
import { cutMesh } from '../cut';
import { measureSolid } from '../measure/measureSolid';
import { smallestCircle } from '../plane/smallestCircle';
import { tightestRectangle } from '../plane/tightestRectangle';
import type {
  BoxShape,
  MoldBody,
  MoldSettings,
  MoldShape,
  MoldType,
  MoldWork,
  NamedVolume,
} from './moldType';
import { BASE, length, parts, PRACTICE } from './parameters';
import type { Sculpt } from './sculpt';
import { numberIn, partsIn } from './settle';

/**
 * Rubber poured into a box or a cylinder around the sculpt: what the box holds less what the sculpt takes. The box is the smallest that leaves
 * the wall all round: straight, or turned about the vertical to its smallest plan (a box has a side along the hull), or a cylinder
 * around the smallest enclosing circle. In two parts it is poured half by half on a clay bed up to the parting plane; keys take from one half what
 * they give the other.
 */
export const BLOCK: MoldType = {
  key: 'block',
  title: 'Poured block',
  goodFor: 'Small, stout pieces: no jacket, quickly made, and the most rubber.',
  parameters: [
    BASE,
    parts('Parts of the block', 1),
    length('wallMm', 'Wall around the sculpt', 'wall', [12, 3, 100], `10 to 20 mm, ${PRACTICE}`),
    length('coverMm', 'Rubber over the top', 'cover', [12, 3, 200], `10 to 20 mm, ${PRACTICE}`, true),
    length('underMm', 'Rubber under a free sculpt', 'under', [12, 3, 200], `10 to 20 mm, ${PRACTICE}`, true),
    {
      key: 'shape',
      label: 'Box or cylinder',
      flag: 'box',
      kind: 'choice',
      default: 'least',
      choices: ['least', 'straight', 'turned', 'cylinder'],
      from: 'chosen here: the one that takes least rubber',
    },
    {
      key: 'partingMm',
      label: 'Parting plane, over the lowest point of the sculpt (0: half its height)',
      flag: 'parting',
      kind: 'height',
      default: 0,
      low: 0,
      high: 5000,
      from: 'chosen here: half the height',
      isFine: true,
    },
    length(
      'spoutMm',
      'Spout of a block in two parts, diameter',
      'spout',
      [20, 0, 100],
      `15 to 20 mm, ${PRACTICE}; 0 makes none`,
      true,
    ),
  ],
};

export const BLOCK_WORK: MoldWork = { reachMm: () => 0, build };

function build({ sculpt }: MoldBody, settings: MoldSettings): Outcome<MoldShape> {
  const isFree = sculpt.boardMm === undefined;
  const { box, wallMm, coverMm, underMm } = blockBox(sculpt, settings);
  const common = {
    key: BLOCK.key,
    settings,
    rubberMm3: box.volumeMm3 - sculpt.volumeMm3,
    clay: [],
    voids: [],
    sculptMm3: sculpt.volumeMm3,
    latticeDoubtMm3: 0,
    box,
    outerMm: box.innerMm,
    wallMm,
    thickestMm: Math.max(wallMm, coverMm, underMm),
    ...(isEven(box.volumeMm3 - sculpt.volumeMm3, sculpt, wallMm) ? {} : { hasThickerPlaces: true as const }),
    findings: [],
  };
  const whole = {
    when: 'poured',
    sculptMm3: sculpt.volumeMm3,
    clayMm3: 0,
    voidMm3: 0,
    containerMm3: box.volumeMm3,
  };
  if (partsIn(settings) === 1)
    return good({
      ...common,
      rubber: [{ name: 'block', volumeMm3: common.rubberMm3 }],
      fillings: [{ ...whole, rubberMm3: common.rubberMm3 }],
      findings: isFree ? [finding('BLOCK_SHUT', 'look')] : [],
    });
  return twoParts(sculpt, settings, common, { underMm, coverMm });
}

/** The box that the settings ask for, and the height it stands at, mm. */
export function blockBox(
  sculpt: Sculpt,
  settings: MoldSettings,
): { box: BoxShape; wallMm: number; coverMm: number; underMm: number; fromMm: number } {
  const wallMm = numberIn(settings, 'wallMm');
  const coverMm = numberIn(settings, 'coverMm');
  const underMm = sculpt.boardMm === undefined ? numberIn(settings, 'underMm') : 0;
  const { min, max } = sculpt.bounds;
  const heightMm = max[2] - min[2] + coverMm + underMm;
  const box = chosen(boxesAround(sculpt, wallMm, heightMm), String(settings.shape));
  return { box, wallMm, coverMm, underMm, fromMm: min[2] - underMm };
}

function twoParts(
  sculpt: Sculpt,
  settings: MoldSettings,
  common: Omit<MoldShape, 'rubber' | 'fillings'> & { box: BoxShape },
  { underMm, coverMm }: { underMm: number; coverMm: number },
): Outcome<MoldShape> {
  const { min, max } = sculpt.bounds;
  const tallMm = max[2] - min[2];
  const asked = numberIn(settings, 'partingMm');
  const upMm = asked === 0 ? tallMm / 2 : asked;
  if (upMm >= tallMm) return bad('PARTING_OUTSIDE', { partingMm: upMm, tallMm });
  const below = volumeBelow(sculpt, min[2] + upMm);
  if (!below.ok) return below;
  const { box } = common;
  const planMm2 = box.volumeMm3 / box.innerMm[2];
  const bedMm = underMm + upMm;
  const sculptOver = sculpt.volumeMm3 - below.value;
  // The rod runs from the sculpt through the upper half to where the foam is poured in.
  const spoutMm = numberIn(settings, 'spoutMm');
  const mostMm = Math.min(box.innerMm[0], box.innerMm[1]) / 2;
  if (spoutMm > mostMm)
    return bad('MOLD_PARAMETER', {
      key: 'spoutMm',
      label: 'Spout of a block in two parts, diameter',
      value: spoutMm,
      need: `at most half the width of the box, ${mostMm.toFixed(0)} mm`,
    });
  const spoutMm3 = (Math.PI / 4) * spoutMm ** 2 * coverMm;
  const lower = planMm2 * bedMm - below.value;
  const upper = planMm2 * (box.innerMm[2] - bedMm) - sculptOver - spoutMm3;
  const rubber: NamedVolume[] = [
    { name: 'upper half', volumeMm3: upper },
    { name: 'lower half', volumeMm3: lower },
  ];
  const bed = { name: 'clay bed', volumeMm3: lower };
  const poured = { sculptMm3: sculpt.volumeMm3, voidMm3: spoutMm3, containerMm3: box.volumeMm3 };
  return good({
    ...common,
    rubber,
    rubberMm3: upper + lower,
    findings: [finding('HALVES_BOND', 'look')],
    clay: [bed],
    voids: spoutMm3 > 0 ? [{ name: 'spout', volumeMm3: spoutMm3 }] : [],
    fillings: [
      { ...poured, when: 'first half, on the clay bed', rubberMm3: upper, clayMm3: lower },
      { ...poured, when: 'both halves', rubberMm3: upper + lower, clayMm3: 0 },
    ],
    partingOverMm: upMm,
  });
}

/** Rubber of more than this many times area x wall fills hollows and corners too, and is thicker there. Chosen here. */
const UNEVEN_TIMES = 1.4;

const isEven = (rubberMm3: number, { areaMm2 }: Sculpt, wallMm: number): boolean =>
  rubberMm3 <= UNEVEN_TIMES * areaMm2 * wallMm;

/** Volume of the sculpt below a height: by its own surface where it has one. Errors: those of `measureSolid`; PARTING_NEEDS_SURFACE. */
function volumeBelow({ chain }: Sculpt, zMm: number): Outcome<number> {
  if (chain === undefined) return bad('MOLD_NEEDS_SURFACE', { what: 'a parting plane' });
  const { mesh, onCut } = cutMesh(chain, [{ axis: 2, atMm: zMm, keep: 'below' }]);
  if (mesh.triangles.length === 0) return good(0);
  const half = measureSolid(mesh, { coordinateStepMm: 0, isCutVertex: (v) => onCut[v] === 1 });
  return half.ok ? good(half.value.volumeMm3) : half;
}

function boxesAround(
  sculpt: Sculpt,
  wallMm: number,
  heightMm: number,
): (Omit<BoxShape, 'others'> & { name: string })[] {
  const { bounds, hull } = sculpt;
  const { us, vs } = hull;
  const sides = [0, 1].map((k) => bounds.max[k]! - bounds.min[k]! + 2 * wallMm);
  const turned = tightestRectangle(us, vs, wallMm);
  const circle = smallestCircle(us, vs);
  const acrossMm = 2 * (circle.radius + wallMm);
  const box = (name: string, [x, y]: readonly number[], turnDegrees: number) => ({
    name,
    kind: 'box' as const,
    innerMm: [x!, y!, heightMm] as const,
    turnDegrees,
    volumeMm3: x! * y! * heightMm,
  });
  return [
    box('straight', sides, 0),
    box(
      'turned',
      turned.sides.map((side) => side + 2 * wallMm),
      (turned.angleRad * 180) / Math.PI,
    ),
    {
      name: 'cylinder',
      kind: 'cylinder',
      innerMm: [acrossMm, acrossMm, heightMm],
      turnDegrees: 0,
      volumeMm3: (Math.PI / 4) * acrossMm ** 2 * heightMm,
    },
  ];
}

/** A box turned by nothing is the straight one. */
const isSame = (one: Omit<BoxShape, 'others'>, other: Omit<BoxShape, 'others'>): boolean =>
  one.kind === other.kind && Math.abs(one.turnDegrees - other.turnDegrees) < 1e-9;

/** A turned box or a cylinder must save a hundredth to be taken unasked. Chosen here. */
const WORTH_IT = 0.99;

/** The one asked for, the others beside it. */
function chosen(boxes: ReturnType<typeof boxesAround>, shape: string): BoxShape {
  const least = boxes.reduce((a, b) => (b.volumeMm3 < a.volumeMm3 * WORTH_IT ? b : a));
  const picked = boxes.find(({ name }) => name === shape) ?? least;
  const plain = ({ name: _, ...box }: (typeof boxes)[number]): Omit<BoxShape, 'others'> => box;
  return {
    ...plain(picked),
    others: boxes.filter((box) => box !== picked && !isSame(box, picked)).map(plain),
  };
}
