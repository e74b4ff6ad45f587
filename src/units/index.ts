/** Units of the outside world. Inside the program there are only those of `INSIDE_UNIT`. */
export * from './constants';
export * from './format';
export { INSIDE_UNIT } from './kinds';
export type {
  AskReason,
  ErrorReason,
  QuantityKind,
  RatioValue,
  Read,
  Reading,
  ScalarKind,
  Why,
} from './kinds';
export { readAllReadings } from './readAllReadings';
export type { AnyReading } from './readAllReadings';
export { readQuantity } from './readQuantity';
export type { ReadOptions } from './readQuantity';
export { OFFERED_UNITS } from './unitTable';
