import { decimal, refuse, type StrictShape } from './shape';

/**
 * STL as it was first described (3D Systems, "StereoLithography Interface Specification", 1989, as it is quoted in textbooks; from
 * memory). Left out on purpose: the rule that all coordinates be positive, which no program keeps, and stored normals, which are
 * not used. Words may be of either case.
 */

/** 80 bytes, a count, and 50 bytes a facet: no byte more or fewer. */
export function strictStlBinary(bytes: Uint8Array): StrictShape {
  const file = Buffer.from(bytes);
  if (file.length < 84 || file.length !== 84 + 50 * file.readUInt32LE(80))
    refuse('not as long as its count says');
  const points: number[][] = [];
  for (let at = 84; at < file.length; at += 50)
    for (let corner = 0; corner < 3; corner++)
      points.push([0, 1, 2].map((k) => file.readFloatLE(at + 12 + 12 * corner + 4 * k)));
  return soup(points);
}

/** Between blanks. A zero byte begins a word: some writers end a name by it. */
const WORD = /^[ \t-\r]*(\0?[^ \t-\r\0]+|\0)/;

const KEYWORDS = ['solid', 'facet', 'normal', 'outer', 'loop', 'vertex', 'endloop', 'endfacet', 'endsolid'];

/** `solid name`, facets, `endsolid name`, once or more often. Names end with their line, or where a facet begins, and hold none. */
export function strictStlAscii(bytes: Uint8Array): StrictShape {
  const text = Buffer.from(bytes)
    .toString('latin1')
    .replace(/^\u00ef\u00bb\u00bf/, '');
  const points: number[][] = [];
  let rest = text;
  const take = (pattern: RegExp, what: string): RegExpExecArray => {
    const found = pattern.exec(rest) ?? refuse(`no ${what}`);
    rest = rest.slice(found[0].length);
    return found;
  };
  const word = (wanted: string): void => {
    const [, found] = take(WORD, wanted);
    if (found!.toLowerCase() !== wanted) refuse(`${found} instead of ${wanted}`);
  };
  const ahead = (): string => /^[ \t-\r]*([^ \t-\r]*)/.exec(rest)![1]!.toLowerCase();
  while (ahead() !== '' || points.length === 0) {
    word('solid');
    take(
      /^[^\r\n]*?(?=[\r\n]|$|[ \t\v\f]facet[ \t-\r]normal(?![^ \t-\r\0])|[ \t\v\f]endsolid(?![^ \t-\r\0]))/i,
      'name',
    );
    while (ahead() === 'facet') {
      word('facet');
      word('normal');
      for (let k = 0; k < 3; k++) {
        const [, found] = take(WORD, 'normal');
        if (KEYWORDS.includes(found!.toLowerCase()) || /^[#;\0]/.test(found!))
          refuse('a word or a remark in a normal');
      }
      word('outer');
      word('loop');
      for (let corner = 0; corner < 3; corner++) {
        word('vertex');
        points.push([0, 1, 2].map(() => decimal(take(WORD, 'number')[1])));
      }
      word('endloop');
      word('endfacet');
    }
    word('endsolid');
    const [name] = take(
      /^[^\r\n]*?(?=[\r\n]|$|[ \t\v\f]solid(?![^ \t-\r\0])[^\r\n]*?[ \t\v\f]facet[ \t-\r]normal(?![^ \t-\r\0]))/i,
      'name',
    );
    if (/[ \t\v\f]facet[ \t\v\f].*[ \t\v\f]vertex(?![^ \t-\r\0])/i.test(name)) refuse('facets in a name');
  }
  return soup(points);
}

const soup = (points: number[][]): StrictShape => ({
  points,
  faces: Array.from({ length: points.length / 3 }, (_, t) => [3 * t, 3 * t + 1, 3 * t + 2]),
});
