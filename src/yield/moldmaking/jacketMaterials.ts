import { jacketBandage } from './jacketBandage';
import { jacketGlassMat } from './jacketGlassMat';
import type { JacketMaterial } from './jacketMaterial';
import { jacketPlaster } from './jacketPlaster';
import { jacketPutty } from './jacketPutty';

/** What a rigid jacket can be made of. A new material is one file and one line here. */
export const JACKET_MATERIALS: readonly JacketMaterial[] = [
  jacketPlaster,
  jacketBandage,
  jacketGlassMat,
  jacketPutty,
];
