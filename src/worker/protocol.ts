import type { Outcome, Problem } from '../problem';
import type { BaseChoice, Bounds, Look, MoldKey, MoldWish, Ray, ScanFile, UpAxis, Vector } from '../geometry';
import type {
  Accuracy,
  Core,
  FileUnit,
  LadderOfType,
  LevelFill,
  Mold,
  MoldAsk,
  OpeningAsk,
  OpeningPlan,
  PourAsk,
  ScaleMeasure,
  ScanPieceWish,
  Size,
  Span,
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
  | { kind: 'picture'; place: PicturePlace }
  | { kind: 'ladder'; wish: SizeWish; ask: LadderAsk }
  | { kind: 'shells'; wish: SizeWish; ask: ShellsAsk }
  | { kind: 'cutFaces'; wish: SizeWish; ask: CutFacesAsk }
  | { kind: 'paint'; wish: SizeWish; place: PicturePlace; base: BaseChoice }
  | { kind: 'pick'; ray: Ray; place: PicturePlace }
  | { kind: 'core'; wish: SizeWish; name: string; bytes: ArrayBuffer };

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
  ladder: Outcome<LadderOfType[]>;
  shells: Outcome<Shells>;
  cutFaces: Outcome<CutFaces>;
  paint: Outcome<Paint>;
  pick: Outcome<Picked>;
  core: Outcome<Core>;
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

/** A scan that was read; its lengths are in units of the file. */
export interface Opened {
  format: ScanFile['format'];
  /** The unit that the file itself states. */
  ownUnit?: NonNullable<ScanFile['unit']>;
  triangles: number;
  findings: Problem[];
  /** Of the whole file, on its own axes. */
  boundsUnits: Bounds;
  /** How it looks from its front with each axis up. */
  looks: Record<UpAxis, Look>;
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
  /** Another side, or between two points: it checks the scale, unless `scaleBy` says that it sets it. */
  second?: TapedExtent | Span;
  scaleBy?: ScaleMeasure;
  pieces?: ScanPieceWish;
  cut?: CutWish;
  /** Also the volumes of the body grown (or, negative, shrunk) by these distances. */
  offsetsMm?: readonly number[];
  accuracy?: Accuracy;
}

/** Heights along up. `atUnits` is in file units on the file's own zero, so that a picture can be cut alike. */
export interface Sized {
  size: Size;
  /** Lowest point and height of all that is in the scan, before any cut. */
  whole: { lowestUnits: number; tallMm: number };
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

/** A place on the surface in file units on the file's own axes; none where the ray meets nothing. */
export interface Picked {
  at?: Vector;
}

/** The surface to draw: file units, Z up, relative to the middle of its bounds. `rims` holds two ends of every open edge. */
export interface Picture {
  positions: Float32Array;
  /** Of unit length, one a vertex, averaged over its triangles by area. */
  normals: Float32Array;
  index: Uint32Array;
  rims: Float32Array;
  halfUnits: [number, number, number];
  /** The middle of its bounds, on the file's own zero. */
  middleUnits: [number, number, number];
  place: PicturePlace;
  /** Open edges of the whole surface; of very many only some are in `rims`. */
  openEdges: number;
  /** Of the whole surface; so many of them are measured. */
  triangles: number;
  /** In `index`: fewer, where the surface was simplified to be drawn. */
  shownTriangles: number;
}

/** Triangles to draw, mm on the placed piece: the frame of all places. */
export interface ShownMesh {
  positions: Float32Array;
  normals: Float32Array;
  index: Uint32Array;
}

/** Everything said of each type but its thickness, which the ladder runs through. */
export type LadderAsk = Pick<MoldsAsk, 'settings'>;

export type ShellPart = 'skin' | 'jacket' | 'block';

export interface ShellsAsk {
  type: MoldKey;
  settings: MoldWish;
}

/** Outer faces of the parts of a mold, from the inside out. */
export interface Shells {
  parts: { part: ShellPart; surface: ShownMesh }[];
}

/** Across an axis of the placed piece. */
export interface CutPlane {
  axis: 'x' | 'y' | 'z';
  atMm: number;
}

export interface CutFacesAsk extends ShellsAsk {
  plane: CutPlane;
}

/**
 * Closed outlines at a plane of what lies within the outer face of each part: the sculpt first, each next one containing the one before. x, y, z
 * a point, mm on the placed piece; counter-clockwise around solid and clockwise around voids, seen from the tip of the axis.
 */
export interface CutFaces {
  plane: CutPlane;
  faces: { part: 'sculpt' | ShellPart; outlines: Float64Array[] }[];
}

/** Thickness at every vertex of a picture, mm; NaN where it is not known. What is thicker than `cappedMm` is told as that. */
export interface Paint {
  thicknessMm: Float32Array;
  cappedMm: number;
}
