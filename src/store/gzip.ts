/** The bytes packed by gzip (RFC 1952), by the browser itself. */
export const pack = async (bytes: ArrayBuffer): Promise<Uint8Array<ArrayBuffer>> => {
  const piped = new Blob([bytes]).stream().pipeThrough(new CompressionStream('gzip'));
  return new Uint8Array(await new Response(piped).arrayBuffer());
};

/** More than the file of any scan that is read: ten million triangles take less. Chosen here. */
const LARGEST_BYTES = 2 ** 31;

/**
 * The bytes that were packed, `length` of them. Throws where they are no gzip, where there are more or fewer, and where that many are more than any
 * scan has; it stops at the first byte too many, so that a small file cannot fill the memory.
 */
export async function unpack(packed: Uint8Array<ArrayBuffer>, length: number): Promise<ArrayBuffer> {
  if (length > LARGEST_BYTES)
    throw new Error(`a file of ${length} bytes is larger than any scan that is read`);
  const chunks: Uint8Array<ArrayBuffer>[] = [];
  let count = 0;
  const counted = new WritableStream<Uint8Array<ArrayBuffer>>({
    write(chunk) {
      count += chunk.length;
      if (count > length) throw new Error(`it unpacks to more than its ${length} bytes`);
      chunks.push(chunk);
    },
  });
  await new Blob([packed]).stream().pipeThrough(new DecompressionStream('gzip')).pipeTo(counted);
  if (count < length) throw new Error(`it unpacks to ${count} bytes, not to its ${length}`);
  return new Blob(chunks).arrayBuffer();
}
