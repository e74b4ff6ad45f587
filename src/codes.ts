/** Every code of a problem, by what it is about. A new code is one line here and one sentence in `words/`. */
import type { MeshCode } from './meshCodes';

export * from './meshCodes';

/** Codes about the pour: what goes into the cup and what comes of it. */
export const YIELD_CODES = [
  'INPUT_NOT_A_NUMBER',
  'INPUT_OUT_OF_BOUNDS',
  'INPUT_CONFLICT',
  'RATIO_NOT_POSITIVE',
  'RATIO_EXTREME',
  'RATIO_REVERSED',
  'PART_DENSITIES_NEEDED',
  'MIN_FILL_NEEDED',
  'MIN_FILL_BELOW_FREE_RISE',
  'MIN_FILL_UNKNOWN',
  'NOT_A_FOAM',
  'PACK_REFUSED',
  'PACK_UNUSUAL',
  'SHORT_FILL_OUT_OF_REACH',
  'SHORT_FILL_LIKELY',
  'NO_CUP_TEST',
  'PART_BELOW_SCALE',
  'SCALE_COARSE',
  'SCALE_OVERLOADED',
  'RATIO_ROUNDED',
  'RESIDUE_LARGE',
  'CUP_WEIGHTS',
  'CUP_TEST_SMALL',
  'FOAM_CARD_FIELD',
] as const;

/** Codes of the plan, where shapes meet numbers and the user's choices. */
export const PLAN_CODES = [
  'SCALE_UNKNOWN',
  'SCALE_UNREACHED',
  'CUT_AWAY',
  'CUT_EMPTY',
  'FLOOR_FOUND',
  'PIECE_LEFT_OUT',
  'PIECES_TAKEN',
  'PIECE_LOST',
  'NOTHING_LEFT',
  'STOPPED',
  'VOXEL_TOO_SMALL',
  'VOXEL_TOO_LARGE',
  'CORE_OUTSIDE',
  'CORE_WALL',
] as const;

/** Codes of the mold as a shape. */
export const MOLD_CODES = [
  'MOLD_PARAMETER',
  'MOLD_PARAMETER_FOREIGN',
  'SKIN_OVER_WALL',
  'PARTING_OUTSIDE',
  'MOLD_NEEDS_SURFACE',
  'STANDS_ON_POINT',
  'BASE_TRIMMED',
  'HOLLOW_ON_BOARD',
  'JACKET_NOT_FREE',
  'PULL_THROUGH_BOARD',
  'HALVES_BOND',
  'BLOCK_SHUT',
  'COATS_BY_AREA',
  'KEYS_SMALLER',
  'UNDERCUT_LOCKED',
  'PULL_TIED',
] as const;

/** Codes of silicone, kits, jacket and finish: amounts and money. */
export const SILICONE_CODES = [
  'SILICONE_CARD_FIELD',
  'MIX_BELOW_SCALE',
  'POT_LIFE_TOO_SHORT',
  'MIXES_TOO_MANY',
  'COATS_DO_NOT_FIT',
  'SILICONE_RATIO_BENT',
  'JACKET_HEAD',
  'COAT_SAGS',
  'COAT_STICK_UNKNOWN',
  'DEGAS_WEAK',
  'FILL_TOO_SLOW',
  'FLOW_NOT_LAMINAR',
  'KITS_NONE',
  'KITS_UNKNOWN',
  'KITS_UNPRICED',
  'SCULPT_FLOATS',
  'SCULPT_MASS_UNKNOWN',
  'WALL_BULGES',
  'BOX_LEAKS',
  'LIFT_HEAVY',
  'SHRINK_ASSUMED',
] as const;

/** One code a check, of materials, of the opening and of the pour. */
export const CHECK_CODES = [
  'CURE_INHIBITION',
  'GLOVES',
  'THICK_CONDENSATION',
  'SHELF_LIFE',
  'MOLD_LIFE',
  'PIGMENT',
  'RELEASE_FOR_PAINT',
  'PAINT_FLEX',
  'CUP_TEST_TODAY',
  'FOAM_AGE',
  'AIR_PRESSURE',
  'RATIO_ORDER',
  'SCALE_STEP',
  'PACK_RANGE',
  'SHORT_FILL_RISK',
  'CUP_ROOM',
  'MIXING_METHOD',
  'POUR_WINDOW',
  'MOLD_TEMPERATURE',
  'MOLD_DAMP',
  'MOLD_SEALED',
  'JACKET_PANELS',
  'STRAP_LOAD',
  'PLUG_FORCE',
  'EXOTHERM',
  'OPENING_TIME',
  'FIRE_RATING',
  'OPENING_SIZE',
  'LIQUID_STAYS',
  'AIR_TRAPPED',
  'FLAT_CEILING',
  'THIN_CASTING',
  'SLENDER',
  'THIN_RUBBER',
  'DEMOLD_STRETCH',
] as const;

/** Codes of heat: warming the mold, its temperature, opening a warm casting. */
export const WARMTH_CODES = [
  'WARM_UNREACHABLE',
  'WARM_ALREADY_THERE',
  'WARM_LUMPED_WRONG',
  'WARM_SURFACE_HOT',
  'WARM_JACKET_ON',
  'MOLD_TEMP_UNKNOWN',
  'MOLD_TEMP_COLD',
  'MOLD_TEMP_COOL',
  'MOLD_TEMP_WARM',
  'MOLD_TEMP_HOT',
  'OPEN_TIME_UNKNOWN',
] as const;

/** Codes of the pour beyond its grams: pressure, straps, air, times, cups, core, opening. */
export const POUR_CODES = [
  'INPUT_NOT_WHOLE',
  'PACK_LEVELS',
  'LIQUID_OVER_CAVITY',
  'STRAPS_TOO_MANY',
  'AIR_PRESSURE_UNLIKELY',
  'POUR_WINDOW_NONE',
  'CORE_HOT',
  'CUPS_TOO_MANY',
  'CUPS_TOGETHER',
  'CUPS_OVER_HANDS',
  'CUPS_NOT_CHECKED',
  'COLOR_NAMED_TWICE',
  'CORE_FILLS_MOLD',
  'CORE_FLOATS',
  'CORE_MASS_UNKNOWN',
  'NO_HEAD',
  'OPENING_NONE',
  'OPENING_FLOW_FAST',
  'PACK_LOST_AT_MOUTH',
] as const;

/** Codes of where the mold is opened, vented and pulled off: what the plan finds on the shape itself. */
export const OPENING_CODES = [
  'OPENING_BAND_EMPTY',
  'OPENING_OFF_SURFACE',
  'OPENING_UNDERSIDE',
  'OPENING_NONE_FOUND',
  'VENT_OFF_SURFACE',
  'TRAP_PINHOLE',
  'THICKNESS_NOT_MEASURED',
  'SHEET_LOST',
  'LOCKED_PIECE',
  'LIMB_CAUGHT',
  'PIECE_CUT_OFF',
  'DIRECTION_NONE',
  'VENT_NOT_REACHED',
  'OPENING_OVER_EDGE',
  'VENT_UNDER_LIQUID',
] as const;

/** Codes about the call: a value that is missing, ambiguous or out of bounds. */
export const CALL_CODES = [
  'BAD_CALL',
  'CANNOT_READ_FILE',
  'CANNOT_WRITE_FILE',
  'SHOP_FILE',
  'CARD_UNKNOWN',
] as const;

/** Codes of the book of past pours: slips of the pen, rows and lists that cannot be read. */
// prettier-ignore
export const BOOK_CODES = [
  'BOOK_CASTING_OVER', 'BOOK_OUNCES', 'BOOK_POUNDS', 'BOOK_FAHRENHEIT', 'BOOK_SIDES_SWAPPED',
  'BOOK_SUM_OFF', 'BOOK_BALANCE_OFF', 'BOOK_LEFT_OUT', 'BOOK_ROW_UNREAD', 'BOOK_ROW_THERE',
  'BOOK_NOT_A_LIST', 'BOOK_LIST_BROKEN', 'BOOK_CELL_UNREAD', 'BOOK_COLUMN_UNKNOWN',
] as const;

/** Codes about what the app keeps in the browser. */
export const STORE_CODES = [
  'STORE_FULL',
  'STORE_REFUSED',
  'STORE_NEWER',
  'STORE_WAITS',
  'STORE_EMPTIED',
  'STORE_LOST',
  'STORE_FAILED',
  'PIECE_GONE',
  'SCAN_GONE',
  'WORDS_UNREAD',
] as const;

export type YieldCode = (typeof YIELD_CODES)[number];
export type PlanCode = (typeof PLAN_CODES)[number];
export type CallCode = (typeof CALL_CODES)[number];
export type MoldCode = (typeof MOLD_CODES)[number];
export type SiliconeCode = (typeof SILICONE_CODES)[number];
export type WarmthCode = (typeof WARMTH_CODES)[number];
export type CheckCode = (typeof CHECK_CODES)[number];
export type PourCode = (typeof POUR_CODES)[number];
export type OpeningCode = (typeof OPENING_CODES)[number];
export type StoreCode = (typeof STORE_CODES)[number];
export type BookCode = (typeof BOOK_CODES)[number];
export type Code =
  | MeshCode
  | YieldCode
  | PlanCode
  | CallCode
  | MoldCode
  | SiliconeCode
  | CheckCode
  | WarmthCode
  | PourCode
  | OpeningCode
  | StoreCode
  | BookCode;
