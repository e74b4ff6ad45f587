import { strToU8, zipSync } from 'fflate';
import type { TriangleMesh } from '../triangleMesh';

/** The three parts a package must have, and their names (3MF Core Specification 1.4.0, 2.1 and appendix C). */
const CONTENT_TYPES = `<?xml version="1.0" encoding="UTF-8"?>
<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">
<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>
<Default Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"/>
</Types>
`;
const RELATIONSHIPS = `<?xml version="1.0" encoding="UTF-8"?>
<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">
<Relationship Target="/3D/3dmodel.model" Id="rel0" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/>
</Relationships>
`;

/** Equal meshes give equal bytes, so the date of the parts is fixed: the first one a zip file can hold. */
const PART_DATE = new Date(1980, 0, 1);

/** Coordinates are written to the nanometer: the specification (4.1.3.1) asks for no more digits than are true. */
const STEPS_PER_MM = 1e6;

/**
 * 3MF core: one object of type "model" in a zip package, unit millimeter, coordinates as they are (they are not moved to the
 * positive octant, so that pieces written apart still fit). 3MF Consortium, 3MF Core Specification 1.4.0.
 * The object must be closed and outward (4.1): give the mesh of a `Solid`.
 */
export function write3mf(mesh: TriangleMesh): Uint8Array {
  return zipSync(
    {
      '[Content_Types].xml': strToU8(CONTENT_TYPES),
      '_rels/.rels': strToU8(RELATIONSHIPS),
      '3D/3dmodel.model': strToU8(modelXml(mesh)),
    },
    { mtime: PART_DATE, level: 6 },
  );
}

function modelXml({ positions: p, triangles: t }: TriangleMesh): string {
  const lines = [
    '<?xml version="1.0" encoding="UTF-8"?>',
    '<model unit="millimeter" xmlns="http://schemas.microsoft.com/3dmanufacturing/core/2015/02">',
    '<resources><object id="1" type="model"><mesh><vertices>',
  ];
  for (let v = 0; v < p.length; v += 3)
    lines.push(`<vertex x="${decimal(p[v]!)}" y="${decimal(p[v + 1]!)}" z="${decimal(p[v + 2]!)}"/>`);
  lines.push('</vertices><triangles>');
  for (let c = 0; c < t.length; c += 3)
    lines.push(`<triangle v1="${t[c]!}" v2="${t[c + 1]!}" v3="${t[c + 2]!}"/>`);
  lines.push(
    '</triangles></mesh></object></resources>',
    '<build><item objectid="1"/></build>',
    '</model>',
    '',
  );
  return lines.join('\n');
}

const decimal = (mm: number): string => String(Math.round(mm * STEPS_PER_MM) / STEPS_PER_MM);
