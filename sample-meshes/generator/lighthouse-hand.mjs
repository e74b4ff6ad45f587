import { withDuplicates, withFlippedPatch } from './facet-damage.mjs';
import { HAND_REACH, handField, THUMB_REACH, thumbField } from './lighthouse-hand-field.mjs';
import { area, boundaryLoops, extents, volume } from './measure.mjs';
import { meshField } from './mesh-field.mjs';
import { asFloat32, joined, quantised, to } from './mesh-ops.mjs';
import { overlapOf, unionOf } from './overlap.mjs';
import { withTouch } from './touch.mjs';
import { binaryStl } from './write-mesh.mjs';

const GRID_MM = 4.5;
const TOUCH = { nearMm: [0, -4.5, 261], reachMm: 16 }; // where middle and ring finger come closest
const PATCH = { nearMm: [0, -20, 140], towards: [0, -1, 0], share: 0.08 }; // the palm
const DUPLICATES = 12;

/** The Lighthouse Giant's hand as a scan that looks closed: two shells that overlap, and damage to their facets. */
export function lighthouseHand() {
  const { hand, thumb, edge } = soundHand(GRID_MM);
  const count = Math.round((PATCH.share * (hand.triangles.length + thumb.triangles.length)) / 3);
  const { mesh: flipped, turned } = withFlippedPatch({ mesh: hand, ...PATCH, count });
  const scan = withDuplicates({ mesh: joined([flipped, thumb]), count: DUPLICATES, spared: turned });
  const file = 'lighthouse-hand-scan.stl';
  const truth = {
    ...{ file, unit: 'mm', up: 'z', triangles: scan.triangles.length / 3 },
    ...unionFigures(asFloat32(hand), asFloat32(thumb)),
    extents_mm: extents(asFloat32(scan)).map((e) => to(e, 4)),
    duplicates: DUPLICATES,
    flipped: turned.size,
    touching_edge_mm: edge.map((p) => p.map((c) => to(c, 2))),
  };
  return [{ file, bytes: binaryStl("Lighthouse Giant's hand, scan, mm, z up", scan), truth }];
}

/** Hand and thumb on a grid of hMm, each closed, two fingers touching along one edge; z up, mm. */
export function soundHand(hMm) {
  const raw = meshField({ field: handField, hMm, reach: HAND_REACH });
  const { mesh, edge } = withTouch({ mesh: raw, ...TOUCH });
  const hand = quantised(mesh);
  const thumb = quantised(meshField({ field: thumbField, hMm, reach: THUMB_REACH }));
  for (const shell of [hand, thumb]) {
    if (boundaryLoops(shell).length > 0) throw new Error('soundHand: expected closed shells, got open edges');
  }
  return { hand, thumb, edge };
}

/** Volume and area of the union, of all shells added up, and of what they share, in the names of truth.json. */
export function unionFigures(hand, thumb) {
  const [volumesMm3, areasMm2] = [volume, area].map((measure) => [hand, thumb].map(measure));
  const overlap = overlapOf(hand, thumb);
  const whole = unionOf({ volumesMm3, areasMm2, overlap });
  return {
    clean_volume_mm3: to(whole.volumeMm3, 3),
    area_mm2: to(whole.areaMm2, 3),
    shells_volume_mm3: to(volumesMm3[0] + volumesMm3[1], 3),
    overlap_volume_mm3: to(overlap.volumeMm3, 3),
  };
}
