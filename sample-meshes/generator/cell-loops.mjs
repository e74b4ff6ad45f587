/**
 * How a surface can cut a cube. A mask has bit n set where corner n is inside. Every cut face joins its cut
 * edges in pairs; followed round the cube the pairs close to loops, and each loop is one sheet of surface.
 * On a chequered face the pairs go round the inside corners: both cells that share the face decide alike.
 */

/** Corner n at (n & 1, n >> 1 & 1, n >> 2 & 1). */
export const CORNERS = [0, 1, 2, 3, 4, 5, 6, 7].map((n) => [n & 1, (n >> 1) & 1, (n >> 2) & 1]);

/** The 12 edges, each from its lower corner along its axis. */
export const EDGES = [0, 1, 2].flatMap((axis) =>
  CORNERS.flatMap((corner, n) => (corner[axis] === 0 ? [{ axis, from: n, to: n | (1 << axis) }] : [])),
);

/** The mask of a cell whose four upper corners alone are inside. */
export const UPPER_FACE = 0b11110000;

/** Per mask: {count: sheets in the cell, loopOf: per edge its sheet, -1 where the edge is not cut}. */
export const LOOPS = Array.from({ length: 256 }, (_, mask) => findLoops(mask));

function findLoops(mask) {
  const inside = (n) => ((mask >> n) & 1) === 1;
  const label = EDGES.map(({ from, to }, edge) => (inside(from) === inside(to) ? -1 : edge));
  for (const face of facesOfCube()) {
    const cut = face.filter((edge) => label[edge] >= 0);
    for (const e of cut) {
      for (const f of cut) {
        if (cut.length === 2 || insideEnd(e, inside) === insideEnd(f, inside)) merge(label, e, f);
      }
    }
  }
  const names = [...new Set(label.filter((l) => l >= 0))];
  return { count: names.length, loopOf: label.map((l) => names.indexOf(l)) };
}

function insideEnd(edge, inside) {
  return inside(EDGES[edge].from) ? EDGES[edge].from : EDGES[edge].to;
}

function merge(label, e, f) {
  const [keep, drop] = [label[e], label[f]];
  label.forEach((l, n) => {
    if (l === drop) label[n] = keep;
  });
}

// The edges of each of the six faces.
function facesOfCube() {
  return [0, 1, 2].flatMap((axis) =>
    [0, 1].map((height) =>
      EDGES.flatMap(({ from, to }, edge) =>
        CORNERS[from][axis] === height && CORNERS[to][axis] === height ? [edge] : [],
      ),
    ),
  );
}
