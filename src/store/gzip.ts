/** The bytes packed by gzip (RFC 1952), by the browser itself. */
export const pack = (bytes: ArrayBuffer): Promise<Uint8Array<ArrayBuffer>> =>
  through(bytes, new CompressionStream('gzip'));

/** The bytes that were packed. Throws where they are no gzip. */
export const unpack = async (packed: Uint8Array<ArrayBuffer>): Promise<ArrayBuffer> =>
  (await through(packed, new DecompressionStream('gzip'))).buffer;

async function through(
  bytes: ArrayBuffer | Uint8Array<ArrayBuffer>,
  stream: CompressionStream | DecompressionStream,
): Promise<Uint8Array<ArrayBuffer>> {
  const piped = new Blob([bytes]).stream().pipeThrough(stream);
  return new Uint8Array(await new Response(piped).arrayBuffer());
}
