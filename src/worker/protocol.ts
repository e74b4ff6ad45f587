import type { Outcome, Problem } from '../problem';
import type { MoldKey, MoldWish, UpAxis } from '../geometry';
import type {
  Accuracy,
  FileUnit,
  LevelFill,
  Mold,
  MoldAsk,
  OpeningAsk,
  OpeningPlan,
  PourAsk,
  Size,
  TapedExtent,
} from '../plan';
import type { PourOnPage } from './pour';

/** What the page and the worker say to each other. Plain data only; large buffers are transferred, not copied. */
export type Request =
  | { kind: 'open'; name: string; bytes: ArrayBuffer }
  | { kind: 'size'; wish: SizeWish }
  | { kind: 'pour'; ask: PourAsk }
  | { kind: 'mold'; wish: SizeWish; ask: MoldsAsk }
  | { kind: 'opening'; wish: SizeWish; ask: OpeningAsk }
  | { kind: 'bestUp'; wish: SizeWish; ask: OpeningAsk }
  | { kind: 'picture'; place: PicturePlace };

export type Kind = Request['kind'];

/** The answer to a request, by its kind. */
export interface Answers {
  open: Outcome<Opened>;
  size: Outcome<Sized>;
  pour: Outcome<PourOnPage>;
  mold: Outcome<MoldOfType[]>;
  /** Outlines for its card are in it, the facets are not. */
  opening: Outcome<OpeningPlan>;
  /** Ways up, best first. */
  bestUp: Outcome<LevelFill[]>;
  picture: Outcome<Picture>;
}

export interface ToWorker {
  id: number;
  request: Request;
  /** Where memory can be shared: not 0 once the answer is no longer wanted, or has to wait for something more urgent. */
  stop?: Int32Array;
}

/** `failed` is a fault of ours; what the user can fix comes in an answer. */
export type FromWorker =
  | { id: number; say: 'progress'; share: number }
  | { id: number; say: 'answer'; answer: Answers[Kind] }
  | { id: number; say: 'failed'; message: string };

/** A scan that was read: nothing in it has a unit yet. */
export interface Opened {
  format: 'stl' | 'obj';
  triangles: number;
  findings: Problem[];
}

/**
 * A cut the page asks for. `floor` stays on the surface it was found on, whatever the scale becomes; `height` is a true
 * length above the lowest point of the scan, so where it lies in the file depends on the scale.
 */
export type CutWish =
  | { by: 'floor'; atUnits: number; keep: 'above' | 'below' }
  | { by: 'height'; heightMm: number; keep: 'above' | 'below' };

export interface SizeWish {
  /** Left out while nobody has confirmed it: the engine then assumes +z and says so. */
  up?: UpAxis;
  taped?: TapedExtent;
  fileUnit?: FileUnit;
  cut?: CutWish;
  /** Also the volumes of the body grown (or, negative, shrunk) by these distances. */
  offsetsMm?: readonly number[];
  accuracy?: Accuracy;
}

/** Heights along up. `atUnits` is in file units on the file's own zero, so that a picture can be cut alike. */
export interface Sized {
  size: Size;
  cut?: { atUnits: number; heightMm: number; keep: 'above' | 'below' };
  floor?: { atUnits: number; topMm: number; heightMm: number };
}

/** The mold types side by side: each with its own settings, everything else alike. A type without settings is left out. */
export interface MoldsAsk extends Omit<MoldAsk, 'type' | 'settings'> {
  settings: Partial<Record<MoldKey, MoldWish>>;
}

/** One type with its mold, or why there is none. The facets of the sculpt stay with the worker. */
export interface MoldOfType {
  type: MoldKey;
  mold: Outcome<Mold>;
}

export interface PicturePlace {
  up: UpAxis;
  cut?: { atUnits: number; keep: 'above' | 'below' };
}

/** The surface to draw: file units, Z up, relative to the middle of its bounds. `rims` holds two ends of every open edge. */
export interface Picture {
  positions: Float32Array;
  /** Of unit length, one a vertex, averaged over its triangles by area. */
  normals: Float32Array;
  index: Uint32Array;
  rims: Float32Array;
  halfUnits: [number, number, number];
  triangles: number;
}
