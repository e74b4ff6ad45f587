import type { OrbitControls } from 'three-stdlib';
import { ZOOM_STEP } from './views';

interface HandsOptions {
  controls: OrbitControls;
  canvas: HTMLCanvasElement;
  zoom: (factor: number) => void;
}

/**
 * What mouse and fingers do: a drag turns, with Shift it moves; two fingers move and pinch. One finger that moves up or down scrolls the page, and so
 * does the wheel, until the picture has the focus. Give the hands back with what is returned.
 */
export function giveHands({ controls, canvas, zoom }: HandsOptions): () => void {
  canvas.style.touchAction = 'pan-y';
  // The wheel is ours, the pinch is theirs.
  const onPointer = (event: PointerEvent): void => {
    controls.enableZoom = event.pointerType === 'touch';
  };
  const onWheel = (event: WheelEvent): void => {
    controls.enableZoom = false;
    const isFocused = canvas.closest('[data-picture]')?.contains(document.activeElement) === true;
    if (!event.ctrlKey && !isFocused) return;
    event.preventDefault();
    zoom(event.deltaY < 0 ? ZOOM_STEP : 1 / ZOOM_STEP);
  };
  const onTouch = (event: TouchEvent): void => {
    if (event.touches.length > 1) event.preventDefault();
  };
  const here = { capture: true };
  canvas.addEventListener('pointerdown', onPointer, here);
  canvas.addEventListener('wheel', onWheel, { passive: false, capture: true });
  canvas.addEventListener('touchstart', onTouch, { passive: false });
  canvas.addEventListener('touchmove', onTouch, { passive: false });
  return () => {
    canvas.removeEventListener('pointerdown', onPointer, here);
    canvas.removeEventListener('wheel', onWheel, here);
    canvas.removeEventListener('touchstart', onTouch);
    canvas.removeEventListener('touchmove', onTouch);
  };
}
