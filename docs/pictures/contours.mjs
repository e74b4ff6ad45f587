/** Closed lines where a raster (rows of numbers) passes `level`, by marching squares; points in raster steps. */
export function contoursAt(rows, level) {
  const next = new Map();
  const cross = (x0, y0, x1, y1) => {
    const [a, b] = [rows[y0][x0] - level, rows[y1][x1] - level];
    const share = a / (a - b);
    return { key: `${x0},${y0},${x1},${y1}`, at: [x0 + share * (x1 - x0), y0 + share * (y1 - y0)] };
  };
  for (let y = 0; y + 1 < rows.length; y++) {
    for (let x = 0; x + 1 < rows[0].length; x++) {
      // The sides of a cell in turn; where the inside is left, a line starts, where it is entered again, it ends.
      const ring = [
        [x, y],
        [x + 1, y],
        [x + 1, y + 1],
        [x, y + 1],
      ];
      const inside = ring.map(([i, j]) => rows[j][i] < level);
      const side = (s) => {
        const [[x0, y0], [x1, y1]] = [ring[s], ring[(s + 1) % 4]];
        return x0 < x1 || y0 < y1 ? cross(x0, y0, x1, y1) : cross(x1, y1, x0, y0);
      };
      for (let s = 0; s < 4; s++) {
        if (!inside[s] || inside[(s + 1) % 4]) continue;
        let end = (s + 3) % 4;
        while (inside[end]) end = (end + 3) % 4;
        const from = side(s);
        next.set(from.key, { at: from.at, to: side(end).key });
      }
    }
  }
  return joined(next);
}

function joined(next) {
  const lines = [];
  while (next.size > 0) {
    const line = [];
    let key = next.keys().next().value;
    while (next.has(key)) {
      const { at, to } = next.get(key);
      next.delete(key);
      line.push(at);
      key = to;
    }
    lines.push(line);
  }
  return lines;
}

/** A closed line without the points that lie within `tolerance` of what is left (Douglas and Peucker 1973, from memory). */
export function thinned(line, tolerance) {
  const half = line.length >> 1;
  const closed = [...line, line[0]];
  return [
    ...thinnedOpen(closed.slice(0, half + 1), tolerance),
    ...thinnedOpen(closed.slice(half), tolerance),
  ];
}

/** The last point is left to what follows. */
function thinnedOpen(line, tolerance) {
  const [a, b] = [line[0], line.at(-1)];
  if (line.length <= 2) return [a];
  const [ux, uy] = [b[0] - a[0], b[1] - a[1]];
  const length = Math.hypot(ux, uy) || 1;
  const away = line.map(([x, y]) => Math.abs((x - a[0]) * uy - (y - a[1]) * ux) / length);
  const far = away.indexOf(Math.max(...away));
  if (away[far] <= tolerance) return [a];
  return [...thinnedOpen(line.slice(0, far + 1), tolerance), ...thinnedOpen(line.slice(far), tolerance)];
}
