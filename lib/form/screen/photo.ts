/** Photos of the ground: drawn anew on a canvas, so that nothing of the camera's is left: place, time, owner. */

/** Longest side, pixels, and bytes of one, as on the page. */
const LONGEST_SIDE = 1024;
const LARGEST = 120_000;
const QUALITIES = [0.8, 0.6, 0.4];

/**
 * A picture as a JPEG small enough for the page.
 * @throws Error where the browser cannot read it
 */
export async function shrunkPhoto(file: Blob): Promise<Uint8Array> {
  let picture: ImageBitmap;
  try {
    picture = await createImageBitmap(file, { imageOrientation: 'from-image' });
  } catch {
    throw new Error('This browser cannot read that picture. Save it as a JPEG and try again.');
  }
  try {
    for (let longest = LONGEST_SIDE; ; longest /= 2) {
      const scale = Math.min(1, longest / Math.max(picture.width, picture.height));
      const canvas = document.createElement('canvas');
      canvas.width = Math.max(1, Math.round(picture.width * scale));
      canvas.height = Math.max(1, Math.round(picture.height * scale));
      canvas.getContext('2d')!.drawImage(picture, 0, 0, canvas.width, canvas.height);
      for (const quality of QUALITIES) {
        const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/jpeg', quality));
        if (blob && blob.size <= LARGEST) return new Uint8Array(await blob.arrayBuffer());
      }
      if (longest < 64) throw new Error('This picture cannot be made small enough.');
    }
  } finally {
    picture.close();
  }
}

/** A photo as the page takes it. */
export function photoData(bytes: Uint8Array): string {
  let text = '';
  for (let at = 0; at < bytes.length; at += 8192)
    text += String.fromCharCode(...bytes.subarray(at, at + 8192));
  return `data:image/jpeg;base64,${btoa(text)}`;
}

/** Is that the name of a picture? */
export const isPhoto = (name: string) => /\.(jpe?g|png)$/i.test(name);
