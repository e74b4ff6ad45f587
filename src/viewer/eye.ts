import { Matrix4, Spherical, Vector3, type OrthographicCamera } from 'three';
import { OrbitControls } from 'three-stdlib';
import { VIEWS, ZOOM_STEP, type View } from './views';

/** What buttons, keys and the size of the card can ask of the eye. */
export interface Eye {
  /** Takes a piece of these half extents into a card of this size, on the view it stands on. */
  frame: (halfUnits: readonly [number, number, number], card: { width: number; height: number }) => void;
  look: (view: View) => void;
  turn: (angles: { sideRad: number; upRad: number }) => void;
  zoom: (factor: number) => void;
  fit: () => void;
  close: () => void;
}

export interface EyeOptions {
  camera: OrthographicCamera;
  canvas: HTMLCanvasElement;
  draw: () => void;
  /** Told after every move: pixels per file unit, and the straight view it stands on, if any. */
  onMoved: (pxPerUnit: number, view: View | undefined) => void;
}

/** Share of the card that a fitted piece takes. */
const FILL = 0.86;

/** Moves the camera round the piece. Open it with the canvas, close it with the canvas. */
export function openEye({ camera, canvas, draw, onMoved }: EyeOptions): Eye {
  let half: readonly [number, number, number] = [1, 1, 1];
  let card = { width: 1, height: 1 };
  let view: View | undefined = VIEWS[0];
  camera.up.set(0, 0, 1);
  const controls = new OrbitControls(camera, canvas);
  controls.enableDamping = false;
  controls.enableZoom = false;
  // Every drag needs a button that does the same (WCAG 2.5.7), and there is none for moving the piece aside.
  controls.enablePan = false;
  // A finger that moves up or down scrolls the page; sideways it turns the piece.
  canvas.style.touchAction = 'pan-y';

  const moved = (straight: View | undefined): void => {
    view = straight;
    camera.updateProjectionMatrix();
    onMoved(camera.zoom, straight);
    draw();
  };
  const fit = (): void => {
    controls.target.set(0, 0, 0);
    const [halfWide, halfTall] = seenHalves(half, camera);
    camera.zoom = (FILL / 2) * Math.min(card.width / halfWide, card.height / halfTall);
    controls.update();
    moved(view);
  };
  const look = (straight: View): void => {
    view = straight;
    place(camera, new Vector3(...straight.from).normalize().multiplyScalar(4 * Math.hypot(...half)));
    fit();
  };
  const zoom = (factor: number): void => {
    camera.zoom *= factor;
    moved(view);
  };
  const onWheel = wheelZoom(canvas, zoom);
  const onEnd = (): void => moved(undefined);
  controls.addEventListener('change', draw);
  controls.addEventListener('end', onEnd);
  return {
    look,
    fit,
    zoom,
    turn: ({ sideRad, upRad }) => {
      turnBy(camera, sideRad, upRad);
      controls.update();
      moved(undefined);
    },
    frame: (halfUnits, size) => {
      half = halfUnits;
      card = size;
      camera.near = 0.04 * Math.hypot(...half);
      camera.far = 12 * Math.hypot(...half);
      look(view ?? VIEWS[0]);
    },
    close: () => {
      canvas.removeEventListener('wheel', onWheel);
      controls.dispose();
    },
  };
}

function place(camera: OrthographicCamera, at: Vector3): void {
  camera.position.copy(at);
  camera.lookAt(0, 0, 0);
  camera.updateMatrixWorld();
}

/** Turns the eye round the piece: to its side, and up or down to just short of straight above. */
function turnBy(camera: OrthographicCamera, sideRad: number, upRad: number): void {
  // Spherical wants y up; ours is z.
  const seat = new Spherical().setFromVector3(
    new Vector3(camera.position.x, camera.position.z, -camera.position.y),
  );
  seat.theta += sideRad;
  seat.phi = Math.min(Math.PI - 1e-4, Math.max(1e-4, seat.phi - upRad));
  const at = new Vector3().setFromSpherical(seat);
  place(camera, new Vector3(at.x, -at.z, at.y));
}

/** Half of the width and height that the box of the piece takes on the screen, in file units. */
function seenHalves(half: readonly [number, number, number], camera: OrthographicCamera): [number, number] {
  const m = new Matrix4().extractRotation(camera.matrixWorldInverse).elements;
  const along = (row: 0 | 1): number => half.reduce((sum, h, k) => sum + h * Math.abs(m[4 * k + row]!), 0);
  return [along(0), along(1)];
}

/** The wheel zooms only while the picture has the focus, so that it never holds up a page that is scrolled. */
function wheelZoom(canvas: HTMLCanvasElement, zoom: (factor: number) => void): (event: WheelEvent) => void {
  const onWheel = (event: WheelEvent): void => {
    const isFocused = canvas.closest('[data-picture]')?.contains(document.activeElement) === true;
    if (!event.ctrlKey && !isFocused) return;
    event.preventDefault();
    zoom(event.deltaY < 0 ? ZOOM_STEP : 1 / ZOOM_STEP);
  };
  canvas.addEventListener('wheel', onWheel, { passive: false });
  return onWheel;
}
