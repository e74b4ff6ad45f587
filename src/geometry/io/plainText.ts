import { finding, type Problem } from '../../problem';

/**
 * UTF-16 text with its byte order mark, as one byte a character, which is all a mesh has; other characters, as in names, become dots.
 * Line numbers stay. Everything else goes through as it is. UTF-32 is left alone: no reader takes it.
 */
export function plainText(bytes: Uint8Array): { bytes: Uint8Array; findings: Problem[] } {
  const [first, second] = bytes;
  const little = first === 0xff && second === 0xfe;
  const isUtf32 = little && bytes.length >= 4 && bytes[2] === 0 && bytes[3] === 0;
  if (isUtf32 || !(little || (first === 0xfe && second === 0xff)) || bytes.length % 2 !== 0)
    return { bytes, findings: [] };
  const plain = new Uint8Array(bytes.length / 2 - 1);
  for (let i = 0; i < plain.length; i++) {
    const [a, b] = [bytes[2 * i + 2]!, bytes[2 * i + 3]!];
    const [low, high] = little ? [a, b] : [b, a];
    plain[i] = high === 0 && low < 128 ? low : DOT;
  }
  return { bytes: plain, findings: [finding('ENCODING', 'fine', { encoding: 'UTF-16' })] };
}

const DOT = 46;
