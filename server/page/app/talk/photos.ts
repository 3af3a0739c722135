const longestSide = 1600;

/**
 * A picture drawn again at most 1600 px long: upright, small enough to send, and without the place and the device
 * that the camera wrote into it. Null for a file that the browser cannot draw.
 */
export async function resized(file: Blob): Promise<Blob | null> {
  try {
    const picture = await createImageBitmap(file, { imageOrientation: 'from-image' });
    const scale = Math.min(1, longestSide / Math.max(picture.width, picture.height));
    const canvas = document.createElement('canvas');
    canvas.width = Math.round(picture.width * scale);
    canvas.height = Math.round(picture.height * scale);
    canvas.getContext('2d')!.drawImage(picture, 0, 0, canvas.width, canvas.height);
    picture.close();
    return await new Promise((done) => canvas.toBlob(done, 'image/jpeg', 0.8));
  } catch {
    return null;
  }
}
