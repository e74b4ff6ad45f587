import { spawnSync } from 'node:child_process';
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** What the native yardstick says of one file. */
export interface AnchorRun {
  wallS: number;
  peakMB: number;
  outwardCm3: number;
  inwardCm3: number;
}

export type Anchor = (file: string, voxelMm: number, outMm: number, inMm: number) => AnchorRun;

/**
 * The yardstick of the variable ANCHOR: a C++ source to be built against OpenVDB, or a program already built, that is called with
 * mesh.stl, voxel, outward and inward distance (mm) and prints one line of JSON (`vol_out`, `vol_in` in mm3, `rss_mb`).
 * Undefined when there is none, or it does not build: then nothing is claimed against it.
 */
export function findAnchor(path: string | undefined): Anchor | undefined {
  if (path === undefined) return undefined;
  const program = path.endsWith('.cpp') ? built(path) : path;
  if (program === undefined) return undefined;
  return (file, voxelMm, outMm, inMm) => {
    const from = performance.now();
    const child = spawnSync(program, [file, `${voxelMm}`, `${outMm}`, `${inMm}`], { encoding: 'utf8' });
    const wallS = (performance.now() - from) / 1000;
    if (child.status !== 0) throw new Error(`bench: the anchor ended with ${child.status}: ${child.stderr}`);
    const said = JSON.parse(child.stdout) as { vol_out: number; vol_in: number; rss_mb: number };
    return { wallS, peakMB: said.rss_mb, outwardCm3: said.vol_out / 1000, inwardCm3: said.vol_in / 1000 };
  };
}

function built(source: string): string | undefined {
  const program = join(mkdtempSync(join(tmpdir(), 'risewright-anchor-')), 'anchor');
  const flags = ['-O3', '-march=native', '-std=c++17', source, '-lopenvdb', '-ltbb', '-o', program];
  const compiler = spawnSync('g++', flags, { encoding: 'utf8' });
  if (compiler.status === 0) return program;
  console.error(`The anchor does not build: ${(compiler.stderr ?? String(compiler.error)).split('\n')[0]}`);
  return undefined;
}
