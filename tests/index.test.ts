import { expect, it } from 'vitest';
import * as risewright from '../src';
import { expectClose } from './support/close';
import { sampleBytes, truthOf } from './support/samples';

it('the library measures a scan and plans its pour in a few lines (truth.json; the grams close the balance)', () => {
  const scan = risewright.readScan({ bytes: sampleBytes('sphere-r50.stl'), name: 'sphere-r50.stl' });
  if (!scan.ok) throw new Error(risewright.say(scan.problem).text);
  const size = risewright.sizeScan(scan.value, { fileUnit: 'mm', up: '+z' });
  if (!size.ok) throw new Error(risewright.say(size.problem).text);
  expectClose(size.value.volumeCm3.value, truthOf('sphere-r50.stl').clean_volume_mm3 / 1000, 1e-7);
  const pour = risewright.planPour({
    cavity: { size: size.value },
    freeRiseKgM3: { value: 96, from: 'data-sheet' },
    ratio: { a: 52, b: 100, by: 'mass' },
  });
  if (!pour.ok) throw new Error(risewright.say(pour.problem).text);
  const { partAG, partBG, totalG } = pour.value.batch;
  expect(partAG + partBG).toBe(totalG);
});

it('what others build on is there by name', () => {
  for (const name of [
    'readScan',
    'measureSolid',
    'cutMesh',
    'placeMesh',
    'findFloor',
    'sizeScan',
    'planPour',
    'planOpening',
    'openingCard',
    'placeCard',
    'planBatch',
    'readQuantity',
    'readShop',
    'foamNamed',
    'say',
    'FILE_UNITS',
    'MESH_CODES',
    'good',
    'bad',
  ]) {
    expect(risewright, name).toHaveProperty(name);
  }
});
