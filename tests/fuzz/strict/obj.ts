import { decimal, refuse, type StrictShape } from './shape';

/**
 * Polygons of a Wavefront OBJ (Wavefront, "Object Files", appendix B1 of the Advanced Visualizer manual; from memory). Whatever would make
 * a shape in another way is refused, and so is a statement that the description does not know. Colors behind a vertex are common
 * practice. Texture and normal numbers are no part of the shape: only their form is looked at.
 */

/** Statements that add nothing to a polygon mesh, in letters of either case. */
const OTHER = new Set(
  'vt vn g s o mg usemtl mtllib usemap maplib lod bevel c_interp d_interp shadow_obj trace_obj p l'.split(
    ' ',
  ),
);

export function strictObj(bytes: Uint8Array): StrictShape {
  const text = Buffer.from(bytes)
    .toString('latin1')
    .replace(/^\u00ef\u00bb\u00bf/, '');
  if (text.includes('\0')) refuse('binary');
  const shape: StrictShape = { points: [], faces: [] };
  for (const line of logicalLines(text)) {
    const [statement, ...words] = line.split(/[ \t\v\f]+/).filter((word) => word !== '');
    if (statement === undefined) continue;
    if (statement === 'v') shape.points.push(vertexOf(words));
    else if (statement === 'f') shape.faces.push(words.map((word) => numberOf(word, shape.points.length)));
    else if (!OTHER.has(statement.toLowerCase())) refuse(`what is ${statement}?`);
  }
  return shape;
}

/** A comment ends with its line; a line that ends in a backslash goes on. */
function logicalLines(text: string): string[] {
  const lines: string[] = [];
  let begun = '';
  for (const line of text.split(/\r\n|\r|\n/)) {
    const [plain = ''] = line.split(/(?<=^|[ \t\v\f])#/);
    const goesOn = plain === line && line.endsWith('\\');
    begun += goesOn ? `${line.slice(0, -1)} ` : plain;
    if (goesOn) continue;
    lines.push(begun);
    begun = '';
  }
  return [...lines, begun];
}

function vertexOf(words: string[]): number[] {
  if (![3, 4, 6, 7].includes(words.length)) refuse(`${words.length} numbers of a vertex`);
  const numbers = words.map(decimal);
  if (!numbers.every((x) => Number.isFinite(x))) refuse('a number too large');
  if (numbers.length === 4 && numbers[3] !== 1) refuse('a weight');
  return numbers.slice(0, 3);
}

function numberOf(word: string, points: number): number {
  if (!/^-?\d+(\/-?\d+|\/\/-?\d+|\/-?\d+\/-?\d+)?$/.test(word)) refuse(`no vertex number: ${word}`);
  const number = parseInt(word, 10);
  if (number === 0 || -number > points) refuse(`vertex ${number}`);
  return number < 0 ? points + number : number - 1;
}
