import { SaxesParser } from 'saxes';
import { Refusal } from './refusal';

/** What a reader of one kind of XML gets: names as written, values as text. */
export interface XmlTaker {
  open: (name: string, values: Readonly<Record<string, string>>, line: number) => void;
  close: (name: string) => void;
}

/** Elements in elements: a mesh has seven. Chosen here. */
const DEPTH_LIMIT = 256;

/** Characters from one tag to the next, remarks and blanks among them. Chosen here. */
const PLAIN_LIMIT = 2 ** 22;

const ENCODINGS: readonly string[] = ['utf-8', 'utf8', 'utf-16', 'us-ascii'];

export interface XmlStream {
  write: (chunk: Uint8Array) => void;
  end: () => void;
}

/**
 * Reads XML as its bytes come in, UTF-8 or UTF-16 with its mark, and holds nothing but the tag it is in. A document type, with which
 * entities are made, is refused before it can mean anything; nothing that a text names is ever opened.
 * Throws a Refusal with its line: UNSAFE_XML, SYNTAX, UNSUPPORTED_ENCODING.
 */
export function xmlStream(taker: XmlTaker): XmlStream {
  const parser = new SaxesParser<{ position: true; xmlns: false }>({ position: true, xmlns: false });
  const prefixes = declaredPrefixes();
  let depth = 0;
  let sinceTag = 0;
  let decoder: TextDecoder | undefined;
  const here = (): { line: number } => ({ line: parser.line });
  parser.on('error', ({ message }) => {
    // The parser puts line and column in front.
    const text = plain(message.replace(/^\d+:\d+: /, ''));
    throw new Refusal('SYNTAX', { part: 'xml', expected: 'XML', text }, here());
  });
  parser.on('doctype', () => {
    throw new Refusal('UNSAFE_XML', { part: 'doctype' }, here());
  });
  parser.on('xmldecl', ({ encoding = 'utf-8' }) => {
    if (!ENCODINGS.includes(encoding.toLowerCase()))
      throw new Refusal('UNSUPPORTED_ENCODING', { encoding: plain(encoding) }, here());
  });
  parser.on('opentag', ({ name, attributes }) => {
    sinceTag = 0;
    if (++depth > DEPTH_LIMIT) throw new Refusal('UNSAFE_XML', { part: 'depth', limit: DEPTH_LIMIT }, here());
    prefixes.enter(name, attributes, here);
    taker.open(name, attributes, parser.line);
  });
  parser.on('closetag', ({ name }) => {
    sinceTag = 0;
    depth--;
    prefixes.leave();
    taker.close(name);
  });
  const decode = (chunk: Uint8Array | undefined): string => {
    decoder ??= new TextDecoder(encodingOf(chunk ?? new Uint8Array()), { fatal: true });
    try {
      return decoder.decode(chunk, { stream: chunk !== undefined });
    } catch {
      throw new Refusal('UNSUPPORTED_ENCODING', { encoding: 'neither UTF-8 nor UTF-16' }, here());
    }
  };
  const pass = (text: string): void => {
    // In pieces, so that a long stretch without a tag is found before it is held.
    for (let at = 0; at < text.length; at += PIECE) {
      const piece = text.slice(at, at + PIECE);
      sinceTag += piece.length;
      parser.write(piece);
      if (sinceTag > PLAIN_LIMIT)
        throw new Refusal('UNSAFE_XML', { part: 'plain', limit: PLAIN_LIMIT }, here());
    }
  };
  return {
    write: (chunk) => pass(decode(chunk)),
    end: () => {
      pass(decode(undefined));
      parser.close();
    },
  };
}

/**
 * Every prefix of a name must be declared by its element or one around it ("Namespaces in XML 1.0"): a name with a slip in its prefix would be
 * taken for one of an extension, and passed over.
 */
function declaredPrefixes(): {
  enter: (tag: string, values: Readonly<Record<string, string>>, here: () => { line: number }) => void;
  leave: () => void;
} {
  const open: (readonly string[])[] = [['xml', 'xmlns']];
  const check = (name: string, here: () => { line: number }): void => {
    const colon = name.indexOf(':');
    if (colon < 0 || open.some((own) => own.includes(name.slice(0, colon)))) return;
    const text = `the prefix of ${plain(name)} is not declared.`;
    throw new Refusal('SYNTAX', { part: 'xml', expected: 'XML', text }, here());
  };
  return {
    enter: (tag, values, here) => {
      let own: string[] | undefined;
      for (const name in values) if (name.startsWith('xmlns:')) (own ??= []).push(name.slice(6));
      open.push(own ?? NONE);
      check(tag, here);
      for (const name in values) check(name, here);
    },
    leave: () => void open.pop(),
  };
}

const NONE: readonly string[] = [];

const PIECE = 65_536;

function encodingOf(bytes: Uint8Array): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le';
  return bytes[0] === 0xfe && bytes[1] === 0xff ? 'utf-16be' : 'utf-8';
}

/** Printable ASCII of a text, short: what a file says goes into a message and nowhere else. */
export const plain = (text: string): string => text.slice(0, 60).replace(/[^ -~]/g, '.');
