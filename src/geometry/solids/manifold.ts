import type { ManifoldToplevel } from 'manifold-3d';
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
    return result;
  } finally {
    for (const made of owned.reverse()) made.delete();
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
