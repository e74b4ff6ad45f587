import { SAMPLE_ROWS } from '../../job/sampleBook';
import { SAMPLE_SHOP } from '../../job/sampleShop';
import { finding, type Problem } from '../../problem';
import { keepScanAside, putInstead, type ShopStore } from '../../store';
import { localDay } from '../ticket/localDay';
import { SAMPLE_SCANS } from '../ticket/sampleScans';
import { samplePieces } from './samplePieces';

/**
 * Puts the invented shop in the place of all that the store keeps; why not, where it cannot be kept. The scans come with the
 * page: nothing is loaded from elsewhere.
 */
export async function fillSample(store: ShopStore): Promise<Problem | undefined> {
  const { database } = store;
  if (database === undefined)
    return finding('STORE_REFUSED', 'stop', { why: 'the sample shop needs a store' });
  const pieces = samplePieces(localDay(new Date()));
  for (const { name, url } of SAMPLE_SCANS) {
    if (!pieces.some(({ sculpt }) => sculpt.scan === name)) continue;
    const problem = await keepScanAside(store, { id: name, name, file: await fetched(url) });
    if (problem !== undefined) return problem;
  }
  const { pieces: _pieces, scans: _scans, ...core } = SAMPLE_SHOP;
  await putInstead(database, { core: { ...core, book: SAMPLE_ROWS }, pieces });
  return undefined;
}

async function fetched(url: string): Promise<ArrayBuffer> {
  const response = await fetch(url);
  if (!response.ok) throw new Error(`${url} did not come: ${response.status}`);
  return response.arrayBuffer();
}
