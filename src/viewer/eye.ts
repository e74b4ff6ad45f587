import { Vector3, type OrthographicCamera } from 'three';
import { OrbitControls } from 'three-stdlib';
import type { Ray, Vector } from '../geometry';
import { giveHands } from './eyeHands';
import { moveBy, place, seenHalves, turnBy } from './eyeSeat';
import type { Px } from './px';
import { VIEWS, type View } from './views';

/** What buttons, keys and the size of the card can ask of the eye. */
export interface Eye {
  /** Takes a piece of these half extents into a card of this size, on the view it stands on. */
  frame: (halfUnits: readonly [number, number, number], card: { width: number; height: number }) => void;
  look: (view: View) => void;
  /** Looks at a place from where its surface faces, the whole piece in the card. */
  face: (normal: Vector) => void;
  turn: (angles: { sideRad: number; upRad: number }) => void;
  /** Moves the piece on the card, px to the right and down. */
  move: (by: Px) => void;
  zoom: (factor: number) => void;
  fit: () => void;
  /** The line of sight through a place on the card, px from its upper left corner; in the picture's units. */
  rayAt: (px: Px) => Ray;
  /** Where a place of the picture is seen on the card. Written into `to`, since it is asked with every frame. */
  seen: (at: Vector, to: Px) => void;
  /** How far a direction points to the eye: 1 straight at it, below 0 away. */
  towards: (direction: Vector) => number;
  /** Pixels per unit of the picture. */
  pxPerUnit: () => number;
  /** Calls back with every frame, until it is let go. */
  watch: (onFrame: () => void) => () => void;
  /** A frame is drawn. */
  framed: () => void;
  close: () => void;
}

export interface EyeOptions {
  camera: OrthographicCamera;
  canvas: HTMLCanvasElement;
  draw: () => void;
  /** A hand begins to drag, or lets go. */
  onDrag: (isDragging: boolean) => void;
  /** Told after every move: pixels per file unit, and the straight view it stands on, if any. */
  onMoved: (pxPerUnit: number, view: View | undefined) => void;
}

/** Share of the card that a fitted piece takes. */
const FILL = 0.86;

/** Moves the camera round the piece. Open it with the canvas, close it with the canvas. */
export function openEye({ camera, canvas, draw, onDrag, onMoved }: EyeOptions): Eye {
  let half: readonly [number, number, number] = [1, 1, 1];
  let card = { width: 1, height: 1 };
  let view: View | undefined = VIEWS[0];
  let isPlaced = false;
  camera.up.set(0, 0, 1);
  const controls = new OrbitControls(camera, canvas);
  controls.enableDamping = false;
  controls.screenSpacePanning = true;

  const moved = (straight: View | undefined): void => {
    view = straight;
    camera.updateProjectionMatrix();
    onMoved(camera.zoom, straight);
    draw();
  };
  const fit = (): void => {
    const from = camera.position.clone().sub(controls.target).normalize();
    controls.target.set(0, 0, 0);
    place(camera, controls.target, from.multiplyScalar(4 * Math.hypot(...half)));
    const [halfWide, halfTall] = seenHalves(half, camera);
    camera.zoom = (FILL / 2) * Math.min(card.width / halfWide, card.height / halfTall);
    controls.update();
    moved(view);
  };
  const lookFrom = (from: Vector, straight: View | undefined): void => {
    view = straight;
    place(camera, controls.target, new Vector3(...from));
    fit();
  };
  const zoom = (factor: number): void => {
    camera.zoom *= factor;
    moved(view);
  };
  const watchers = new Set<() => void>();
  const held = new Vector3();
  const closeHands = giveHands({ controls, canvas, zoom });
  let isTurned = false;
  const onStart = (): void => {
    isTurned = false;
    onDrag(true);
  };
  const onChange = (): void => {
    isTurned = true;
    draw();
  };
  // A mere press leaves the eye on its straight view.
  const onEnd = (): void => {
    onDrag(false);
    if (isTurned) moved(undefined);
  };
  controls.addEventListener('change', onChange);
  controls.addEventListener('start', onStart);
  controls.addEventListener('end', onEnd);
  return {
    look: (straight) => lookFrom(straight.from, straight),
    // Straight up or down has no upright: a touch of +y keeps the face at the lower edge.
    face: ([x, y, z]) => lookFrom(Math.hypot(x, y) < 1e-3 ? [0, 1e-4, Math.sign(z)] : [x, y, z], undefined),
    fit,
    zoom,
    turn: ({ sideRad, upRad }) => {
      turnBy(camera, controls.target, { sideRad, upRad });
      controls.update();
      moved(undefined);
    },
    move: (by) => {
      moveBy(camera, controls.target, by);
      controls.update();
      moved(view);
    },
    frame: (halfUnits, size) => {
      half = halfUnits;
      card = size;
      camera.near = 0.04 * Math.hypot(...half);
      camera.far = 12 * Math.hypot(...half);
      if (view !== undefined || !isPlaced) lookFrom((view ?? VIEWS[0]).from, view ?? VIEWS[0]);
      else fit();
      isPlaced = true;
    },
    rayAt: ({ x, y }) => {
      camera.updateMatrixWorld();
      const [ndcX, ndcY] = [(2 * x) / card.width - 1, 1 - (2 * y) / card.height];
      return {
        from: new Vector3(ndcX, ndcY, -1).unproject(camera).toArray(),
        direction: camera.getWorldDirection(new Vector3()).toArray(),
      };
    },
    seen: (at, to) => {
      camera.updateMatrixWorld();
      held.set(...at).project(camera);
      to.x = ((held.x + 1) / 2) * card.width;
      to.y = ((1 - held.y) / 2) * card.height;
    },
    towards: ([x, y, z]) => {
      camera.getWorldDirection(held);
      return -(x * held.x + y * held.y + z * held.z);
    },
    pxPerUnit: () => camera.zoom,
    watch: (onFrame) => {
      watchers.add(onFrame);
      return () => watchers.delete(onFrame);
    },
    framed: () => watchers.forEach((onFrame) => onFrame()),
    close: () => {
      closeHands();
      controls.dispose();
    },
  };
}
