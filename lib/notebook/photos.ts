/** Photos of pits: made anew from their pixels, so that nothing of the camera's is left: place, time, owner. */
import { lstatSync, readFileSync, realpathSync, statSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import type { LayerRow, Survey, Warning } from '../survey/index.js';
import { encodedJpeg, isJpeg, jpegPicture } from './jpeg.js';
import { type Picture, shrunk } from './pixels.js';
import { isPng, pngPicture } from './png.js';

/** Largest photo put into the page, bytes. */
export const LARGEST_PHOTO = 120_000;
/** Longest side of one, pixels: fine enough to tell cracks and mottles in a spade of soil. */
const LONGEST_SIDE = 1024;
/** Larger files and pictures are not decoded: half a minute of work at most, and memory that any computer has. */
const LARGEST_FILE = 30_000_000;
const MOST_PIXELS = 25_000_000;
/** As many photos are shown. */
const MOST_PHOTOS = 24;
const QUALITIES = [80, 60, 40];

/**
 * Which of the photos that `pits.csv` names will not be shown, and why; found before anything is computed.
 * @param folder of the survey
 * @returns a warning a photo, at the first row that names it
 */
export function photoWarnings(survey: Survey, folder: string): Warning[] {
  return namedPhotos(survey).flatMap(({ photo, origin }, at) => {
    try {
      if (at >= MOST_PHOTOS) throw new Error(`${MOST_PHOTOS} others are shown already`);
      pictureIn(folder, photo);
      return [];
    } catch (error) {
      const message = `photo '${photo}' is left out: ${reasonOf(error)}`;
      return [{ ...origin, column: 'photo', code: 'photo-left-out', message }];
    }
  });
}

/**
 * The photos that `pits.csv` names, as data URIs by that name; those that cannot be shown are not among them.
 * @param folder of the survey
 */
export function photosOf(survey: Survey, folder: string): Record<string, string> {
  const named = namedPhotos(survey).slice(0, MOST_PHOTOS);
  return Object.fromEntries(
    named.flatMap(({ photo }) => {
      try {
        return [[photo, `data:image/jpeg;base64,${madeAnew(pictureIn(folder, photo)).toString('base64')}`]];
      } catch {
        // Whatever is the matter with one photo: it costs neither the page nor the others.
        return [];
      }
    }),
  );
}

/** Rows with a photo, the first of each. */
function namedPhotos({ layers }: Survey): (LayerRow & { photo: string })[] {
  const first = new Map<string, LayerRow & { photo: string }>();
  for (const layer of layers)
    if (layer.photo && !first.has(layer.photo)) first.set(layer.photo, { ...layer, photo: layer.photo });
  return [...first.values()];
}

function reasonOf(error: unknown): string {
  const { code, message } = error as NodeJS.ErrnoException;
  return code === undefined ? message : 'it cannot be read';
}

/** A photo that lies in the folder itself, by its plain name. */
function pictureIn(folder: string, name: string): Picture {
  const path = join(folder, name);
  if (basename(name) !== name || name.includes('\\') || name === '..')
    throw new Error('its name is no plain file name. Put it beside pits.csv');
  if (!lstatSync(path, { throwIfNoEntry: false })) throw new Error('there is no such file');
  const file = statSync(path, { throwIfNoEntry: false });
  if (!file?.isFile()) throw new Error('it is no file');
  if (dirname(realpathSync(path)) !== realpathSync(folder))
    throw new Error('it is a link out of the folder. Put the photo itself there');
  if (file.size > LARGEST_FILE)
    throw new Error(`it is larger than ${LARGEST_FILE / 1e6} MB. Save it smaller`);
  return pictureOf(readFileSync(path));
}

/**
 * A picture file, as far as it can be told without decoding it.
 * @throws Error with the reason why it is none that is shown
 */
export function pictureOf(file: Buffer): Picture {
  if (!isJpeg(file) && !isPng(file)) throw new Error('it is no JPEG or PNG. Save it as one');
  const picture = isJpeg(file) ? jpegPicture(file) : pngPicture(file);
  const { width, height } = picture;
  if (width === 0 || height === 0) throw new Error('there is no picture in it');
  if (width * height > MOST_PIXELS)
    throw new Error(`it has more than ${MOST_PIXELS / 1e6} million pixels. Save it smaller`);
  return picture;
}

/**
 * A picture as a JPEG small enough for the page, encoded from nothing but its pixels.
 * @throws Error where the file is damaged inside
 */
export function madeAnew(picture: Picture): Buffer {
  const pixels = picture.pixels();
  for (let longest = LONGEST_SIDE; ; longest /= 2) {
    const small = shrunk(pixels, longest);
    for (const quality of QUALITIES) {
      const bytes = encodedJpeg(small, quality);
      if (bytes.length <= LARGEST_PHOTO) return bytes;
    }
  }
}
