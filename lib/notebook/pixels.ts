/** A picture as its pixels, made smaller and turned upright. */

/** Red, green, blue and opacity of each pixel, 0 to 255, row by row from the top left. */
export interface Pixels {
  width: number;
  height: number;
  data: Uint8Array;
}

/** A picture file whose outside was looked at: its size is known, its pixels are not made yet. */
export interface Picture {
  width: number;
  height: number;
  /** @throws Error where the file is damaged inside */
  pixels(): Pixels;
}

/** The mean of the pixels that fall into each pixel of a picture at most so long and wide. */
export function shrunk({ width, height, data }: Pixels, longest: number): Pixels {
  const scale = Math.min(1, longest / Math.max(width, height));
  const [w, h] = [width, height].map((side) => Math.max(1, Math.round(side * scale))) as [number, number];
  const small = new Uint8Array(4 * w * h);
  for (let y = 0; y < h; y++) {
    const [top, bottom] = covered(y, height, h);
    for (let x = 0; x < w; x++) {
      const [left, right] = covered(x, width, w);
      for (let channel = 0; channel < 4; channel++) {
        let sum = 0;
        for (let row = top; row < bottom; row++)
          for (let at = left; at < right; at++) sum += data[4 * (row * width + at) + channel]!;
        small[4 * (y * w + x) + channel] = Math.round(sum / ((bottom - top) * (right - left)));
      }
    }
  }
  return { width: w, height: h, data: small };
}

/** Which of so many pixels fall into one of fewer. */
function covered(at: number, many: number, few: number): [from: number, to: number] {
  const from = Math.floor((at * many) / few);
  return [from, Math.max(from + 1, Math.floor(((at + 1) * many) / few))];
}

/**
 * The picture upright.
 * @param orientation 1 to 8 as a camera notes it (Exif 2.3, tag 0x0112): which side the first row and column stand for
 */
export function turned(picture: Pixels, orientation: number): Pixels {
  const { width, height, data } = picture;
  if (!(orientation > 1 && orientation <= 8)) return picture;
  // From 5 on rows and columns change places; the others mirror one or both.
  const across = orientation >= 5;
  const [w, h] = across ? [height, width] : [width, height];
  const [mirrorX, mirrorY] = [[2, 3, 7, 8].includes(orientation), [3, 4, 6, 7].includes(orientation)];
  const upright = new Uint8Array(data.length);
  for (let y = 0; y < h; y++)
    for (let x = 0; x < w; x++) {
      const [column, row] = across ? [y, x] : [x, y];
      const from = 4 * ((mirrorY ? height - 1 - row : row) * width + (mirrorX ? width - 1 - column : column));
      upright.set(data.subarray(from, from + 4), 4 * (y * w + x));
    }
  return { width: w, height: h, data: upright };
}
