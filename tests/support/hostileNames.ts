/** Names that would be more than a name where a page took them for HTML. */
export const HOSTILE_NAMES: readonly string[] = [
  '<img src=x onerror="globalThis.ran = 1">',
  '</p></header></title><script>globalThis.ran = 2</script>',
  '</style><style>*{display:none}</style>',
  '" onmouseover="globalThis.ran = 3" x="',
  "' style='position:fixed' y='",
  '<svg/onload=globalThis.ran=4>',
  '<!-- --><iframe srcdoc="<script>parent.ran = 5</script>">',
  '&lt;b&gt; &#60;b&#62; &amp',
  '<a href="javascript:globalThis.ran = 6">x</a>',
  '<base href="https://elsewhere.example/">',
  '${globalThis.ran = 7}{{constructor.constructor("globalThis.ran = 8")()}}',
];

/** A name as long and as wide that could be nothing else. */
export const plainLike = (name: string): string => name.replace(/\S/g, 'x');

/** The tags of a page with all their attributes: what its text is must not change them. */
export const tagsOf = (html: string): string[] => html.match(/<[^>]*>/g) ?? [];
