import { preparePour, type PourAsk, type PreparedPour } from '../../src/plan';
import { pourSheet, type SheetMeta } from '../../src/sheet';
import { valueOf } from './outcome';

/** 4.5 L of a foam of 96 kg/m3, A:B 100:55, on a scale of 1 g. */
const POUR: PourAsk['pour'] = {
  cavity: { volumeCm3: { value: 4500, from: 'given' } },
  freeRiseKgM3: { value: 96, from: 'cup-test' },
  ratio: { a: 100, b: 55, by: 'mass' },
  scaleStepG: { value: 1, from: 'given' },
};

export const pourOf = (
  more: Omit<Partial<PourAsk>, 'pour'> = {},
  pour: Partial<PourAsk['pour']> = {},
): PreparedPour => valueOf(preparePour({ ...more, pour: { ...POUR, ...pour } }));

export const sheetOf = (prepared: PreparedPour, meta: Partial<SheetMeta> = {}): string =>
  pourSheet(prepared, { version: '0.0.0-test', ...meta });

/** What a person reads, without tags, entities as the signs they stand for. */
export const textOf = (html: string): string =>
  html
    .replace(/<style>.*?<\/style>/s, '')
    .replace(/<[^>]*>/g, ' ')
    .replace(/&#(\d+);/g, (_, code: string) => String.fromCharCode(Number(code)))
    .replace(/\s+/g, ' ');
