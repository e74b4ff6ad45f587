import { isSame, type Json } from '../../job/json';
import type { Piece, Said, SavedField } from '../../job/piece';
import { blankFields, FIELD_NAMES, textOf, type FieldName, type Fields } from './fields';
import { HOME_OF_CHOICE, homeOf, type Home } from './homeOf';
import { readChoice } from './saidShapes';
import { newWords, type Words } from './words';

const CHOICES = Object.keys(HOME_OF_CHOICE) as (keyof typeof HOME_OF_CHOICE)[];

/** The piece with what stands on the ticket, in the mold and the casting in hand. What is blank is left out. */
export function pieceWith(piece: Piece, words: Words): Piece {
  const { mold, casting } = piece.hand;
  const { scan: _scan, ...sculpt } = piece.sculpt;
  return {
    ...piece,
    sculpt: {
      ...sculpt,
      ...withUnread(sculpt, saidOf(words, 'sculpt')),
      ...(words.scanId === undefined ? {} : { scan: words.scanId }),
    },
    molds: {
      ...piece.molds,
      [mold]: { ...piece.molds[mold]!, ...withUnread(piece.molds[mold]!, saidOf(words, 'mold')) },
    },
    castings: {
      ...piece.castings,
      [casting]: {
        ...piece.castings[casting]!,
        ...withUnread(piece.castings[casting]!, saidOf(words, 'casting')),
      },
    },
  };
}

/** What this version could not read stays as it was, until something else is said in its place. */
function withUnread(kept: Said, said: Said): Said {
  const fields = Object.entries(kept.fields).filter(([name]) => !FIELD_NAMES.some((known) => known === name));
  const choices = Object.entries(kept.choices).filter(([name, value]) => {
    const choice = CHOICES.find((known) => known === name);
    return choice === undefined || readChoice(choice, value) === undefined;
  });
  return {
    fields: { ...Object.fromEntries(fields), ...said.fields },
    choices: { ...Object.fromEntries(choices), ...said.choices },
  };
}

/** What is kept of one part: boxes and choices that are not blank. */
export function saidOf(words: Words, home: Home): Said {
  const blank = newWords();
  return {
    fields: Object.fromEntries(
      FIELD_NAMES.filter((name) => homeOf(name) === home).flatMap((name) => {
        const field = savedField(words.fields, blank.fields, name);
        return field === undefined ? [] : [[name, field]];
      }),
    ),
    choices: Object.fromEntries(
      CHOICES.filter((choice) => HOME_OF_CHOICE[choice] === home).flatMap((choice) => {
        const kept = keptChoice(choice, words);
        return isSame(kept, keptChoice(choice, blank)) || kept === undefined ? [] : [[choice, kept]];
      }),
    ),
  };
}

function savedField(fields: Fields, blank: Fields, name: FieldName): SavedField | undefined {
  const field = textOf(fields, name);
  return isSame(field, textOf(blank, name)) ? undefined : { ...field };
}

/** As JSON: what nobody said is left out. What lasts only while the page is open is not kept. */
function keptChoice(choice: keyof typeof HOME_OF_CHOICE, words: Words): Json | undefined {
  const value: unknown = words[choice];
  const lasting =
    choice === 'venting' ? { ...words.venting, isWanted: undefined, searchFor: undefined } : value;
  return lasting === undefined ? undefined : (JSON.parse(JSON.stringify(lasting)) as Json);
}

/** The words of the mold and the casting in hand, and the names of what this version cannot read. */
export function wordsOfPiece({ sculpt, molds, castings, hand }: Piece): { words: Words; unread: string[] } {
  const { words, unread } = wordsOfParts([sculpt, molds[hand.mold]!, castings[hand.casting]!]);
  return { words: { ...words, scanId: sculpt.scan }, unread };
}

function wordsOfParts(parts: readonly Said[]): { words: Words; unread: string[] } {
  const words = newWords();
  const unread: string[] = [];
  const fields: Record<string, SavedField & { unit: string }> = blankFields();
  for (const part of parts) {
    for (const [name, field] of Object.entries(part.fields)) {
      if (Object.hasOwn(fields, name)) fields[name] = { unit: '', ...field };
      else unread.push(name);
    }
    for (const [name, kept] of Object.entries(part.choices)) {
      const choice = CHOICES.find((one) => one === name);
      const value = choice === undefined ? undefined : readChoice(choice, kept);
      if (choice === undefined || value === undefined) unread.push(name);
      else Object.assign(words, { [choice]: value });
    }
  }
  return { words: { ...words, fields: fields as Fields }, unread };
}
