// node docs/pictures/traps.mjs: draws how a hole of a scan is closed, and where air stays in a mold, from the engine as it stands.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from '../../scripts/setup.mjs';
import { engine, valueOf } from './engine.mjs';
import { ACCENT, draw, HAIR, INK, LINE, round, segments, sliced, viewOf, WELL } from './paper.mjs';

/** What a slice with x constant shows: y goes to the right, z goes up. */
const sideways = ({ positions, triangles }) => {
  const turned = new Float64Array(positions.length);
  for (let p = 0; p < positions.length; p += 3)
    turned.set([positions[p + 1], positions[p + 2], positions[p]], p);
  return { positions: turned, triangles };
};

const readSample = (name) =>
  valueOf(engine.readScan({ bytes: readFileSync(join(root, 'sample-meshes', name)), name }));

/** Corners of edges that only one triangle has. */
function openCorners({ triangles }) {
  const users = new Map();
  for (let t = 0; t < triangles.length; t++) {
    const [a, b] = [triangles[t], triangles[t % 3 === 2 ? t - 2 : t + 1]];
    const key = a < b ? `${a},${b}` : `${b},${a}`;
    users.set(key, { count: (users.get(key)?.count ?? 0) + 1, corners: [a, b] });
  }
  return [...users.values()].filter(({ count }) => count === 1).flatMap(({ corners }) => corners);
}

/** The ball of the samples without its top, which ends in a ragged, slanting rim: some facets more on one side than on the other. */
function raggedBall() {
  const { positions, triangles } = engine.placeMesh(readSample('sphere-r50.stl').mesh, {
    up: '+z',
    mmPerUnit: 1,
  });
  const kept = [];
  for (let t = 0; t < triangles.length; t += 3) {
    const corners = [...triangles.slice(t, t + 3)];
    const [x, y, z] = [0, 1, 2].map((a) => corners.reduce((sum, v) => sum + positions[3 * v + a], 0) / 3);
    if (z < 37 + 0.2 * y + 2 * Math.sin(5 * Math.atan2(y, x))) kept.push(...corners);
  }
  return { positions, triangles: Uint32Array.from(kept) };
}

function closurePicture() {
  const open = raggedBall();
  const { chain, rims } = valueOf(engine.measureSolid(open, { coordinateStepMm: 0 }));
  const rim = rims.reduce((a, b) => (b.areaMm2 > a.areaMm2 ? b : a));
  const { positions: p } = open;
  const [middle, n] = [rim.centreMm, rim.normal];
  const over = (v) => [0, 1, 2].reduce((sum, a) => sum + n[a] * (p[3 * v + a] - middle[a]), 0);
  const outermostMm = Math.max(...openCorners(open).map(over));
  const view = viewOf([-56, -30], [56, 66], 5);
  const isShown = (ends) => ends.every(([, z]) => z > -30);
  const [closed, surface] = [chain, open].map((mesh) => sliced(sideways(mesh), 0).filter(isShown));
  // The plane of the rim at a height over its middle, where the slice meets it.
  const across = (mm) =>
    [-1, 1].map((end) => [middle[1] + n[1] * mm + 46 * end * n[2], middle[2] + n[2] * mm - 46 * end * n[1]]);
  const level = (mm, dash, label, up) => {
    const [[u, v]] = across(mm);
    return [
      `<path stroke="${LINE}" stroke-dasharray="${dash}" fill="none" d="${segments([across(mm)], view)}"/>`,
      `<text font-size="13" fill="${INK}" x="${round(view.x(u))}" y="${round(view.y(v) + up)}">${label}</text>`,
    ];
  };
  const cm3 = (mm3) => (Math.abs(mm3) / 1000).toFixed(1);
  return {
    ...view,
    body: [
      ...level(0, '7 3', 'flat', 18),
      ...level(outermostMm, '2 3', 'a board', -8),
      `<path stroke="${LINE}" stroke-width="1" fill="none" d="${domeOver({ middle, n, rim }, view)}"/>`,
      `<path stroke="${ACCENT}" stroke-width="2.5" fill="none" d="${segments(closed, view)}"/>`,
      `<path stroke="${INK}" stroke-width="3.5" stroke-linecap="round" fill="none" d="${segments(surface, view)}"/>`,
    ],
    words: [
      `A ball without its top. Heavy: the scan; green: the cone that closes its rim.`,
      `A flat cap would differ by ${cm3(rim.flatPlaneMm3)} cm\u00b3, a board by ${cm3(rim.dropToBaseMm3)} cm\u00b3,`,
      `a dome (thin line) by ${cm3(rim.domeMm3)} cm\u00b3. The range holds all three.`,
    ],
  };
}

/** The cap of a ball that holds what the engine allows for a dome, on a disc as large as the rim: h from V = pi h (3 a^2 + h^2) / 6. */
function domeOver({ middle, n, rim }, view) {
  const a = Math.sqrt(rim.areaMm2 / Math.PI);
  let [low, high] = [0, 2 * a];
  for (let i = 0; i < 60; i++) {
    const h = (low + high) / 2;
    if ((Math.PI * h * (3 * a * a + h * h)) / 6 < rim.domeMm3) low = h;
    else high = h;
  }
  const radius = (a * a + low * low) / (2 * low);
  const points = Array.from({ length: 41 }, (_, i) => {
    const along = a * (i / 20 - 1);
    const up = Math.sqrt(Math.max(0, radius * radius - along * along)) - (radius - low);
    return [middle[1] + n[1] * up + along * n[2], middle[2] + n[2] * up - along * n[1]];
  });
  return `M${points.map(([u, v]) => `${round(view.x(u))} ${round(view.y(v))}`).join('L')}`;
}

function trapPicture() {
  const { bench } = valueOf(
    engine.openMoldBench(readSample('sphere-r50.stl'), { fileUnit: 'mm', up: '+z', accuracy: 'fast' }),
  );
  const slope = Math.PI / 6;
  const normal = [0, Math.cos(slope), Math.sin(slope)];
  const ask = {
    base: 'closed',
    opening: { atMm: normal.map((a) => 50 * a), diameterMm: 24 },
    pourUp: [0, 0, 1],
  };
  const { opening, filling } = valueOf(engine.planOpening(bench, ask));
  const [trap] = filling.traps;
  const [vent] = filling.vents;
  const all = sliced(sideways(bench.settled.solid.chain), 0);
  const isHole = ([[u, v]]) => Math.hypot(u - opening.atMm[1], v - opening.atMm[2]) < opening.diameterMm / 2;
  const saddle = trap.saddleMm[2];
  // A ball is convex: its points by their turn are its outline, and those over a height the cap above it.
  const outline = all.flat().sort((a, b) => turnOf(a) - turnOf(b));
  const shuts = all
    .filter(([[, a], [, b]]) => a < saddle !== b < saddle)
    .map(([[u, a], [w, b]]) => [u + ((saddle - a) / (b - a)) * (w - u), saddle]);
  const air = [...outline.filter(([, v]) => v >= saddle), ...shuts].sort((a, b) => turnOf(a) - turnOf(b));
  const view = viewOf([-56, -54], [86, 68], 5);
  const path = (points) => `M${points.map(([u, v]) => `${round(view.x(u))} ${round(view.y(v))}`).join('L')}z`;
  const text = (u, v, words) =>
    `<text font-size="14" fill="${INK}" x="${round(view.x(u))}" y="${round(view.y(v))}">${words}</text>`;
  return {
    ...view,
    body: [
      `<path fill="${HAIR}" d="${path(outline)}"/>`,
      `<path fill="${WELL}" stroke="${ACCENT}" d="${path(air)}"/>`,
      `<path stroke="${LINE}" stroke-dasharray="7 3" fill="none" d="${segments(
        [
          [
            [-54, saddle],
            [56, saddle],
          ],
        ],
        view,
      )}"/>`,
      `<path stroke="${INK}" stroke-width="3" stroke-linecap="round" fill="none" d="${segments(
        all.filter((ends) => !isHole(ends)),
        view,
      )}"/>`,
      `<path stroke="${ACCENT}" stroke-width="2.5" fill="none" d="${segments([[vent.atMm.slice(1), [vent.atMm[1], vent.atMm[2] + 12]]], view)}"/>`,
      text(vent.atMm[1] + 2, vent.atMm[2] + 8, 'vent'),
      text(-3, saddle + (trap.topMm[2] - saddle) / 2, 'air'),
      text(opening.atMm[1] + 4, opening.atMm[2] - 2, 'opening'),
      text(57, saddle - 1, 'here it shuts'),
    ],
    words: [
      'A ball of 50 mm radius, poured through a hole of 24 mm that faces 30\u00b0 up. Above the upper lip of the hole',
      `${trap.volumeCm3.toFixed(1)} cm\u00b3 of air stay at the least: foam is not level. One vent at the summit lets them out.`,
    ],
  };
}

const turnOf = ([u, v]) => Math.atan2(v, u);

draw('closure.svg', closurePicture());
draw('air-trap.svg', trapPicture());
