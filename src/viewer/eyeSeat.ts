import { Matrix4, Spherical, Vector3, type OrthographicCamera } from 'three';
import type { Px } from './px';

/** Seats the camera off from what it looks at. */
export function place(camera: OrthographicCamera, target: Vector3, off: Vector3): void {
  camera.position.copy(target).add(off);
  camera.lookAt(target);
  camera.updateMatrixWorld();
}

/** Turns the eye round the piece: to its side, and up or down to just short of straight above. */
export function turnBy(
  camera: OrthographicCamera,
  target: Vector3,
  { sideRad, upRad }: { sideRad: number; upRad: number },
): void {
  const off = camera.position.clone().sub(target);
  // Spherical wants y up; ours is z.
  const seat = new Spherical().setFromVector3(new Vector3(off.x, off.z, -off.y));
  seat.theta += sideRad;
  seat.phi = Math.min(Math.PI - 1e-4, Math.max(1e-4, seat.phi - upRad));
  const at = new Vector3().setFromSpherical(seat);
  place(camera, target, new Vector3(at.x, -at.z, at.y));
}

/** Moves eye and target aside, so that the piece moves on the card: px to the right and down. */
export function moveBy(camera: OrthographicCamera, target: Vector3, { x, y }: Px): void {
  const right = new Vector3().setFromMatrixColumn(camera.matrixWorld, 0).multiplyScalar(-x / camera.zoom);
  const up = new Vector3().setFromMatrixColumn(camera.matrixWorld, 1).multiplyScalar(y / camera.zoom);
  target.add(right).add(up);
  camera.position.add(right).add(up);
}

/** Half of the width and height that the box of the piece takes on the screen, in file units. */
export function seenHalves(
  half: readonly [number, number, number],
  camera: OrthographicCamera,
): [number, number] {
  const m = new Matrix4().extractRotation(camera.matrixWorldInverse).elements;
  const along = (row: 0 | 1): number => half.reduce((sum, h, k) => sum + h * Math.abs(m[4 * k + row]!), 0);
  return [along(0), along(1)];
}
