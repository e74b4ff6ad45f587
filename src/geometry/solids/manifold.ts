import type { ManifoldToplevel } from 'manifold-3d';
import { SolidsOutOfMemory } from './solidsOutOfMemory';
import type { WasmSource } from './wasmSource';

/** Objects of the library lie in its own memory, which no garbage collector sees. */
interface Freeable {
  delete: () => void;
}

export interface ManifoldScope {
  readonly library: ManifoldToplevel;
  /** Hands the object back; it is freed when the scope ends. Don't delete it yourself. */
  own: <T extends Freeable>(made: T) => T;
}

/**
 * Runs `use` with the Manifold library (Lalish and others) and frees everything it owned when it returns or throws.
 * The library is loaded on the first call, never by importing this file; the address of the first call that loads it counts.
 * `use` is synchronous: what it hands back must be plain data. Rejects when the wasm can't be loaded; the next call tries again.
 * Rejects with SolidsOutOfMemory where its memory ran out: that library is never used again, as it answers wrongly from then on.
 */
export async function withManifold<T>(use: (scope: ManifoldScope) => T, source: WasmSource = {}): Promise<T> {
  const library = await loadOnce(source);
  const owned: Freeable[] = [];
  const own = <M extends Freeable>(made: M): M => {
    owned.push(made);
    return made;
  };
  try {
    const result = use({ library, own });
    if (result instanceof Promise) throw new Error('withManifold: expected plain data, got a promise');
    if (!isSound(library)) throw new SolidsOutOfMemory('a cube has no volume any more');
    for (const made of owned.reverse()) made.delete();
    return result;
  } catch (thrown) {
    if (isSpent(thrown) || !isSound(library)) {
      // Nothing of it can be freed one by one: its whole memory goes.
      loading = undefined;
      throw new SolidsOutOfMemory(thrown);
    }
    for (const made of owned.reverse()) made.delete();
    throw thrown;
  }
}

/** A trap of the wasm, what C++ throws, and buffers that could not be had. Errors of the library's own and of ours are Errors. */
const isSpent = (thrown: unknown): boolean =>
  !(thrown instanceof Error) ||
  thrown instanceof WebAssembly.RuntimeError ||
  thrown instanceof RangeError ||
  thrown instanceof SolidsOutOfMemory;

/** A library whose memory has run out was seen to go on and to call the volume of a cube 0. */
function isSound(library: ManifoldToplevel): boolean {
  try {
    const cube = library.Manifold.cube(2);
    const volume = cube.volume();
    cube.delete();
    return volume === 8;
  } catch {
    return false;
  }
}

let loading: Promise<ManifoldToplevel> | undefined;

function loadOnce(source: WasmSource): Promise<ManifoldToplevel> {
  loading ??= load(source).catch((reason: unknown) => {
    loading = undefined;
    throw reason;
  });
  return loading;
}

async function load({ wasmUrl }: WasmSource): Promise<ManifoldToplevel> {
  const { default: start } = await import('manifold-3d');
  const library = await start(wasmUrl === undefined ? undefined : { locateFile: () => wasmUrl });
  library.setup();
  return library;
}
