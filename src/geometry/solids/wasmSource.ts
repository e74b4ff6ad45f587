/** Where the wasm of Manifold is fetched from. */
export interface WasmSource {
  /** A browser page gives the address of its own copy of `manifold.wasm`; in Node it is found beside the code. */
  wasmUrl?: string | undefined;
}
