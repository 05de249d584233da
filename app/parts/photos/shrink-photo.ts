/** A picture from the camera or the gallery, made fit to keep: upright, small, and telling no place. */

/** Long edge of a kept photo, pixels: enough to see a seam, at some hundred kilobytes. */
export const LONG_EDGE_PX = 1600;
const JPEG_QUALITY = 0.82;

export interface ShrunkPhoto {
  readonly bytes: Uint8Array;
  readonly mediaType: 'image/jpeg';
}

/** Width and height that fit into the long edge; a smaller picture stays as it is. */
export const fitted = (width: number, height: number): { width: number; height: number } => {
  const scale = Math.min(1, LONG_EDGE_PX / Math.max(width, height));
  return {
    width: Math.max(1, Math.round(width * scale)),
    height: Math.max(1, Math.round(height * scale)),
  };
};

/**
 * Turns the picture upright by its own orientation mark, scales it and writes it anew as JPEG. Only
 * the pixels go over: place, time and camera stay behind.
 * @returns null where this browser cannot read the picture
 */
export const shrinkPhoto = async (picture: Blob): Promise<ShrunkPhoto | null> => {
  let bitmap: ImageBitmap;
  try {
    bitmap = await createImageBitmap(picture, { imageOrientation: 'from-image' });
  } catch {
    return null;
  }
  const canvas = document.createElement('canvas');
  Object.assign(canvas, fitted(bitmap.width, bitmap.height));
  const context = canvas.getContext('2d');
  if (!context) return null;
  context.imageSmoothingQuality = 'high';
  context.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  bitmap.close();
  const blob = await new Promise<Blob | null>((done) =>
    canvas.toBlob(done, 'image/jpeg', JPEG_QUALITY),
  );
  // The pixels of a large photo are freed now, not when the garbage is next collected.
  canvas.width = canvas.height = 0;
  return blob && { bytes: new Uint8Array(await blob.arrayBuffer()), mediaType: 'image/jpeg' };
};
