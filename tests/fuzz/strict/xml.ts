import { refuse } from './shape';

/** An element with its names taken apart: namespace, then local name. */
export interface Xml {
  space: string;
  name: string;
  /** Of attributes without a namespace. */
  values: Map<string, string>;
  /** "namespace name" of the others. */
  others: Map<string, string>;
  children: Xml[];
}

/**
 * A well-formed document of XML 1.0 with namespaces (W3C, "Extensible Markup Language", fifth edition, and "Namespaces in XML 1.0"; from memory),
 * without a document type. Texts between elements are passed over.
 */
export function strictXml(bytes: Uint8Array): Xml {
  const text = decoded(bytes).replace(/^\ufeff/, '');
  // eslint-disable-next-line no-control-regex
  if (/[\0-\x08\x0b\x0c\x0e-\x1f\ufffe\uffff]/.test(text)) refuse('a character that XML has not');
  const open: { xml: Xml; spaces: Map<string, string>; tag: string }[] = [];
  let root: Xml | undefined;
  let at = 0;
  const until = (end: string, from: number): string => {
    const stop = text.indexOf(end, from);
    if (stop < 0) refuse(`no ${end}`);
    at = stop + end.length;
    return text.slice(from, stop);
  };
  while (at < text.length) {
    if (text[at] !== '<') {
      const stop = text.indexOf('<', at);
      const plain = text.slice(at, stop < 0 ? text.length : stop);
      if (open.length === 0 && /[^ \t\r\n]/.test(plain)) refuse('text outside of the root');
      if (plain.includes(']]>')) refuse(']]>');
      resolved(plain);
      at += plain.length;
    } else if (text.startsWith('<!--', at)) {
      if (/--|-$/.test(until('-->', at + 4))) refuse('-- in a comment');
    } else if (text.startsWith('<![CDATA[', at) && open.length > 0) until(']]>', at + 9);
    else if (text.startsWith('<?', at)) instruction(at === 0, until('?>', at + 2));
    else if (text.startsWith('</', at)) {
      const tag = until('>', at + 2).replace(/[ \t\r\n]+$/, '');
      if (open.pop()?.tag !== tag) refuse(`</${tag}>`);
    } else {
      const { tag, attributes, isEmpty, end } = tagAt(text, at);
      at = end;
      const spaces = new Map(open.at(-1)?.spaces ?? [['xml', 'xml']]);
      for (const [key, value] of attributes) if (/^xmlns(:|$)/.test(key)) spaces.set(key.slice(6), value);
      const xml = elementOf(tag, attributes, spaces);
      if (open.length > 0) open.at(-1)!.xml.children.push(xml);
      else if (root === undefined) root = xml;
      else refuse('a second root');
      if (!isEmpty) open.push({ xml, spaces, tag });
    }
  }
  if (open.length > 0 || root === undefined) refuse('not ended');
  return root;
}

function decoded(bytes: Uint8Array): string {
  const mark = bytes[0]! * 256 + bytes[1]!;
  const encoding = mark === 0xfffe ? 'utf-16le' : mark === 0xfeff ? 'utf-16be' : 'utf-8';
  try {
    return new TextDecoder(encoding, { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return refuse('neither UTF-8 nor UTF-16');
  }
}

/** Production 5 of the same, by its ranges. */
const FIRST =
  ':A-Z_a-z\\xc0-\\xd6\\xd8-\\xf6\\xf8-\\u02ff\\u0370-\\u037d\\u037f-\\u1fff\\u200c-\\u200d\\u2070-\\u218f\\u2c00-\\u2fef' +
  '\\u3001-\\ud7ff\\uf900-\\ufdcf\\ufdf0-\\ufffd\\u{10000}-\\u{effff}';
const NAME = `[${FIRST}][\\u0300-\\u036f\\u203f-\\u2040\\xb7.0-9${FIRST}-]*`;

function instruction(isFirst: boolean, body: string): void {
  const [target = ''] = new RegExp(`^${NAME}`, 'u').exec(body) ?? refuse('an instruction without a name');
  if (target.toLowerCase() !== 'xml') {
    if (!/^([ \t\r\n]|$)/.test(body.slice(target.length))) refuse('an instruction');
    return;
  }
  const declared =
    /^xml[ \t\r\n]+version[ \t\r\n]*=[ \t\r\n]*(["'])1\.\d+\1([ \t\r\n]+encoding[ \t\r\n]*=[ \t\r\n]*(["'])([A-Za-z][\w.-]*)\3)?([ \t\r\n]+standalone[ \t\r\n]*=[ \t\r\n]*(["'])(yes|no)\6)?[ \t\r\n]*$/.exec(
      body,
    );
  if (!isFirst || declared === null) refuse('the declaration');
  if (!['utf-8', 'utf8', 'utf-16', 'us-ascii'].includes((declared[4] ?? 'utf-8').toLowerCase()))
    refuse('encoding');
}

function tagAt(
  text: string,
  start: number,
): { tag: string; attributes: Map<string, string>; isEmpty: boolean; end: number } {
  const head = new RegExp(`<(${NAME})`, 'uy');
  head.lastIndex = start;
  const tag = head.exec(text)?.[1] ?? refuse('<');
  const attributes = new Map<string, string>();
  const next = new RegExp(`[ \\t\\r\\n]+(${NAME})[ \\t\\r\\n]*=[ \\t\\r\\n]*(?:"([^<"]*)"|'([^<']*)')`, 'uy');
  next.lastIndex = start + 1 + tag.length;
  let end = next.lastIndex;
  for (let found = next.exec(text); found !== null; found = next.exec(text)) {
    if (attributes.has(found[1]!)) refuse('an attribute twice');
    attributes.set(found[1]!, resolved(found[2] ?? found[3]!).replace(/[\t\r\n]/g, ' '));
    end = next.lastIndex;
  }
  const tail = /[ \t\r\n]*(\/?)>/y;
  tail.lastIndex = end;
  const [, slash] = tail.exec(text) ?? refuse('a tag that does not end');
  return { tag, attributes, isEmpty: slash === '/', end: tail.lastIndex };
}

const ENTITIES: Readonly<Record<string, string>> = { lt: '<', gt: '>', amp: '&', apos: "'", quot: '"' };

function resolved(text: string): string {
  return text.replace(/&([^;]*);?/g, (all, name: string) => {
    if (!all.endsWith(';')) refuse('&');
    if (Object.hasOwn(ENTITIES, name)) return ENTITIES[name]!;
    const code = /^#x[0-9a-f]+$/i.test(name)
      ? parseInt(name.slice(2), 16)
      : /^#\d+$/.test(name)
        ? +name.slice(1)
        : 0;
    if (!(code >= 32 || code === 9 || code === 10 || code === 13) || code > 0x10ffff) refuse('an entity');
    return String.fromCodePoint(code);
  });
}

function elementOf(tag: string, attributes: Map<string, string>, spaces: Map<string, string>): Xml {
  const named = (name: string, isTag: boolean): [space: string, local: string] => {
    const parts = name.split(':');
    if (parts.length > 2 || parts.includes('')) refuse(`name ${name}`);
    if (parts.length === 1) return [isTag ? (spaces.get('') ?? '') : '', name];
    return [spaces.get(parts[0]!) ?? refuse(`prefix ${parts[0]}`), parts[1]!];
  };
  const [space, name] = named(tag, true);
  const xml: Xml = { space, name, values: new Map(), others: new Map(), children: [] };
  for (const [key, value] of attributes) {
    if (/^xmlns(:|$)/.test(key)) {
      if (key !== 'xmlns' && (value === '' || key === 'xmlns:')) refuse('an empty namespace');
      continue;
    }
    const [at, local] = named(key, false);
    if (at === '') xml.values.set(local, value);
    else if (xml.others.has(`${at} ${local}`)) refuse('an attribute twice');
    else xml.others.set(`${at} ${local}`, value);
  }
  return xml;
}
