import type { Outline } from '../../job/seen';
import { outlineOf } from './outlineOf';

interface Scope {
  onmessage: ((event: MessageEvent<Facets>) => void) | null;
  postMessage(message: Outline | undefined): void;
}

/** The surface of a picture. */
export interface Facets {
  positions: Float32Array;
  index: Uint32Array;
}

const scope = globalThis as unknown as Scope;

scope.onmessage = ({ data }) =>
  scope.postMessage(
    outlineOf({ positions: Float64Array.from(data.positions), triangles: Int32Array.from(data.index) }),
  );
