import { SAMPLE_SHOP } from '../../src/job/sampleShop';
import { document, type Desk } from './cliCall';

/** 4.5 L, 96 kg/m3, A:B 100:55, from a cup of today. */
export const PLAIN = [
  ...['--volume', '4500', '--free-rise', '96', '--free-rise-from', 'cup-test'],
  ...['--ratio', '100:55'],
];

/** The troll of the sample meshes with the light foam of the sample shop. */
export const TROLL = [
  ...['--scan', 'quay-troll-scan.stl', '--up', '+y', '--tall', '290.9 mm'],
  ...['--shop', 'shop.json', '--foam', 'Sample Foam Light'],
];

export const SHOP_DESK: Desk = { files: { 'shop.json': JSON.stringify(SAMPLE_SHOP) } };

/** The label of a card: a cup of today holds the air of the day already, this does not. */
export const LABEL = ['--volume', '4500', '--free-rise', '96', '--ratio', '100:55'];

/** Any result of batch, read as figures; a group of them, such as `air`, by `group`. */
export type Figures = Record<string, number>;
type Call = [more?: readonly string[], base?: readonly string[], desk?: Desk];

export function result(...[more = [], base = PLAIN, desk = SHOP_DESK]: Call): Figures {
  const one = document(['batch', ...base, ...more], desk);
  if (one.error !== undefined) throw new Error(one.error.text);
  return one.result as Figures;
}

export const group = (key: string, ...args: Call): Figures =>
  (result(...args) as Record<string, unknown>)[key] as Figures;

export const list = <Row = Figures>(key: string, ...args: Call): Row[] =>
  (result(...args) as Record<string, unknown>)[key] as Row[];

export const statusOf = (
  code: string,
  more: readonly string[],
  base: readonly string[] = PLAIN,
): string | undefined =>
  document(['batch', ...base, ...more], SHOP_DESK).findings.find((one) => one.code === code)?.status;
