// node docs/pictures/slice.mjs: draws the slices of docs/how-it-computes.md, from the engine as it stands.
import { contoursAt, thinned } from './contours.mjs';
import { engine, solidOf, valueOf } from './engine.mjs';
import { ACCENT, draw, HAIR, INK, LINE, PAPER, round, segments, sliced, viewOf, WELL } from './paper.mjs';

const LEVELS = [-8, 0, 10];

/** The twin spheres with a field of a voxel's edge. */
function twins(voxelMm) {
  const { chain, bounds } = solidOf('twin-spheres-r40-d50.stl', '+z', 1);
  return valueOf(engine.buildField(chain, bounds, { voxelMm, levelsMm: LEVELS }));
}

function windingPicture() {
  const { grid, surface, task } = twins(2);
  const k = middlePlane(grid);
  const view = viewOf(...boxOf(grid));
  const cells = [[], []];
  const rows = [];
  for (let j = 1; j < grid.ny - 1; j++) {
    const digits = [];
    for (let i = 1; i < grid.nx - 1; i++) {
      const wound = task.windings[0][(k * grid.ny + j) * grid.nx + i];
      if (wound > 0) cells[wound - 1].push([i, j]);
      digits.push(wound);
    }
    const xs = digits.map((_, i) => round(view.x(grid.ox + (i + 1) * grid.spacingMm))).join(' ');
    const y = round(view.y(grid.oy + j * grid.spacingMm) + 4);
    rows.push(`<text x="${xs}" y="${y}">${digits.join('')}</text>`);
  }
  const [all, kept] = [surface.triangles, task.triangles].map((triangles, i) =>
    sliced({ positions: (i === 0 ? surface : task).positions, triangles }, grid.oz + k * grid.spacingMm),
  );
  return {
    ...view,
    body: [
      `<path fill="${WELL}" d="${boxes(cells[0], grid, view)}"/>`,
      `<path fill="${HAIR}" d="${boxes(cells[1], grid, view)}"/>`,
      `<g font-size="11" text-anchor="middle" fill="${LINE}">${rows.join('')}</g>`,
      `<path stroke="${INK}" stroke-dasharray="3 4" fill="none" d="${segments(all, view)}"/>`,
      `<path stroke="${INK}" stroke-width="2.5" stroke-linecap="round" fill="none" d="${segments(kept, view)}"/>`,
    ],
    words: [
      'Winding number at every grid point. Heavy: faces kept; dashed: faces inside the body, cut away.',
    ],
  };
}

function distancePicture() {
  const { chain, bounds } = solidOf('quay-troll-scan.stl', '+y', 25.4);
  const field = valueOf(engine.buildField(chain, bounds, { voxelMm: 1.5, levelsMm: [-40, 20] }));
  const distance = engine.distanceFunction(field);
  const [stepMm, marginMm] = [2, 16];
  const middle = (bounds.min[0] + bounds.max[0]) / 2;
  const low = [bounds.min[1] - marginMm, bounds.min[2] - marginMm];
  // The horns stand to both sides of the middle.
  const high = [bounds.max[1] + marginMm, crownMm(distance, middle, bounds) + marginMm];
  const count = [0, 1].map((axis) => Math.ceil((high[axis] - low[axis]) / stepMm));
  const rows = Array.from({ length: count[1] + 1 }, (_, k) =>
    Array.from({ length: count[0] + 1 }, (_, j) =>
      distance(middle, low[0] + stepMm * j, low[1] + stepMm * k),
    ),
  );
  const view = viewOf(low, [low[0] + stepMm * count[0], low[1] + stepMm * count[1]], 2);
  const path = (level) =>
    contoursAt(rows, level)
      .map((line) => thinned(line, 0.08).map(([j, k]) => [low[0] + stepMm * j, low[1] + stepMm * k]))
      .map((line) => `M${line.map(([y, z]) => `${round(view.x(y))} ${round(view.y(z))}`).join('L')}z`)
      .join('');
  const labels = LEVELS.map((level) => {
    const [y, z] = [view.x((bounds.min[1] + bounds.max[1]) / 2 - 20), view.y(bounds.min[2] - level)];
    return `<text x="${round(y)}" y="${round(z + 4)}">${level > 0 ? '+' : ''}${level} mm</text>`;
  });
  const others = [12, 8, 4, -4, -12, -16, -20, -24, -28, -32, -36];
  return {
    ...view,
    body: [
      `<path fill="${WELL}" d="${path(10)}"/>`,
      `<path fill="${HAIR}" fill-rule="evenodd" d="${path(0)}"/>`,
      `<path fill="${PAPER}" d="${path(-8)}"/>`,
      `<path stroke="${LINE}" stroke-width="0.6" fill="none" d="${others.map(path).join('')}"/>`,
      `<path stroke="${ACCENT}" stroke-width="2" fill="none" stroke-dasharray="7 3" d="${path(10)}"/>`,
      `<path stroke="${INK}" stroke-width="2.5" fill="none" d="${path(0)}"/>`,
      `<path stroke="${ACCENT}" stroke-width="2" fill="none" d="${path(-8)}"/>`,
      `<g font-size="12" text-anchor="middle" fill="${INK}" stroke="${PAPER}" stroke-width="4" paint-order="stroke">${labels.join('')}</g>`,
    ],
    words: ['Signed distance, mm: the surface is 0, thin lines lie 4 mm apart.'],
  };
}

/** Where the surface is met from above. */
function crownMm(distance, x, { min, max }) {
  let z = max[2] + 1;
  while (distance(x, (min[1] + max[1]) / 2, z) > 0) z -= 1;
  return z;
}

function nearPicture() {
  const field = twins(1);
  const { grid } = field;
  const task = engine.newLevelsTask(field, LEVELS, LEVELS.length);
  engine.runFieldTask(task, 0);
  const k = middlePlane(grid);
  const view = viewOf(...boxOf(grid));
  const [near, sampled] = [[], []];
  for (let j = 0; j < grid.ny; j++) {
    for (let i = 0; i < grid.nx; i++) {
      const slot = task.field.slotOf[(k * grid.ny + j) * grid.nx + i] - 1;
      if (slot >= 0) (engine.binOf(task.field, slot) < engine.SAMPLED ? sampled : near).push([i, j]);
    }
  }
  const distance = distanceInFrame(field);
  const z = grid.oz + k * grid.spacingMm;
  const rows = Array.from({ length: grid.ny }, (_, j) =>
    Array.from({ length: grid.nx }, (_, i) =>
      distance(grid.ox + i * grid.spacingMm, grid.oy + j * grid.spacingMm, z),
    ),
  );
  const lines = LEVELS.flatMap((level) => contoursAt(rows, level)).map((line) => {
    const points = thinned(line, 0.03).map(
      ([i, j]) =>
        `${round(view.x(grid.ox + i * grid.spacingMm))} ${round(view.y(grid.oy + j * grid.spacingMm))}`,
    );
    return `M${points.join('L')}z`;
  });
  return {
    ...view,
    body: [
      `<path fill="${HAIR}" d="${boxes(near, grid, view)}"/>`,
      `<path fill="${ACCENT}" d="${boxes(sampled, grid, view)}"/>`,
      `<path stroke="${INK}" stroke-width="1.6" fill="none" d="${lines.join('')}"/>`,
    ],
    words: ['Gray: cells near a level (lines: -8, 0 and +10 mm). Dark: columns counted by octants too.'],
  };
}

/** All cells of a plane but the outermost, which are never asked. */
const boxOf = ({ ox, oy, nx, ny, spacingMm }) => [
  [ox + spacingMm / 2, oy + spacingMm / 2],
  [ox + (nx - 1.5) * spacingMm, oy + (ny - 1.5) * spacingMm],
];

const middlePlane = (grid) => Math.round(-grid.oz / grid.spacingMm);

/** The signed distance of a point of the field's own frame, which lies askew. */
function distanceInFrame(field) {
  const { originMm, rows: r } = field.surface.frame;
  const distance = engine.distanceFunction(field);
  return (x, y, z) =>
    distance(...[0, 1, 2].map((axis) => originMm[axis] + r[axis] * x + r[3 + axis] * y + r[6 + axis] * z));
}

/** The cells around grid points, neighbors of a row in one. */
function boxes(points, grid, view) {
  const size = grid.spacingMm * view.scale;
  const runs = [];
  for (const [i, j] of points) {
    const last = runs.at(-1);
    if (last !== undefined && last.j === j && last.i + last.count === i) last.count++;
    else runs.push({ i, j, count: 1 });
  }
  return runs
    .map(({ i, j, count }) => {
      const [x, y] = [
        view.x(grid.ox + (i - 0.5) * grid.spacingMm),
        view.y(grid.oy + (j + 0.5) * grid.spacingMm),
      ];
      return `M${round(x)} ${round(y)}h${round(count * size)}v${round(size)}h${round(-count * size)}z`;
    })
    .join('');
}

draw('winding.svg', windingPicture());
draw('distance.svg', distancePicture());
draw('near-levels.svg', nearPicture());
