import { strToU8, zipSync } from 'fflate';
import { box } from './shapes';

/** A box of 40 x 30 x 20 as parts of a 3MF, and what a test wants otherwise. */

const CORE = 'http://schemas.microsoft.com/3dmanufacturing/core/2015/02';
export const PRODUCTION = 'http://schemas.microsoft.com/3dmanufacturing/production/2015/06';
const MODEL_TYPE = 'http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel';
export const RELATIONS = `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Target="/3D/3dmodel.model" Id="r" Type="${MODEL_TYPE}"/></Relationships>`;
export const MAIN = '3D/3dmodel.model';

const BOX = box([40, 30, 20]);
const points = Array.from({ length: 8 }, (_, v) => [...BOX.positions.subarray(3 * v, 3 * v + 3)]);
const facets = Array.from({ length: 12 }, (_, t) => [...BOX.triangles.subarray(3 * t, 3 * t + 3)]);
const VERTICES = `<vertices>${points.map(([x, y, z]) => `<vertex x="${x}" y="${y}" z="${z}"/>`).join('')}</vertices>`;
export const MESH = `<mesh>${VERTICES}<triangles>${facets.map(([a, b, c]) => `<triangle v1="${a}" v2="${b}" v3="${c}"/>`).join('\n')}</triangles></mesh>`;
export const OBJECT = `<object id="1" type="model">${MESH}</object>`;

export interface Wish {
  objects?: string;
  items?: string;
  attributes?: string;
  ahead?: string;
}

export const modelText = ({
  objects = OBJECT,
  items = '<item objectid="1"/>',
  attributes = '',
  ahead = '',
}: Wish = {}): string =>
  `<?xml version="1.0" encoding="UTF-8"?>\n${ahead}<model xmlns="${CORE}" ${attributes}>\n<resources>${objects}</resources>\n<build>${items}</build></model>`;

export const packed = (parts: Record<string, string | Uint8Array>): Uint8Array =>
  zipSync(
    Object.fromEntries(Object.entries(parts).map(([k, v]) => [k, typeof v === 'string' ? strToU8(v) : v])),
  );
export const archive = (model: string | Uint8Array, more: Record<string, string> = {}): Uint8Array =>
  packed({ '_rels/.rels': RELATIONS, [MAIN]: model, ...more });
export const withModel = (wish: Wish, more: Record<string, string> = {}): Uint8Array =>
  archive(modelText(wish), more);

/** UTF-16 with its mark. */
export const utf16 = (text: string, little: boolean): Uint8Array => {
  const bytes = new Uint8Array(2 * text.length + 2);
  const view = new DataView(bytes.buffer);
  [...`\ufeff${text}`].forEach((c, i) => view.setUint16(2 * i, c.charCodeAt(0), little));
  return bytes;
};
