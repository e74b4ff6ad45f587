/** A picture made small enough to keep. */
export interface ScaledPhoto {
  type: string;
  bytes: Uint8Array<ArrayBuffer>;
}

/** The longest side to try, in pixels, and how well it is packed; the first that is small enough is taken. All chosen here. */
const SIDES_PX = [1280, 960, 640];
const QUALITIES = [0.8, 0.65, 0.5];
const MOST_BYTES = 300_000;

/**
 * The picture drawn anew and packed as JPEG: upright as the camera meant it, at most so large, and with nothing of where and when it was
 * taken. Throws where the browser cannot open it.
 */
export async function scaledPhoto(file: Blob): Promise<ScaledPhoto> {
  const picture = await createImageBitmap(file, { imageOrientation: 'from-image' });
  try {
    let smallest: Blob | undefined;
    for (const side of SIDES_PX) {
      const canvas = drawn(picture, Math.min(1, side / Math.max(picture.width, picture.height)));
      for (const quality of QUALITIES) {
        smallest = await packed(canvas, quality);
        if (smallest.size <= MOST_BYTES) return kept(smallest);
      }
    }
    return kept(smallest!);
  } finally {
    picture.close();
  }
}

const kept = async (file: Blob): Promise<ScaledPhoto> => ({
  type: file.type,
  bytes: new Uint8Array(await file.arrayBuffer()),
});

function drawn(picture: ImageBitmap, scale: number): HTMLCanvasElement {
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(picture.width * scale));
  canvas.height = Math.max(1, Math.round(picture.height * scale));
  const pen = canvas.getContext('2d');
  if (pen === null) throw new Error('scaledPhoto: expected a canvas to draw on, got none');
  // JPEG knows nothing see-through: without a ground it would turn black.
  pen.fillStyle = 'white';
  pen.fillRect(0, 0, canvas.width, canvas.height);
  pen.imageSmoothingQuality = 'high';
  pen.drawImage(picture, 0, 0, canvas.width, canvas.height);
  return canvas;
}

const packed = (canvas: HTMLCanvasElement, quality: number): Promise<Blob> =>
  new Promise((resolve, reject) => {
    canvas.toBlob(
      (file) =>
        file === null ? reject(new Error('scaledPhoto: expected a packed picture, got none')) : resolve(file),
      'image/jpeg',
      quality,
    );
  });
