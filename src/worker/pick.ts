import { firstHit, turnBack, turnUp, type Ray, type ScanFile } from '../geometry';
import { good, type Outcome } from '../problem';
import type { Picked, PicturePlace } from './protocol';

/**
 * Where a ray first meets the scan as it is drawn: given Z up in file units on the file's own zero, answered on the file's own axes. What a cut
 * takes is not there; every facet of the file is tried, the picture's rounding plays no part.
 */
export function pickOn(scan: ScanFile, ray: Ray, { up, cut }: PicturePlace): Outcome<Picked> {
  const isKept = (heightUnits: number): boolean =>
    cut === undefined || (cut.keep === 'above' ? heightUnits >= cut.atUnits : heightUnits <= cut.atUnits);
  const at = firstHit(
    scan.mesh,
    { from: turnBack(ray.from, up), direction: turnBack(ray.direction, up) },
    (place) => isKept(turnUp(place, up)[2]),
  );
  return good(at === undefined ? {} : { at });
}
