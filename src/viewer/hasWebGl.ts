/** Whether this browser draws with WebGL 2, tried once on a canvas of its own. */
export function hasWebGl(): boolean {
  known ??= tryOnce();
  return known;
}

/** The same without the try, which takes time: what is not known yet may be. */
export const mayHaveWebGl = (): boolean => known ?? typeof WebGL2RenderingContext !== 'undefined';

/** Whether it is drawn without graphics hardware, as far as the browser tells: then smooth edges cost half of the time. */
export const drawsInSoftware = (): boolean => hasWebGl() && isSoftware;

let known: boolean | undefined;
let isSoftware = false;

function tryOnce(): boolean {
  const context = document.createElement('canvas').getContext('webgl2');
  const names = context?.getExtension('WEBGL_debug_renderer_info');
  if (context !== null && names !== null && names !== undefined)
    isSoftware = /swiftshader|llvmpipe|software/i.test(
      String(context.getParameter(names.UNMASKED_RENDERER_WEBGL)),
    );
  context?.getExtension('WEBGL_lose_context')?.loseContext();
  return context !== null;
}
