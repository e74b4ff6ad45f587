import { bad, finding, good, type Outcome, type Problem } from '../../problem';
import { cutMesh } from '../cut';
import { measureSolid } from '../measure/measureSolid';
import type { SolidMeasure } from '../measure/solidMeasure';
import type { UpAxis } from '../place';
import type { Rim } from '../repair/rims';
import { extentsOf, type Bounds, type TriangleMesh } from '../triangleMesh';
import { footprintOf, type Footprint } from '../plane/footprint';
import { ON_BOARD_MM, withoutHollows } from './hollows';
import { findStand } from './stand';

/** The sculpt a mold goes around: closed, its hollows filled, flat where it stands on the board. Lengths in mm. */
export interface Sculpt {
  /** Facets that face outward; `undefined` where a scan of loose facets has no surface to grow. */
  chain: TriangleMesh | undefined;
  bounds: Bounds;
  /** Seen from above. */
  hull: Footprint;
  volumeMm3: number;
  /** Of the surface that gets rubber: not of the face on the board. */
  areaMm2: number;
  /** Height of the board; undefined for a sculpt that hangs free. */
  boardMm: number | undefined;
  findings: Problem[];
}

export type BaseChoice = 'open' | 'closed';

/**
 * The sculpt as a mold sees it. On the board (`open`) an uneven lowest edge is trimmed level, as the board meets it nowhere else and rubber would
 * run beneath; how much went is a finding. Errors: those of `measureSolid`; CUT_EMPTY.
 */
export function standSculpt(solid: SolidMeasure, base: BaseChoice): Outcome<Sculpt> {
  const { bounds } = solid;
  const filled = solid.envelope === solid.chain ? good(solid) : filledOf(solid);
  if (!filled.ok) return filled;
  const { volumeMm3, chain } = filled.value;
  const free: Sculpt = {
    chain: solid.soup === undefined ? chain : undefined,
    bounds,
    hull: footprintOf(chain),
    volumeMm3,
    areaMm2: filled.value.areaMm2,
    boardMm: undefined,
    findings: [],
  };
  if (base === 'closed') return good(free);
  if (free.chain === undefined) return good({ ...free, boardMm: bounds.min[2] });
  const stand = findStand(free.chain, bounds);
  if (stand.kind === 'point') {
    const rimUp = upOfRim(solid);
    const onPoint = finding('STANDS_ON_POINT', 'look', {
      contactCm2: stand.areaMm2 / 100,
      ...(rimUp === undefined ? {} : { rimUp }),
    });
    return good({ ...free, boardMm: bounds.min[2], findings: [onPoint] });
  }
  const boardMm = bounds.min[2];
  if (stand.topMm > boardMm) {
    const cut = trimmed(free, stand.topMm);
    return cut.ok ? closedByBoard(cut.value, stand.topMm) : cut;
  }
  return closedByBoard({ ...free, boardMm, areaMm2: areaOver(free.chain, boardMm) }, boardMm);
}

/** Without the hollows that open only onto the board. Errors: those of `measureSolid`. */
function closedByBoard(sculpt: Sculpt, boardMm: number): Outcome<Sculpt> {
  const open = withoutHollows(sculpt.chain!, boardMm);
  if (open === undefined) return good(sculpt);
  const { positions } = open.mesh;
  const filled = measureSolid(open.mesh, {
    coordinateStepMm: 0,
    isCutVertex: (v) => positions[3 * v + 2]! <= boardMm + ON_BOARD_MM,
  });
  if (!filled.ok) return filled;
  const { chain, volumeMm3 } = filled.value;
  const hollow = finding('HOLLOW_ON_BOARD', 'look', { hollowCm3: open.hollowMm3 / 1000, count: open.count });
  return good({
    ...sculpt,
    chain,
    volumeMm3,
    areaMm2: areaOver(chain, boardMm),
    findings: [...sculpt.findings, hollow],
  });
}

/** A rim of this share of the plan may be where the sculpt was cut from its stand. Chosen here. */
const RIM_SHARE = 0.03;

/** The axis that would be up if the largest open rim lay on the board; undefined where there is none to speak of. */
function upOfRim({ rims, extentsMm }: SolidMeasure): UpAxis | undefined {
  const rim = rims.reduce<Rim | undefined>(
    (a, b) => (a === undefined || b.areaMm2 > a.areaMm2 ? b : a),
    undefined,
  );
  if (rim === undefined || rim.areaMm2 < RIM_SHARE * extentsMm[0] * extentsMm[1]) return undefined;
  const axis = [0, 1, 2].reduce((a, b) => (Math.abs(rim.normal[b]!) > Math.abs(rim.normal[a]!) ? b : a));
  // Its normal points out of the body: down, if it stood there.
  return axis === 2 ? undefined : (`${rim.normal[axis]! < 0 ? '+' : '-'}${'xyz'[axis]!}` as UpAxis);
}

/** The outer surface alone, as a solid of its own. */
function filledOf(solid: SolidMeasure): Outcome<SolidMeasure> {
  return measureSolid(solid.envelope, { coordinateStepMm: 0 });
}

function trimmed(free: Sculpt, boardMm: number): Outcome<Sculpt> {
  const { mesh, onCut } = cutMesh(free.chain!, [{ axis: 2, atMm: boardMm, keep: 'above' }]);
  if (mesh.triangles.length === 0) return bad('CUT_EMPTY');
  const cut = measureSolid(mesh, { coordinateStepMm: 0, isCutVertex: (v) => onCut[v] === 1 });
  if (!cut.ok) return cut;
  const { chain, volumeMm3, bounds } = cut.value;
  const trim = finding('BASE_TRIMMED', 'fine', {
    trimMm: boardMm - free.bounds.min[2],
    effectCm3: (volumeMm3 - free.volumeMm3) / 1000,
    tallMm: extentsOf(free.bounds)[2],
  });
  return good({
    chain,
    bounds,
    hull: footprintOf(chain),
    volumeMm3,
    areaMm2: areaOver(chain, boardMm),
    boardMm,
    findings: [trim],
  });
}

/** Area of the facets that do not lie on the board. */
function areaOver({ positions: p, triangles }: TriangleMesh, boardMm: number): number {
  const isOn = (v: number): boolean => p[3 * v + 2]! <= boardMm + ON_BOARD_MM;
  let area = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [triangles[t]!, triangles[t + 1]!, triangles[t + 2]!];
    if (isOn(a) && isOn(b) && isOn(c)) continue;
    const u = [0, 1, 2].map((k) => p[3 * b + k]! - p[3 * a + k]!);
    const w = [0, 1, 2].map((k) => p[3 * c + k]! - p[3 * a + k]!);
    const [x, y, z] = [0, 1, 2].map(
      (k) => u[(k + 1) % 3]! * w[(k + 2) % 3]! - u[(k + 2) % 3]! * w[(k + 1) % 3]!,
    );
    area += Math.hypot(x!, y!, z!) / 2;
  }
  return area;
}
