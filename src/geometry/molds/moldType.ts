import type { Outcome, Problem } from '../../problem';
import type { Field } from '../field/buildField';
import type { LevelVolume } from '../field/levelVolume';
import type { Vector } from '../measure/planeFrame';
import type { PullChoice } from './pullSearch';
import type { Sculpt } from './sculpt';

/*
 * A mold type is one file and a line in index.ts and in moldWork.ts: what is told of it (key, title, parameters with default, range and source), from
 * which come forms, flags and saved jobs, and apart from that how it is built, which the page leaves to its worker and does not load.
 */

export const MOLD_KEYS = ['block', 'skin', 'blanket'] as const;
export type MoldKey = (typeof MOLD_KEYS)[number];

/** One thing to choose. Lengths in mm, angles in degrees; a pull is `best`, an axis like `+z`, or "x,y,z". */
export interface MoldParameter {
  key: string;
  label: string;
  /** Its option on the command line, without the dashes. */
  flag: string;
  kind: 'length' | 'height' | 'angle' | 'count' | 'choice' | 'pull';
  default: number | string;
  low?: number;
  high?: number;
  choices?: readonly string[];
  /** Where the default and its range come from. */
  from: string;
  /** Not asked on the page's first row. */
  isFine?: true;
}

/** Every parameter of a type with its value. */
export type MoldSettings = Readonly<Record<string, number | string>>;

/** What a type needs of the sculpt. The field stands only where a type asks for reach. */
export interface MoldBody {
  sculpt: Sculpt;
  field?: Field;
  /** Thickness after each coat, rising to the skin, for types that go on in coats; left out, all of it is one. */
  coatsMm?: readonly number[];
  /** The pull found by `searchPull`, for settings that ask for the best one; searched when left out. */
  pull?: PullChoice;
}

export interface MoldType {
  key: MoldKey;
  title: string;
  /** What it is good for, one line. */
  goodFor: string;
  parameters: readonly MoldParameter[];
}

export interface MoldWork {
  /** How far around the sculpt the field must reach for these settings, mm; 0 where no field is needed. */
  reachMm: (settings: MoldSettings, sculpt: Sculpt) => number;
  /** Errors: those of the settings against this sculpt, and STOPPED. */
  build: (body: MoldBody, settings: MoldSettings) => Outcome<MoldShape>;
}

/** A volume with a name; the names are words of the trade, in English. */
export interface NamedVolume {
  name: string;
  volumeMm3: number;
}

/** What fills the box or the jacket at one step of the work; the parts and the container are measured on ways of their own. */
export interface Filling {
  when: string;
  rubberMm3: number;
  clayMm3: number;
  sculptMm3: number;
  voidMm3: number;
  containerMm3: number;
}

export interface MoldShape {
  key: MoldKey;
  settings: MoldSettings;
  /** Rubber by part of the mold, and all of it. */
  rubber: NamedVolume[];
  rubberMm3: number;
  /** Shaped and taken out again. */
  clay: NamedVolume[];
  /** Kept free by rods or filled with something else. */
  voids: NamedVolume[];
  sculptMm3: number;
  fillings: Filling[];
  /** The sculpt grown by the skin, where there is one. */
  grown?: LevelVolume & { skinMm: number };
  /** What the grid may be off by beside that, mm3, at 95 of 100. */
  latticeDoubtMm3: number;
  box?: BoxShape;
  partingOverMm?: number;
  jacket?: JacketMeasure;
  undercut?: UndercutShape;
  /** Thickness after each coat and the volume it brings, flange and fill not counted. */
  coats?: { toMm: number; volumeMm3: number }[];
  flange?: { widthMm: number; outlineMm: number; areaMm2: number };
  keys?: { count: number; radiusMm: number };
  outerMm: readonly [number, number, number];
  /** Wall of the box, or skin, as it was asked for. */
  wallMm: number;
  thickestMm: number;
  /** Hollows and corners between sculpt and box may hold thicker rubber still. */
  hasThickerPlaces?: true;
  findings: Problem[];
}

/** Inner sizes of a box on the board; a cylinder has a diameter instead of sides. */
export interface BoxShape {
  kind: 'box' | 'cylinder';
  innerMm: readonly [number, number, number];
  /** The box stands turned about the vertical by this against the scan's x axis. */
  turnDegrees: number;
  volumeMm3: number;
  /** The other shapes looked at. */
  others: {
    kind: 'box' | 'cylinder';
    turnDegrees: number;
    innerMm: readonly [number, number, number];
    volumeMm3: number;
  }[];
}

export interface JacketMeasure {
  pieces: 1 | 2;
  thicknessMm: number;
  volumeMm3: number;
  /** Of the face toward the rubber, and of the face outside. */
  innerMm2: number;
  outerMm2: number;
  /** Length of the line where two pieces meet, above the board. */
  partingMm: number;
}

export interface UndercutShape {
  pieces: 1 | 2;
  /** Unit vector in the scan's axes; the second piece goes the other way. */
  pull: Vector;
  wasSearched: boolean;
  draftDegrees: number;
  fillMm3: number;
  /** The largest locked places. */
  places: { atMm: Vector; volumeMm3: number; sizeMm: Vector }[];
  /** Pulls along the axes beside it, to about a hundredth of the skin, for comparison. */
  compared: { pull: Vector; pieces: 1 | 2; fillMm3: number }[];
}
