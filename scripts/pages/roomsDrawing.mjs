import { createRequire } from 'node:module';
import { join } from 'node:path';
import { root } from '../setup.mjs';

/** What every room may import beside: codes and kinds of values, which import nothing. */
const LEAVES = new Set(['problem', 'estimate']);

/** Which rooms each room of `src` may import, by the rules that are enforced. */
function rooms() {
  const { forbidden } = createRequire(import.meta.url)(join(root, '.dependency-cruiser.cjs'));
  const layers = forbidden.filter(({ name }) => name.startsWith('layer-'));
  return new Map(
    layers.map(({ name, to }) => {
      const room = name.slice('layer-'.length);
      const allowed = to.pathNot.map((path) => /^\^src\/(\w+)/.exec(path)[1]);
      return [room, new Set(allowed.filter((one) => one !== room && !LEAVES.has(one)))];
    }),
  );
}

/** Who may import whom, as a drawing in text: a row imports the columns that have a dot. The lower a room stands, the less it knows. */
export function roomsDrawing() {
  const all = rooms();
  const height = (room) => 1 + Math.max(0, ...[...all.get(room)].map(height));
  const upward = [...all.keys()].sort((a, b) => height(a) - height(b));
  const columns = upward.filter((room) => [...all.values()].some((allowed) => allowed.has(room)));
  const rowWidth = Math.max(...upward.map((room) => room.length)) + 2;
  const cell = (text, { length }) => text.padStart(Math.ceil((length + text.length) / 2)).padEnd(length + 2);
  const line = (room, text) => `${room.padEnd(rowWidth)}${text}`.trimEnd();
  return [
    line('', columns.map((column) => cell(column, column)).join('')),
    ...upward
      .reverse()
      .map((room) =>
        line(
          room,
          columns.map((column) => cell(all.get(room).has(column) ? '\u25cf' : '\u00b7', column)).join(''),
        ),
      ),
  ].join('\n');
}
