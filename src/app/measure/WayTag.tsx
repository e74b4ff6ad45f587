import { SourceTag } from '../parts/SourceTag';
import type { KnownVolume } from '../ticket/now';

/** How a volume is known. What a sculpt displaced has a word of its own. */
export function WayTag({ by, volumeCm3 }: KnownVolume) {
  return by === 'displace' ? (
    <span className="tag measured">displaced</span>
  ) : (
    <SourceTag from={volumeCm3.from} />
  );
}
