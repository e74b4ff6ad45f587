import type { OpeningAsk } from '../plan';
import type { Assumption } from '../estimate';
import { bad, good, type Outcome, type Problem } from '../problem';
import { DEMOLD_BOUNDS, type SiliconeCard } from '../yield';
import { shopOption } from './batchOptions';
import { textOf, type OptionSpec, type OptionValues } from './command';
import type { Io } from './io';
import { defined, figureIn } from './moldFigures';
import { siliconeCardOption } from './moldSiliconeOptions';
import { outsideOf, readBounded } from './openingFigures';
import { PLACE_OPTIONS, placeOptions } from './openingPlaceOptions';
import { OPENING_POUR_OPTIONS, openingPourOptions } from './openingPourOptions';
import { FIELD_OPTIONS, fieldOptions, SCAN_OPTIONS, type FieldWish } from './scanOptions';

/** How the casting comes out. */
const RUBBER_OPTIONS: readonly OptionSpec[] = [
  {
    flags: '--silicone <card>',
    about: 'silicone card of the shop, by its exact name; its elongationAtBreak (3 is 300 %) counts',
  },
  { flags: '--elongation <percent>', about: 'stretch of the rubber at break, as "300 %" (bare number: %)' },
  {
    flags: '--squash <share>',
    about: 'share of its girth that the foam gives when squeezed, as "20 %" (assumed 20 %)',
  },
  {
    flags: '--rubber-stays',
    about: 'the rubber around the opening stays on while the casting is pulled through it',
  },
];

const CARD_OPTIONS: readonly OptionSpec[] = [
  {
    flags: '--card <file>',
    about: 'also writes the place card, a printed page (HTML); "-" prints it in place of the answer',
  },
  { flags: '--title <text>', about: 'what is cast, at the head of the card' },
  { flags: '--job <code>', about: 'short name of the job, at its foot' },
  { flags: '--date <text>', about: 'date as it shall stand there (left out: a line to write it on)' },
];

/** It asks for no offsets and writes no surface. */
const OPENING_FIELD_OPTIONS = FIELD_OPTIONS.filter(({ flags }) => !/^--(offset|surface) /.test(flags));

export const OPENING_OPTIONS: readonly OptionSpec[] = [
  ...PLACE_OPTIONS,
  ...OPENING_POUR_OPTIONS,
  ...RUBBER_OPTIONS,
  ...CARD_OPTIONS,
  ...SCAN_OPTIONS,
  ...OPENING_FIELD_OPTIONS,
];

/** What the call asks for, before the scan is opened. */
export interface OpeningCall {
  ask: OpeningAsk;
  field: FieldWish;
  assumptions: (Assumption & { basis?: string })[];
  /** Of the times. */
  findings: Problem[];
}

/** Errors: BAD_CALL, and those of the shop, of its cards and of the times. */
export function openingOptions(options: OptionValues, io: Io): Outcome<OpeningCall> {
  const field = fieldOptions(options);
  if (!field.ok) return field;
  const shop = shopOption(options, io);
  if (!shop.ok) return shop;
  const place = placeOptions(options);
  if (!place.ok) return place;
  const pour = openingPourOptions(options, shop.value);
  if (!pour.ok) return pour;
  const silicone = siliconeCardOption(options, shop.value);
  if (!silicone.ok) return silicone;
  const rubber = rubberOptions(options, silicone.value);
  if (!rubber.ok) return rubber;
  return good({
    ask: { ...place.value, pour: pour.value.pour, rubber: rubber.value },
    field: field.value,
    assumptions: pour.value.assumptions,
    findings: pour.value.findings,
  });
}

/** What is typed wins over the card. */
function rubberOptions(
  options: OptionValues,
  card: Partial<SiliconeCard>,
): Outcome<NonNullable<OpeningAsk['rubber']>> {
  const typed = elongationOption(textOf(options, 'elongation'));
  if (!typed.ok) return typed;
  const read = readBounded(options, [
    { key: 'squash', option: 'squash', kind: 'share', allowZero: true, bounds: DEMOLD_BOUNDS.squash },
  ]);
  if (!read.ok) return read;
  return good(
    defined({
      elongationAtBreak: typed.value ?? card.elongationAtBreak,
      squash: read.value.squash,
      staysOn: options.rubberStays === true ? true : undefined,
    }),
  );
}

/** A share above 1, which the readers of shares refuse. */
function elongationOption(text: string | undefined): Outcome<number | undefined> {
  if (text === undefined) return good(undefined);
  const percent = figureIn({ '%': 1 }, '--elongation', text);
  if (!percent.ok) return percent;
  const { low, high } = DEMOLD_BOUNDS.elongationAtBreak;
  const outside = outsideOf(
    { low: 100 * low, high: 100 * high },
    { option: '--elongation', text, value: percent.value, unit: '%' },
  );
  if (outside === undefined) return good(percent.value / 100);
  return bad('BAD_CALL', {
    ...outside.problem.values,
    hint: 'Write it in percent, as on the data sheet: "300 %".',
  });
}
