import { readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { readScan, type ScanFile } from '../../src/geometry';
import { valueOf } from './outcome';

/** What sample-meshes/truth.json says of a file: found by the generator, which shares no code with the program. */
export interface Truth {
  file: string;
  unit: string;
  up: string;
  triangles: number;
  clean_volume_mm3: number;
  area_mm2: number;
  extents_mm: [number, number, number];
  analytic_volume_mm3?: number;
  shells_volume_mm3?: number;
  rim_area_mm2?: number;
  holes?: { at_mm: [number, number, number]; area_mm2: number; edges: number }[];
  specks?: { volume_mm3: number }[];
  speck_volume_mm3?: number;
  clean_extents_mm?: [number, number, number];
  overlap_volume_mm3?: number;
  duplicates?: number;
  flipped?: number;
  file_volume_mm3?: number;
  board?: { top_mm: number; noise_mm: number; size_mm: [number, number, number] };
  cavity_mm3?: number;
  side_wall?: { shifted: { mm: number; at_mm: [number, number, number] } };
  scale?: number;
  tape_wide_mm?: number;
  with_fin_volume_mm3?: number;
  fin_triangles?: number;
  t_junctions?: [number, number, number][];
}

/** From the root, where every runner starts: bundled by a bench, this file lies elsewhere. */
const folder = pathToFileURL('sample-meshes/');

export const sampleBytes = (file: string): Uint8Array => new Uint8Array(readFileSync(new URL(file, folder)));
export const TRUTH = JSON.parse(readFileSync(new URL('truth.json', folder), 'utf8')) as Truth[];

/** The samples without a defect; a sculpt with defects is called a scan. */
export const CLEAN = TRUTH.filter(({ file }) => !file.includes('-scan.'));

export const truthOf = (file: string): Truth => {
  const truth = TRUTH.find((one) => one.file === file);
  if (truth === undefined) throw new Error(`truthOf: expected a sample file, got ${file}`);
  return truth;
};

export const sampleScan = (file: string): ScanFile =>
  valueOf(readScan({ bytes: sampleBytes(file), name: file }));
