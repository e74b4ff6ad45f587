/** Whether this browser draws with WebGL 2, tried once on a canvas of its own. */
export function hasWebGl(): boolean {
  known ??= tryOnce();
  return known;
}

let known: boolean | undefined;

function tryOnce(): boolean {
  const context = document.createElement('canvas').getContext('webgl2');
  context?.getExtension('WEBGL_lose_context')?.loseContext();
  return context !== null;
}
