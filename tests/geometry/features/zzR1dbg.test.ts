import { it } from 'vitest';
import { box, revolve } from '../../support/shapes';
import { joined, moved } from '../../support/meshTools';
import { thicknessOf } from './thicknessOf';
import type { TriangleMesh } from '../../../src/geometry';
const block = box([100, 80, 40]);
const rod = (r: number, top: number, sides = 64): TriangleMesh => moved(revolve([[0, 30],[r, 30],[r, 40+top],[0, 40+top]], sides),[50,40,0]);
for (const v of [0.75]) for (const [name, m] of [['rod10x60', joined(block, rod(5,60))]] as const)
  it(name, () => { const t = thicknessOf(m,{voxelMm:v}); console.log(v+name, t.thinnest.map(p=>[p.thicknessMm,p.lengthMm,p.slenderness,p.areaMm2,...p.atMm].map(x=>+x.toFixed(2)).join(' '))); });
for (const v of [2]) for (const [name, m] of [['4x6', joined(block, box([4,6,70],[50,40,30]))]] as const)
  it(name, () => { const t = thicknessOf(m,{voxelMm:v}); console.log(v+name, t.minMm, t.thinnest.map(p=>[p.thicknessMm,p.lengthMm,p.slenderness,p.areaMm2,...p.atMm].map(x=>+x.toFixed(2)).join(' '))); });
