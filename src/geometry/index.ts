/** Shapes only: readers, repair, measures. Lengths in mm once a mesh is placed. */
export { cutMesh, type CutMesh, type CutPlane } from './cut';
export type { CaughtLimb } from './features/demoldCaught';
export { lockedLimbs, type LimbWish, type LockedLimbs, type NeckedLimb } from './features/demoldLimbs';
export { worstPassage, type Passage, type Passages } from './features/demoldPassage';
export type { SectionOut, SectionsOut, WayOut } from './features/demoldSection';
export { sectionsOut } from './features/demoldSections';
export { slitDepthMm, slitLine, type SlitLine, type SlitWish } from './features/slitLine';
export { watched, type Watched } from './field/runTogether';
export { turnedExtents } from './field/fieldSurface';
export { buildField, type Field } from './field/buildField';
export type { FieldOptions } from './field/fieldOptions';
export { measureAndCheck, measureLevels } from './field/measureLevels';
export { distanceFunction } from './field/distanceAt';
export { runFieldTask, type FieldTask } from './field/fieldTask';
export type { LevelVolume } from './field/levelVolume';
export { firstHit, type Ray } from './firstHit';
export { findFloor, type Floor } from './floor';
export { needs3mf, readScanWith, SCAN_FORMATS, type ScanFormat } from './io/formats';
export { readScan } from './io/readScan';
export { SCAN_BYTES_LIMIT, tooManyBytes, type ScanFile } from './io/scanFile';
export { weldPoints, weldSoup } from './io/weld';
export { upLooks, type Look } from './upLooks';
export { divergenceVolume } from './measure/pieces';
export { measureSolid, type SolidOptions } from './measure/measureSolid';
export type { Doubt, PieceGroup, SolidMeasure } from './measure/solidMeasure';
export type { PieceWish } from './measure/pieceWish';
export type { Shell } from './measure/shells';
export { girthOf, type Girth, type Taped } from './measure/girth';
export { shadowOutlines } from './measure/outline';
export {
  inView,
  towardEye,
  VIEW_AXES,
  VIEW_NAMES,
  type ViewAxes,
  type ViewName,
} from './measure/outlineViews';
export { dot, type Vector } from './vector';
export { sectionOf, sectionOutlines, type Plane, type Section } from './measure/section';
export {
  largestSection,
  sectionsAlong,
  type LargestSection,
  type SectionRange,
  type SectionsAlong,
} from './measure/sectionsAlong';
export { silhouetteOf, type Silhouette } from './measure/silhouette';
export { tapeFrom, type Side, type Tape } from './measure/tapeFrom';
export { thinWalls, type ThinWalls } from './measure/thinWalls';
export { windingAlongLines, type WindingSums } from './measure/windingLines';
export type { Crew } from './parallel/crew';
export { HelperMissing } from './parallel/team';
export { placedBounds, placeMesh, turnBack, turnBounds, turnUp, UP_AXES, type UpAxis } from './place';
export { rimDoubtMm3, type Rim } from './repair/rims';
export {
  boundsOf,
  centerOf,
  diagonalOf,
  extentsOf,
  triangleCount,
  vertexCount,
  type Bounds,
  type TriangleMesh,
} from './triangleMesh';
export {
  MOLD_KEYS,
  MOLD_TYPES,
  moldType,
  moldWork,
  readPull,
  searchPull,
  settleMold,
  standSculpt,
  type BaseChoice,
  type BoxShape,
  type Filling,
  type JacketMeasure,
  type MoldBody,
  type MoldKey,
  type MoldParameter,
  type MoldSettings,
  type MoldShape,
  type MoldType,
  type MoldWish,
  type NamedVolume,
  type PullChoice,
  type Sculpt,
  type UndercutShape,
} from './molds';
export { findAirTraps, ROUGHNESS_MM3, type AirTrap, type AirTraps, type TrapWish } from './features/airTraps';
export {
  degreesBetween,
  MOST_TILT_DEGREES,
  VENT_MM3,
  searchAttitude,
  type Attitude,
  type AttitudeWish,
} from './features/attitude';
export { FLAT_DEGREES, flatCeilings, type FlatCeilings } from './features/ceilings';
export { liquidHeldMm3, liquidLevelMm } from './features/liquidHeld';
export { facingAt, mouthOn, type Mouth } from './features/mouth';
export { openRuns, type VentHole } from './features/openRuns';
export { columnsAroundSculpt, openToSky, pourColumns, type PourColumns } from './features/pourColumns';
export { adviseVents, type AdvisedVent, type VentAdvice } from './features/vents';
export { measureThickness, shareThinner, type Thickness, type ThinPlace } from './features/thickness';
export { widestCircle, type WidestCircle } from './plane/widestCircle';
export type { MoldShell } from './show/moldShell';
export { moldShells } from './show/moldShells';
export { nearestSamples } from './show/nearestSamples';
export { simplifyMesh } from './show/simplifyMesh';
