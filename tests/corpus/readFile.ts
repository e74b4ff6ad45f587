import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readScan } from '../../src/geometry';
import { sizeScan } from '../../src/plan';
import { verdictOf, type CorpusFile, type Judged, type Said } from './verdict';

/** What `size` says of a file, by the same functions: a unit is given where the file has none, mm. */
export function saidOf(folder: string, file: string): Said {
  try {
    const scan = readScan({ bytes: new Uint8Array(readFileSync(join(folder, file))), name: file });
    if (!scan.ok) return { ok: false, code: scan.problem.code };
    const size = sizeScan(scan.value, scan.value.unit === undefined ? { fileUnit: 'mm' } : {});
    if (!size.ok) return { ok: false, code: size.problem.code };
    const { volumeCm3, triangles, findings } = size.value;
    return {
      ok: true,
      warnings: findings.map(({ code }) => code),
      triangles,
      volumeMm3: 1000 * volumeCm3.value,
    };
  } catch (fault) {
    return { ok: false, crash: fault instanceof Error ? (fault.stack ?? fault.message) : String(fault) };
  }
}

export function judge(folder: string, one: CorpusFile): Judged {
  const said = saidOf(folder, one.file);
  return { ...one, said, verdict: verdictOf(one.expect, said) };
}

/** The files that the manifest of a corpus lists. Some programs write numbers into it that JSON has not. */
export function filesOf(folder: string): CorpusFile[] {
  const text = readFileSync(join(folder, 'manifest.json'), 'utf8');
  const plain = text.replace(/:\s*-?(NaN|Infinity)\b/g, ': null');
  return (JSON.parse(plain) as { items: CorpusFile[] }).items;
}
