import { girthOf } from '../measure/girth';
import type { Section } from '../measure/section';
import type { TriangleMesh } from '../triangleMesh';
import { dot } from '../vector';
import { cutAtDepths, deepBody, type DeepBody } from './demoldCuts';
import { facingOut } from './demoldFlat';
import { worstPassage } from './demoldPassage';
import type { SectionOut, SectionsOut, WayOut } from './demoldSection';
import { grouped, middleOf, ringOf, signedMm2 } from './demoldRings';

/** Planes of the first look; then closer looks at neck and bulb, each with planes to both neighbors. Chosen here. */
const [FIRST_LOOK, CLOSER_LOOKS, PLANES_BETWEEN] = [96, 5, 2];

/** The outermost planes lie this share of the length inside the ends, never on a cap: 0.02 mm on 200 mm. Chosen here. */
const INSIDE_SHARE = 1e-4;

/** An outline below this share of its section is a speck. Chosen here. */
const SPECK_SHARE = 1e-4;

/**
 * Girths of a closed chain (mm, facing out) over planes across the way it is pulled out, closer together about the neck that is
 * tightest for what lies deeper and about the widest place behind it. Linear in the triangles. Throws on an open or empty chain.
 */
export function sectionsOut(chain: TriangleMesh, wish: WayOut): SectionsOut {
  const body = deepBody(chain, wish.way);
  const { lengthMm, way } = body;
  const { flat, undercutMm2 } = facingOut(body);
  const hasFlat = flat !== undefined;
  const fromMm = flat?.endMm ?? 0;
  const count = wish.count ?? FIRST_LOOK;
  const found: SectionsOut = {
    way,
    lengthMm,
    stepMm: (lengthMm - fromMm) / count,
    sections: measured(body, evenDepths(fromMm, lengthMm, { count, hasFlat }), wish.onStep),
    hasFlat,
    undercutMm2,
    undercutShare: undercutMm2 / (undercutMm2 + (flat?.areaMm2 ?? 0)),
  };
  const opening = openingIn(body, found, wish.opening);
  if (opening !== undefined) found.opening = opening;
  for (let look = 0; look < CLOSER_LOOKS; look++) lookCloser(body, found, wish.onStep);
  return found;
}

function evenDepths(
  fromMm: number,
  toMm: number,
  { count, hasFlat }: { count: number; hasFlat: boolean },
): number[] {
  const insideMm = INSIDE_SHARE * toMm;
  const layers = Array.from({ length: count }, (_, i) => fromMm + ((i + 0.5) * (toMm - fromMm)) / count);
  return [...(hasFlat ? [fromMm + insideMm] : []), ...layers, toMm - insideMm].sort((a, b) => a - b);
}

/** Adds planes about neck and bulb of the worst passage. */
function lookCloser(body: DeepBody, found: SectionsOut, onStep?: () => void): void {
  const { worst, mouth } = worstPassage(found);
  const { sections } = found;
  const depthsMm = new Set<number>();
  for (const alongMm of new Set([worst.neckAlongMm, worst.bulbAlongMm, mouth.bulbAlongMm])) {
    const at = sections.findIndex((section) => section.alongMm === alongMm);
    // An opening that counts is no plane of the body.
    if (at < 0) continue;
    const lowMm = sections[Math.max(0, at - 1)]!.alongMm;
    const highMm = sections[Math.min(sections.length - 1, at + 1)]!.alongMm;
    for (const [fromMm, toMm] of [
      [lowMm, alongMm],
      [alongMm, highMm],
    ] as const)
      for (let i = 1; i <= PLANES_BETWEEN && toMm > fromMm; i++)
        depthsMm.add(fromMm + (i * (toMm - fromMm)) / (PLANES_BETWEEN + 1));
  }
  const added = measured(
    body,
    Array.from(depthsMm).sort((a, b) => a - b),
    onStep,
  );
  found.sections = [...sections, ...added].sort((a, b) => a.alongMm - b.alongMm);
}

const measured = (body: DeepBody, depthsMm: readonly number[], onStep?: () => void): SectionOut[] =>
  cutAtDepths(body, depthsMm, onStep).map((section, i) => sectionOut(section, depthsMm[i]!));

function sectionOut(section: Section, alongMm: number): SectionOut {
  const { girthMm, hull } = girthOf(section);
  const { outlines, areaMm2, plane } = section;
  const solid = outlines
    .map((outline) => ringOf(outline, plane))
    .filter((ring) => signedMm2(ring) > SPECK_SHARE * areaMm2);
  return {
    alongMm,
    girthMm,
    areaMm2,
    outlineCount: grouped(solid).length,
    middleMm: middleOf(hull, plane),
    outlines,
  };
}

function openingIn(
  { mesh, way, depths }: DeepBody,
  { sections, hasFlat }: SectionsOut,
  opening: WayOut['opening'],
): SectionsOut['opening'] {
  if (opening?.staysOn !== true) return undefined;
  const girthMm = Math.PI * opening.diameterMm;
  if (hasFlat && girthMm >= sections[0]!.girthMm) return undefined;
  const v = mesh.triangles[0]!;
  const from = Array.from(opening.atMm, (c, k) => c - mesh.positions[3 * v + k]!) as [number, number, number];
  return { alongMm: Math.max(0, depths[v]! - dot(from, way)), girthMm, atMm: opening.atMm };
}
