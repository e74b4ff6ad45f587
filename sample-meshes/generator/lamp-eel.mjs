import { withTJunction } from './facet-damage.mjs';
import { EEL_REACH, eelBodyField, eelField, FIN, finLine } from './lamp-eel-field.mjs';
import { boundaryLoops, extents } from './measure.mjs';
import { meshField } from './mesh-field.mjs';
import { asFloat32, closedTruth, joined, mapped, quantised, to } from './mesh-ops.mjs';
import { binaryStl } from './write-mesh.mjs';

const GRID_MM = 5.5;
const SCALE = 0.97; // what the scanner makes of a millimetre
const FIN_GRID = { along: 30, up: 3, footMm: 1, latticeMm: 0.8 };
const T_JUNCTIONS = [
  [-200, 20, 40],
  [-100, -60, 60],
  [0, 0, 14],
  [100, 60, 20],
  [240, 0, 58],
];

/** The Lamp Eel as a scan: the fin a sheet without thickness, five T-junctions, all of it 3 % too small. */
export function lampEel() {
  const clean = cleanEel(GRID_MM);
  const { mesh: body, at } = withJunctions(clean);
  const scan = quantised(mapped(joined([body, finSheet()]), (p) => p.map((c) => c * SCALE)));
  const file = 'lamp-eel-scan.stl';
  const cleanTruth = closedTruth(asFloat32(clean));
  const fin_volume_mm3 = to(finVolume(FIN_GRID.latticeMm), 0);
  const truth = {
    ...{ file, unit: 'mm', up: 'z', ...cleanTruth },
    triangles: scan.triangles.length / 3,
    extents_mm: extents(asFloat32(scan)).map((e) => to(e, 4)),
    clean_extents_mm: cleanTruth.extents_mm,
    ...{ scale: SCALE, tape_wide_mm: 520, fin_volume_mm3 },
    with_fin_volume_mm3: to(cleanTruth.clean_volume_mm3 + fin_volume_mm3, 0),
    ...{ fin_triangles: 4 * FIN_GRID.along, t_junctions: at.map((p) => p.map((c) => to(c * SCALE, 2))) },
  };
  return [{ file, bytes: binaryStl('Lamp Eel, scan, mm, z up', scan), truth }];
}

/** Closed mesh of the eel without its fin on a grid of hMm; z up, mm. */
export function cleanEel(hMm) {
  const clean = quantised(meshField({ field: eelBodyField, hMm, reach: EEL_REACH }));
  if (boundaryLoops(clean).length > 0) throw new Error('cleanEel: expected a closed mesh, got open edges');
  return clean;
}

/**
 * What the fin adds to the body, its fillet included, mm3: counted on a lattice that follows the fin. A cell at the
 * surface counts by how far the field says it is inside.
 */
export function finVolume(latticeMm) {
  const h = latticeMm;
  const share = (mm) => Math.min(1, Math.max(0, 0.5 - mm / h));
  let cells = 0;
  for (let x = -FIN.reachMm - 10 + h / 2; x < FIN.reachMm + 10; x += h) {
    for (let aside = -14 + h / 2; aside < 14; aside += h) {
      const y = finLine(x).y + aside;
      for (let z = 40 + h / 2; z < FIN.topMm + 4; z += h) {
        cells += share(eelField(x, y, z)) - share(eelBodyField(x, y, z));
      }
    }
  }
  return cells * h ** 3;
}

function withJunctions(clean) {
  return T_JUNCTIONS.reduce(
    ({ mesh, at }, nearMm) => {
      const next = withTJunction({ mesh, nearMm });
      return { mesh: next.mesh, at: [...at, next.at] };
    },
    { mesh: clean, at: [] },
  );
}

// The middle surface of the fin, from just under the skin of the back to the top: an open sheet with points of its own.
function finSheet() {
  const mesh = { points: [], triangles: [] };
  const { along, up, footMm } = FIN_GRID;
  for (let i = 0; i <= along; i += 1) {
    const x = FIN.reachMm * ((2 * i) / along - 1);
    const { y } = finLine(x);
    const foot = backOf(x, y) - footMm;
    for (let j = 0; j < up; j += 1) mesh.points.push(x, y, foot + ((FIN.topMm - foot) * j) / (up - 1));
  }
  for (let i = 0; i < along; i += 1) {
    for (let j = 0; j + 1 < up; j += 1) {
      const v = i * up + j;
      mesh.triangles.push(v, v + up, v + up + 1, v, v + up + 1, v + 1);
    }
  }
  return mesh;
}

// Height of the back over the spine, by halving.
function backOf(x, y) {
  let [low, high] = [40, FIN.topMm];
  for (let n = 0; n < 40; n += 1) {
    const z = (low + high) / 2;
    if (eelBodyField(x, y, z) < 0) low = z;
    else high = z;
  }
  return high;
}
